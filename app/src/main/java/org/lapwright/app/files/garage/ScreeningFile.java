package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.screening.Screening;
import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;

/**
 * A screening as it is kept, {@code lapwright-screening/1}: {@code car}, {@code track}, {@code tweaks}, {@code runs},
 * {@code laps_per_run}, the {@code lot} that made the order, and {@code driven}, the laps of each run so far, s.
 *
 * @param car its name
 * @param track its name
 * @param plan what is tried
 * @param driven the runs so far, in the order driven; no more than planned
 */
public record ScreeningFile(String car, String track, Screening plan, List<TimedRun> driven) {
    /** The format that this version reads and writes. */
    public static final String FORMAT = "lapwright-screening/1";

    private static final int LONGEST_NAME = 80;
    private static final NumberKey RUNS = new NumberKey("", "runs", 0, Screening.LONG);
    private static final NumberKey LAPS = new NumberKey("", "laps_per_run", 0, Screening.MOST_LAPS);
    private static final NumberKey LOT = new NumberKey("", "lot", 0, 1L << 53);

    /** Checks the names and that no more runs are there than planned. */
    public ScreeningFile {
        car = Check.text(car, LONGEST_NAME, "car");
        track = Check.text(track, LONGEST_NAME, "track");
        driven = List.copyOf(driven);
        if (driven.size() > plan.runs()) {
            throw new IllegalArgumentException(
                    "%d runs are driven; the plan has %d".formatted(driven.size(), plan.runs()));
        }
    }

    /** Reads a file. */
    public static FileReading<ScreeningFile> read(String text) {
        return FileReading.of(text, FORMAT, ScreeningFile::content);
    }

    private static Optional<ScreeningFile> content(JsonSection file) {
        String car = file.requiredText("car", "Dunlin");
        String track = file.requiredText("track", "Shed loop");
        List<String> tweaks = file.texts("tweaks");
        int runs = (int) file.required(RUNS);
        int laps = (int) file.required(LAPS);
        long lot = (long) file.required(LOT);
        List<TimedRun> driven = driven(file);
        return file.build(() -> new ScreeningFile(car, track, new Screening(tweaks, runs, laps, lot), driven));
    }

    private static List<TimedRun> driven(JsonSection file) {
        List<TimedRun> driven = new ArrayList<>();
        for (JsonNode run : file.entries("driven")) {
            List<TimedLap> laps = new ArrayList<>();
            for (JsonNode lap : run) {
                try {
                    laps.add(new TimedLap(laps.size() + 1, lap.asDouble()));
                } catch (IllegalArgumentException impossible) {
                    file.problem("driven[%d]: %s".formatted(driven.size(), impossible.getMessage()));
                }
            }
            driven.add(new TimedRun(laps, List.of()));
        }
        return driven;
    }

    /** The file's text. */
    public String text() {
        ObjectNode json = Document.empty();
        json.put("format", FORMAT);
        json.put("car", car);
        json.put("track", track);
        plan.tweaks().forEach(json.putArray("tweaks")::add);
        json.put("runs", plan.runs());
        json.put("laps_per_run", plan.lapsPerRun());
        json.put("lot", plan.seed());
        ArrayNode runs = json.putArray("driven");
        for (TimedRun run : driven) {
            ArrayNode laps = runs.addArray();
            run.laps().forEach(lap -> laps.add(JsonPart.decimal(lap.seconds())));
        }
        return Document.text(json);
    }

    /** The same with one more run, or without the last one where {@code run} is empty. */
    public ScreeningFile with(Optional<TimedRun> run) {
        List<TimedRun> runs = new ArrayList<>(driven);
        if (run.isPresent()) {
            runs.add(run.get());
        } else if (!runs.isEmpty()) {
            runs.remove(runs.size() - 1);
        }
        return new ScreeningFile(car, track, plan, runs);
    }

    /** Whether all runs are driven. */
    public boolean isDone() {
        return driven.size() == plan.runs();
    }
}
