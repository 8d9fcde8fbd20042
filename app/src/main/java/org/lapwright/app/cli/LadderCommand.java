package org.lapwright.app.cli;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.io.PrintWriter;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.ShowLadder;
import org.lapwright.core.trial.ladder.LadderEntry;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The cars of the store, ranked. */
@Command(
        name = "ladder",
        description = "Rank the cars you have kept on one track by pace, and say how sure the order is.")
final class LadderCommand implements Callable<Integer> {
    private final Supplier<GarageStore> openGarage;

    @Spec
    private CommandSpec spec;

    @Option(names = "--track", paramLabel = "NAME", description = "Which track; without it, the one you drove last.")
    private @Nullable String track;

    @Option(
            names = "--lane",
            paramLabel = "NAME",
            description = "The laps on this lane alone; without it, all laps, corrected for what the lanes do.")
    private @Nullable String lane;

    @Option(names = "--json", description = Json.OPTION)
    private boolean json;

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    LadderCommand(Supplier<GarageStore> openGarage) {
        this.openGarage = openGarage;
    }

    /**
     * A car on the ladder in JSON.
     *
     * @param car its name
     * @param paceS pace, shrunk towards the others, s
     * @param intervalS 95 % interval of the pace, s
     * @param laps clean laps behind it
     * @param chanceAheadOfNext chance that it is really faster than the next one; null for the last
     * @param place its place; cars that cannot be told apart share one
     */
    record CarJson(
            @JsonProperty("car") String car,
            @JsonProperty("pace_s") double paceS,
            @JsonProperty("interval_s") List<Double> intervalS,
            @JsonProperty("laps") int laps,
            @JsonProperty("chance_ahead_of_next") @Nullable Double chanceAheadOfNext,
            @JsonProperty("place") int place) {}

    @Override
    public Integer call() {
        try (GarageStore garage = openGarage.get()) {
            show(new ShowLadder(garage, Clock.systemUTC()));
        }
        return 0;
    }

    private void show(ShowLadder ladder) {
        PrintWriter out = spec.commandLine().getOut();
        List<String> tracks = ladder.tracks();
        String chosen = track != null ? track : tracks.isEmpty() ? "" : tracks.get(0);
        if (track != null && tracks.stream().noneMatch(name -> name.equalsIgnoreCase(chosen))) {
            throw new BadInput("--track: there are no laps on '" + chosen + "'."
                    + (tracks.isEmpty() ? "" : " Tracks with laps: " + String.join(", ", tracks) + "."));
        }
        List<LadderEntry> entries = chosen.isEmpty()
                ? List.of()
                : ladder.ranking(chosen, lane(ladder, chosen)).entries();
        if (json) {
            out.println(Json.of(jsonOf(entries)));
        } else if (entries.isEmpty()) {
            out.println("No cars yet. Keep a comparison on the page Before / After, and its car stands here.");
        } else {
            print(out, chosen, entries);
        }
    }

    private String lane(ShowLadder ladder, String chosen) {
        if (lane == null) {
            return "";
        }
        List<String> lanes = ladder.ranking(chosen, "").laneNames();
        return lanes.stream()
                .filter(lane::equalsIgnoreCase)
                .findFirst()
                .orElseThrow(() -> new BadInput("--lane: there are no laps on '" + lane + "' of " + chosen + "."
                        + (lanes.isEmpty() ? "" : " Lanes with laps: " + String.join(", ", lanes) + ".")));
    }

    private static List<CarJson> jsonOf(List<LadderEntry> entries) {
        List<CarJson> cars = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            LadderEntry entry = entries.get(i);
            cars.add(new CarJson(
                    entry.car(),
                    entry.paceS(),
                    List.of(entry.intervalS().low(), entry.intervalS().high()),
                    entry.laps(),
                    i + 1 < entries.size() ? entry.chanceAheadOfNext() : null,
                    entry.place()));
        }
        return cars;
    }

    /** Never a round hundred: that would be more than laps can tell. */
    private static String chance(double share) {
        long percent = Math.round(100 * share);
        return percent > 99 ? "over 99 %" : percent + " %";
    }

    private static void print(PrintWriter out, String track, List<LadderEntry> entries) {
        out.println(track);
        out.printf(
                Locale.ROOT,
                "%6s  %-24s%10s%20s%7s   %s%n",
                "place",
                "car",
                "pace",
                "somewhere between",
                "laps",
                "ahead of next");
        for (int i = 0; i < entries.size(); i++) {
            LadderEntry entry = entries.get(i);
            boolean tied = i > 0 && entries.get(i - 1).place() == entry.place()
                    || i + 1 < entries.size() && entries.get(i + 1).place() == entry.place();
            out.printf(
                    Locale.ROOT,
                    "%6s  %-24s%10s%20s%7d   %s%n",
                    (tied ? "=" : "") + entry.place(),
                    entry.car(),
                    Figures.seconds(entry.paceS()),
                    Figures.fixed(entry.intervalS().low(), 3) + " – "
                            + Figures.fixed(entry.intervalS().high(), 3),
                    entry.laps(),
                    i + 1 < entries.size() ? chance(entry.chanceAheadOfNext()) : "");
        }
    }
}
