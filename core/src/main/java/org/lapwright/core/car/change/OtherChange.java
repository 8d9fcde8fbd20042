package org.lapwright.core.car.change;

/** What no other kind is about. */
public sealed interface OtherChange extends Change {
    /**
     * Oiled, greased or cleaned.
     *
     * @param where where, in the racer's words; may be empty
     */
    record Oiled(String where) implements OtherChange {
        static Oiled of(Values values) {
            return new Oiled(values.text(ChangeKeys.WHERE));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.OILED;
        }

        @Override
        public Values values() {
            return Values.NONE.with(ChangeKeys.WHERE, where);
        }

        @Override
        public Build apply(Build before) {
            return before;
        }

        @Override
        public String sentence(Build before) {
            return where.isEmpty() ? "oiled" : "oiled: " + where;
        }
    }

    /**
     * Anything else.
     *
     * @param what what was done, in the racer's words
     */
    record Noted(String what) implements OtherChange {
        private static final int LONGEST = 400;

        /** Checks that it says something. */
        public Noted {
            what = org.lapwright.core.units.Check.text(what, LONGEST, ChangeKeys.WHAT);
        }

        static Noted of(Values values) {
            return new Noted(values.requireText(ChangeKeys.WHAT, "what was done"));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.NOTED;
        }

        @Override
        public Values values() {
            return Values.NONE.with(ChangeKeys.WHAT, what);
        }

        @Override
        public Build apply(Build before) {
            return before;
        }

        @Override
        public String sentence(Build before) {
            return what;
        }
    }
}
