package org.lapwright.bench;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.lapwright.app.store.SqliteGarage;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.Decision;
import org.lapwright.core.trial.LapsNeeded;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/** Fills a garage with comparisons of 60 laps, six runs of ten. */
public final class GarageFiller {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final Stint NO_LAPS =
            new Stint(List.of(), 0, NONE, NONE, NONE, NONE, NONE, Optional.empty(), NONE, NONE, NONE, NONE);

    /** A verdict, so that there is one to keep. */
    static final Verdict VERDICT = new Verdict(
            Decision.MORE_LAPS,
            Optional.empty(),
            Optional.empty(),
            LapsNeeded.NONE,
            OptionalInt.empty(),
            NO_LAPS,
            NO_LAPS,
            List.of(),
            Optional.empty(),
            Set.of());

    private GarageFiller() {}

    /** Fills the file named first with as many comparisons as the second argument says. */
    public static void main(String[] arguments) {
        try (SqliteGarage store = SqliteGarage.open(Path.of(arguments[0]))) {
            for (int i = Integer.parseInt(arguments[1]); i > 0; i--) {
                store.keep(comparison(i), VERDICT, "key " + i, Instant.ofEpochSecond(i));
            }
        }
    }

    /** Comparison number i, of one of 30 cars. */
    static KeptComparison comparison(int i) {
        return comparison(i, 30);
    }

    /** Comparison number i, of one of so many cars. */
    static KeptComparison comparison(int i, int cars) {
        Random random = new Random(i);
        List<DrivenRun> runs = new ArrayList<>();
        for (int run = 0; run < 6; run++) {
            double[] laps = random.doubles(10, 6, 7).toArray();
            runs.add(new DrivenRun(run % 2 == 0 ? Side.BEFORE : Side.AFTER, TimedRun.of(laps)));
        }
        return new KeptComparison(
                "car " + i % cars,
                "track",
                "red",
                "driver",
                "",
                "change " + i,
                Side.AFTER,
                new Session(runs),
                TrialSettings.DEFAULT,
                false);
    }
}
