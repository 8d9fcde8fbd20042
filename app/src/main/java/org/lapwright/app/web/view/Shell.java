package org.lapwright.app.web.view;

/**
 * What every page has around its content.
 *
 * @param title of the page
 * @param current the part of the program it belongs to
 * @param assets where its files are
 */
public record Shell(String title, Tab current, AssetPaths assets) {
    /** The parts of the program, in the order of the menu. */
    public enum Tab {
        /** The front page. */
        COMPARE("/", "Before / After"),
        /** Cars with their numbers. */
        BENCH("/bench", "Bench"),
        /** Lanes drawn, and the best lap on them. */
        TRACK("/track", "Track"),
        /** Laps while they come in. */
        RUN("/run", "Run"),
        /** What to try next. */
        NEXT("/next", "Next"),
        /** Cars ranked. */
        LADDER("/ladder", "Ladder"),
        /** Parts. */
        SHELF("/shelf", "Shelf"),
        /** Kept comparisons. */
        KEPT("/kept", "Kept"),
        /** The glossary. */
        WORDS("/words", "Words"),
        /** None of them. */
        NONE("", "");

        private final String path;
        private final String label;

        Tab(String path, String label) {
            this.path = path;
            this.label = label;
        }

        /** Its address. */
        public String path() {
            return path;
        }

        /** Its name. */
        public String label() {
            return label;
        }

        /** Whether it stands in the menu. */
        public boolean isInMenu() {
            return this != NONE;
        }
    }
}
