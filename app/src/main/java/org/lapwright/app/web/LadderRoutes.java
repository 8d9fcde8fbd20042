package org.lapwright.app.web;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapwright.app.usecase.GarageStore.ExampleState;
import org.lapwright.app.usecase.ShowLadder;
import org.lapwright.app.web.chart.LadderChart;
import org.lapwright.app.web.view.ExampleView;
import org.lapwright.app.web.view.LadderPage;
import org.lapwright.app.web.view.LaneView;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.trial.ladder.LadderEntry;

/** The cars on one track, ranked. */
final class LadderRoutes {
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH).withZone(ZoneId.systemDefault());

    private final UseCases useCases;
    private final ShowLadder ladder;
    private final Pages pages;

    LadderRoutes(UseCases useCases, Pages pages) {
        this.useCases = useCases;
        this.ladder = useCases.showLadder();
        this.pages = pages;
    }

    /** The racer's own ladder says nothing of an example that is somewhere else. */
    private ExampleView example(boolean shownHere) {
        ExampleState state = useCases.showKept().exampleState();
        return state == ExampleState.SHOWN && !shownHere ? ExampleView.NONE : new ExampleView(state, "/ladder");
    }

    private LaneView lanes(Context context, String track) {
        LaneView lanes = LaneView.of(ladder.ranking(track, ""), Forms.asked(context, "lane"));
        if (!lanes.chosen().isEmpty() && !lanes.names().contains(lanes.chosen())) {
            throw new Problem(
                    404,
                    "There are no laps on a lane of that name.",
                    "The lanes of each track are under Ladder. Nothing is lost.");
        }
        return lanes;
    }

    void show(Context context) {
        List<String> tracks = ladder.tracks();
        Optional<String> asked = Optional.ofNullable(context.queryParam("track"));
        String track = asked.filter(tracks::contains)
                .orElseGet(() -> asked.isEmpty() && !tracks.isEmpty() ? tracks.get(0) : "");
        if (asked.isPresent() && track.isEmpty() && !asked.get().isEmpty()) {
            throw new Problem(
                    404,
                    "There are no laps on a track of that name.",
                    "The ladder of each track is under Ladder. Nothing is lost.");
        }
        LaneView lanes = track.isEmpty() ? LaneView.NONE : lanes(context, track);
        List<LadderEntry> entries = track.isEmpty()
                ? List.of()
                : ladder.ranking(track, lanes.chosen()).entries();
        LadderChart chart = LadderChart.of(entries);
        boolean example = ladder.isExample(track);
        List<LadderEntry> earlier = track.isEmpty()
                ? List.of()
                : ladder.aMonthAgo(track, lanes.chosen()).entries();
        pages.show(
                context,
                "ladder.jte",
                new LadderPage(
                        pages.shell(track.isEmpty() ? "Ladder" : "Ladder of " + track, Tab.LADDER),
                        tracks,
                        track,
                        lanes,
                        LadderPage.rows(entries, earlier, WHEN.format(ladder.then()), chart, example),
                        chart.ticks(),
                        example(example)));
    }
}
