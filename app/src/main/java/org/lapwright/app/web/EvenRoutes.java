package org.lapwright.app.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.advice.EvenRaceInWords;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.next.EvenPage;
import org.lapwright.app.web.next.EvenPage.Rival;
import org.lapwright.app.web.next.EvenPage.Typed;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.advice.Course;
import org.lapwright.core.advice.EvenRace;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.NumberKey;

/** An even race: asked for in the address, so that the answer can be passed on. */
final class EvenRoutes {
    private static final NumberKey HELD = new NumberKey("driver", "held_percent", 50, 100);
    private static final double PERCENT = 100;

    private final OwnGarage garage;
    private final OwnList classes;
    private final Pages pages;

    EvenRoutes(UseCases useCases, Pages pages) {
        this.garage = useCases.physics().garage();
        this.classes = useCases.bench().ownClasses();
        this.pages = pages;
    }

    void show(Context context) {
        List<String> cars = garage.cars().stream().map(KeptFile::name).toList();
        List<String> tracks = garage.tracks().stream().map(KeptFile::name).toList();
        Typed typed = new Typed(
                Forms.chosen(Forms.asked(context, "track"), tracks, 0),
                rival(context, "first", cars, 0),
                rival(context, "second", cars, 1));
        List<String> problems = new ArrayList<>();
        boolean isAsked = context.queryParam("first") != null && !cars.isEmpty() && !tracks.isEmpty();
        List<String> said = isAsked ? answer(typed, problems) : List.of();
        if (!problems.isEmpty()) {
            context.status(422);
        }
        pages.show(
                context,
                "next/even.jte",
                new EvenPage(pages.shell("Even race", Tab.NEXT), cars, tracks, typed, problems, said));
    }

    private List<String> answer(Typed typed, List<String> problems) {
        Optional<Track> track = Forms.track(garage, typed.track());
        if (track.isEmpty()) {
            problems.add("There is no track “%s” that can be read; choose one.".formatted(typed.track()));
            return List.of();
        }
        double first = held(typed.first(), "First driver", problems);
        double second = held(typed.second(), "Second driver", problems);
        if (!problems.isEmpty()) {
            return List.of();
        }
        try {
            return EvenRaceInWords.of(
                    typed.first().car(),
                    typed.second().car(),
                    EvenRace.of(
                            rival(typed.first(), track.get(), 0, first),
                            rival(typed.second(), track.get(), 1, second)));
        } catch (IllegalArgumentException impossible) {
            problems.add(Forms.sentence(impossible));
            return List.of();
        }
    }

    private static double held(Rival typed, String label, List<String> problems) {
        org.lapwright.app.web.track.Typed numbers = new org.lapwright.app.web.track.Typed();
        double percent = numbers.number(typed.held(), HELD, label, PERCENT);
        problems.addAll(numbers.problems());
        return percent / PERCENT;
    }

    /** On the lane named; else the first car on the first lane and the second on the next. */
    private EvenRace.Rival rival(Rival typed, Track track, int place, double held) {
        List<Lane> lanes = track.lanes();
        Lane lane =
                typed.lane().isEmpty() ? lanes.get(Math.min(place, lanes.size() - 1)) : track.requireLane(typed.lane());
        return new EvenRace.Rival(
                Forms.readable(Forms.car(garage, typed.car())).build(),
                new Course(track, lane),
                held,
                ClassRoutes.kept(classes).limitsOf(typed.car()));
    }

    private static Rival rival(Context context, String name, List<String> cars, int place) {
        return new Rival(
                Forms.chosen(Forms.asked(context, name), cars, place),
                Forms.asked(context, name + "_lane").strip(),
                Forms.asked(context, name + "_held").strip());
    }
}
