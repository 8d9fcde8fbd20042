package org.lapwright.app.web;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.advice.SuggestChanges;
import org.lapwright.app.usecase.advice.SuggestChanges.Question;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.next.NextPage;
import org.lapwright.app.web.view.Shell;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.track.Track;

/** What to try next. */
final class NextRoutes {
    private final OwnGarage garage;
    private final SuggestChanges suggestChanges;
    private final Pages pages;

    NextRoutes(UseCases useCases, Pages pages) {
        this.garage = useCases.physics().garage();
        this.suggestChanges = useCases.bench().suggestChanges();
        this.pages = pages;
    }

    void show(Context context) {
        List<String> cars = garage.cars().stream().map(KeptFile::name).toList();
        List<String> tracks = garage.tracks().stream().map(KeptFile::name).toList();
        String car = chosen(context, "car", cars);
        String track = chosen(context, "track", tracks);
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
            return NextPage.without(
                    shell, cars, car, tracks, track, "The track “%s” cannot be read; Track says why.".formatted(track));
        }
        try {
            Question question = Question.of(file.build(), course.get());
            return NextPage.of(
                    shell,
                    new NextPage.Choice(cars, car, tracks, track),
                    suggestChanges.answer(question),
                    suggestChanges.sensitivities(question));
        } catch (IllegalArgumentException impossible) {
            return NextPage.without(shell, cars, car, tracks, track, Forms.sentence(impossible));
        }
    }

    /** The one asked for, or the first: the page is of use at once. */
    private static String chosen(Context context, String name, List<String> names) {
        return Optional.ofNullable(context.queryParam(name))
                .filter(asked -> !asked.isBlank())
                .orElseGet(() -> names.stream().findFirst().orElse(""));
    }
}
