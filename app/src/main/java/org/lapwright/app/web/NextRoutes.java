package org.lapwright.app.web;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.advice.OwnLaps;
import org.lapwright.app.usecase.advice.ScoreForecasts;
import org.lapwright.app.usecase.advice.SuggestChanges;
import org.lapwright.app.usecase.advice.SuggestChanges.Question;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.next.LearnedPage;
import org.lapwright.app.web.next.NextPage;
import org.lapwright.app.web.next.ScorePage;
import org.lapwright.app.web.view.Shell;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.car.rules.RaceClasses;
import org.lapwright.core.track.Track;

/** What to try next. */
final class NextRoutes {
    private final OwnGarage garage;
    private final SuggestChanges suggestChanges;
    private final OwnLaps ownLaps;
    private final ScoreForecasts scoreForecasts;
    private final OwnList classes;
    private final Pages pages;

    NextRoutes(UseCases useCases, Pages pages) {
        this.garage = useCases.physics().garage();
        this.suggestChanges = useCases.bench().suggestChanges();
        this.ownLaps = useCases.bench().ownLaps();
        this.scoreForecasts = useCases.bench().scoreForecasts();
        this.classes = useCases.bench().ownClasses();
        this.pages = pages;
    }

    void show(Context context) {
        List<String> cars = garage.cars().stream().map(KeptFile::name).toList();
        List<String> tracks = garage.tracks().stream().map(KeptFile::name).toList();
        String car = Forms.chosen(Forms.asked(context, "car"), cars, 0);
        String track = Forms.chosen(Forms.asked(context, "track"), tracks, 0);
        Shell shell = pages.shell("What to try next", Tab.NEXT);
        pages.show(context, "next/next.jte", page(shell, cars, car, tracks, track));
    }

    private NextPage page(Shell shell, List<String> cars, String car, List<String> tracks, String track) {
        if (cars.isEmpty() || tracks.isEmpty()) {
            return NextPage.without(shell, cars, "", tracks, "", "");
        }
        CarFile file = Forms.readable(Forms.car(garage, car));
        Optional<Track> course = Forms.track(garage, track);
        if (course.isEmpty()) {
            return NextPage.without(shell, cars, car, tracks, track, unreadable(track));
        }
        try {
            Optional<OwnLaps.Answer> learned = ownLaps.learn(car, file.setUp(), course.get());
            RaceClasses kept = ClassRoutes.kept(classes);
            Question question = Question.of(file.build(), course.get())
                    .within(kept.limitsOf(car))
                    .on(learned.map(answer -> answer.learned().draws()).orElse(List.of()));
            return NextPage.of(
                            shell,
                            new NextPage.Choice(cars, car, tracks, track),
                            file.setUp(),
                            learned.map(answer -> answer.learned().diagnosis().paces())
                                    .orElse(0),
                            suggestChanges.answer(question),
                            suggestChanges.sensitivities(question))
                    .withRules(rules(kept, file, car));
        } catch (IllegalArgumentException impossible) {
            return NextPage.without(shell, cars, car, tracks, track, Forms.sentence(impossible));
        }
    }

    private static List<String> rules(RaceClasses kept, CarFile file, String car) {
        return kept.of(car).stream()
                .flatMap(one -> Stream.concat(
                        Stream.of("Only what class %s allows is offered.".formatted(one.name())),
                        one.remarks(file.build()).stream()))
                .toList();
    }

    void score(Context context) {
        pages.show(
                context,
                "next/score.jte",
                ScorePage.of(pages.shell("How good the forecasts were", Tab.NEXT), scoreForecasts.score()));
    }

    void learned(Context context) {
        List<String> cars = garage.cars().stream().map(KeptFile::name).toList();
        List<String> tracks = garage.tracks().stream().map(KeptFile::name).toList();
        String car = Forms.chosen(Forms.asked(context, "car"), cars, 0);
        String track = Forms.chosen(Forms.asked(context, "track"), tracks, 0);
        Shell shell = pages.shell("What the laps tell of the car", Tab.NEXT);
        NextPage.Choice choice = new NextPage.Choice(cars, car, tracks, track);
        pages.show(context, "next/learned.jte", learnedPage(shell, choice));
    }

    private LearnedPage learnedPage(Shell shell, NextPage.Choice choice) {
        if (choice.cars().isEmpty() || choice.tracks().isEmpty()) {
            return LearnedPage.without(shell, choice, "");
        }
        CarFile file = Forms.readable(Forms.car(garage, choice.car()));
        Optional<Track> course = Forms.track(garage, choice.track());
        if (course.isEmpty()) {
            return LearnedPage.without(shell, choice, unreadable(choice.track()));
        }
        try {
            return ownLaps.learn(choice.car(), file.setUp(), course.get())
                    .map(answer -> LearnedPage.of(shell, choice, answer))
                    .orElseGet(() -> LearnedPage.without(
                            shell,
                            choice,
                            "No laps of “%s” on “%s” are kept of which it is known what was driven. Drive a run, or keep a comparison."
                                    .formatted(choice.car(), choice.track())));
        } catch (IllegalArgumentException impossible) {
            return LearnedPage.without(shell, choice, Forms.sentence(impossible));
        }
    }

    private static String unreadable(String track) {
        return "The track “%s” cannot be read; Track says why.".formatted(track);
    }
}
