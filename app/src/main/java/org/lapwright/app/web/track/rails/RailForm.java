package org.lapwright.app.web.track.rails;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.track.Track;
import org.lapwright.core.track.rails.RailTest;
import org.lapwright.core.units.NumberKey;

/**
 * Readings of a rail test, as typed.
 *
 * @param rounds three rounds of five numbers
 * @param far where the far place is, % of the lap
 */
public record RailForm(List<Round> rounds, String far) {
    private static final int ROUNDS = 3;
    private static final NumberKey FAR = new NumberKey("", "far_percent", 2, 98);

    /** Copies the list. */
    public RailForm {
        rounds = List.copyOf(rounds);
    }

    /**
     * One round.
     *
     * @param open volts without a load
     * @param near volts at the feed under load
     * @param nearA amperes then
     * @param farV volts at the far place under load
     * @param farA amperes then
     */
    public record Round(String open, String near, String nearA, String farV, String farA) {
        static final Round EMPTY = new Round("", "", "", "", "");

        private static Round from(Fields fields, int number) {
            return new Round(
                    fields.text("open-" + number),
                    fields.text("near-" + number),
                    fields.text("near-a-" + number),
                    fields.text("far-" + number),
                    fields.text("far-a-" + number));
        }

        private boolean isBlank() {
            return (open + near + nearA + farV + farA).isBlank();
        }

        private Optional<RailTest.Load> read(int number, Typed typed) {
            int before = typed.problems().size();
            String about = "Round " + number + ", ";
            double openV = typed.at("open-" + number).number(open, RailTest.VOLTAGE, about + "without load");
            double nearV = typed.at("near-" + number).number(near, RailTest.VOLTAGE, about + "at the feed");
            double nearAmps =
                    typed.at("near-a-" + number).number(nearA, RailTest.CURRENT, about + "current at the feed");
            double far = typed.at("far-" + number).number(farV, RailTest.VOLTAGE, about + "far away");
            double farAmps = typed.at("far-a-" + number).number(farA, RailTest.CURRENT, about + "current far away");
            return typed.problems().size() > before
                    ? Optional.empty()
                    : typed.at("near-" + number)
                            .build(
                                    "Round " + number + ": ",
                                    () -> new RailTest.Load(openV, nearV, nearAmps, far, farAmps));
        }
    }

    /** Nothing typed yet. */
    public static RailForm empty() {
        return new RailForm(List.of(Round.EMPTY, Round.EMPTY, Round.EMPTY), "50");
    }

    /** What was typed. */
    public static RailForm from(Fields fields) {
        List<Round> rounds = new ArrayList<>();
        for (int i = 1; i <= ROUNDS; i++) {
            rounds.add(Round.from(fields, i));
        }
        return new RailForm(rounds, fields.text("far-at", "50"));
    }

    /**
     * What it comes to.
     *
     * @param result empty when there are faults
     * @param faults what could not be understood
     */
    public record Reading(Optional<RailTest.Result> result, List<Typed.Fault> faults) {
        /** Copies the list. */
        public Reading {
            faults = List.copyOf(faults);
        }
    }

    /** Works it out for a track. */
    public Reading read(Track track) {
        Typed typed = new Typed();
        List<RailTest.Load> loads = new ArrayList<>();
        for (int i = 1; i <= rounds.size(); i++) {
            if (!rounds.get(i - 1).isBlank()) {
                rounds.get(i - 1).read(i, typed).ifPresent(loads::add);
            }
        }
        double share = typed.at("far-at").number(far, FAR, "Far place, % of the lap") / 100;
        if (!typed.faults().isEmpty()) {
            return new Reading(Optional.empty(), typed.faults());
        }
        Optional<RailTest.Result> result = typed.at("open-1")
                .build(
                        "",
                        () -> new RailTest(loads, share)
                                .result(
                                        track.power(),
                                        track.lengthM(track.lanes().get(0))));
        return new Reading(result, typed.faults());
    }
}
