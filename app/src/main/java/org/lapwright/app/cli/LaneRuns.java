package org.lapwright.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.ReadRun;
import org.lapwright.app.usecase.advice.LearnCar.LaneRun;
import org.lapwright.core.car.SetUp;

/** Runs of one set-up from lap files. */
final class LaneRuns {
    private LaneRuns() {}

    /**
     * Reads them.
     *
     * @param lane the lane of laps that do not say theirs, if it is known
     */
    static List<LaneRun> of(LapSource source, List<String> files, @Nullable String lane, SetUp car, PrintWriter err) {
        List<LaneRun> runs = new ArrayList<>();
        for (String file : files) {
            for (ReadRun run : source.read(file, err).runs()) {
                String of = run.lane().isEmpty() && lane != null ? lane : run.lane();
                runs.add(new LaneRun(car, of, run.run()));
            }
        }
        return runs;
    }
}
