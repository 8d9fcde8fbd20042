package org.lapwright.app.web;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.FileReading;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.ShowKept;
import org.lapwright.app.usecase.physics.CrossingsInWords;
import org.lapwright.app.usecase.physics.ForecastInWords;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.usecase.physics.PredictLap;
import org.lapwright.app.usecase.physics.PredictionInWords;
import org.lapwright.app.web.track.BoxPage;
import org.lapwright.app.web.track.HowSurePage;
import org.lapwright.app.web.track.LaneCard;
import org.lapwright.app.web.track.TrackChoice;
import org.lapwright.app.web.track.TrackListPage;
import org.lapwright.app.web.track.TrackPage;
import org.lapwright.app.web.track.TrackPage.Driven;
import org.lapwright.app.web.track.TrackPage.LapView;
import org.lapwright.app.web.track.editor.TrackForm;
import org.lapwright.app.web.view.ExampleView;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Track;

/** The tracks, and the best lap on each. */
final class TrackRoutes {
    private final PhysicsCases cases;
    private final OwnGarage garage;
    private final ShowKept showKept;
    private final Pages pages;

    TrackRoutes(UseCases useCases, Pages pages) {
        this.cases = useCases.physics();
        this.showKept = useCases.showKept();
        this.garage = cases.garage();
        this.pages = pages;
    }

    void show(Context context) {
        if (context.queryParam("track") == null) {
            pages.show(
                    context,
                    "tracks.jte",
                    new TrackListPage(
                            pages.shell("Tracks", Tab.TRACK),
                            garage.tracks().stream().map(TrackListPage.Row::of).toList(),
                            new ExampleView(showKept.exampleState(), "/track")));
            return;
        }
        KeptFile file = asked(context);
        Track track = read(file);
        List<String> notices = new ArrayList<>();
        Lane lane = lane(track, asked(context, "lane"), notices);
        TrackChoice choice = choice(context, file, track, lane, notices);
        pages.show(context, "track.jte", page(context, file, track, lane, choice, notices));
    }

    /** Takes a thousand laps, so it is asked for by itself: the page does not wait for it. */
    void howSure(Context context) {
        KeptFile file = asked(context);
        Track track = read(file);
        List<String> notices = new ArrayList<>();
        Lane lane = lane(track, asked(context, "lane"), notices);
        String name = asked(context, "car");
        Optional<SetUp> car = car(name, notices);
        String answer = car.map(setUp -> howSure(setUp, track, lane, notices))
                .filter(said -> !said.isEmpty())
                .orElse(HowSurePage.UNKNOWN);
        pages.show(
                context,
                "howsure.jte",
                new HowSurePage(
                        pages.shell("How sure", Tab.TRACK),
                        name,
                        lane.name(),
                        notices.isEmpty() ? answer : String.join(" ", notices),
                        TrackChoice.page(file.name())));
    }

    private String howSure(SetUp setUp, Track track, Lane lane, List<String> notices) {
        try {
            return ForecastInWords.interval(
                    cases.forecastLap().forecast(setUp, track, lane).forecast());
        } catch (IllegalArgumentException senseless) {
            notices.add(senseless.getMessage() + ".");
            return "";
        }
    }

    /** The file word for word, under a name that any disk can hold. */
    /** All tracks of pieces side by side; one whose file cannot be read is left out, the list of tracks says why. */
    void box(Context context) {
        List<Track> tracks = garage.tracks().stream()
                .flatMap(kept -> TrackFile.read(kept.text()).accepted().stream())
                .map(TrackFile::track)
                .toList();
        pages.show(
                context,
                "trackbox.jte",
                BoxPage.of(pages.shell("Layouts side by side", Tab.TRACK), tracks, KitRoutes.box(cases.pieces())));
    }

    void download(Context context) {
        KeptFile file = asked(context);
        String name = file.name()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        context.contentType("application/json; charset=utf-8")
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"%s.track.json\"".formatted(name.isEmpty() ? "track" : name))
                .result(file.text().getBytes(StandardCharsets.UTF_8));
    }

    private TrackPage page(
            Context context, KeptFile file, Track track, Lane lane, TrackChoice choice, List<String> notices) {
        Optional<SetUp> car = car(choice.car(), notices);
        List<LaneCard> cards = new ArrayList<>();
        Optional<PredictedLap> drawn = Optional.empty();
        for (Lane each : track.lanes()) {
            boolean current = each.equals(lane);
            String link = choice.onLane(each.name());
            Optional<PredictLap.OnLane> lap = car.flatMap(setUp -> predict(setUp, track, each, notices));
            cards.add(lap.map(found -> LaneCard.of(track, found, current, link, choice.howSure(each.name())))
                    .orElseGet(() -> LaneCard.empty(each, track.lengthM(each), current, link)));
            if (current) {
                drawn = lap.flatMap(TrackRoutes::best);
            }
        }
        Optional<Driven> other = other(choice, track, lane, drawn.isPresent(), notices);
        return new TrackPage(
                pages.shell(file.name(), Tab.TRACK),
                choice,
                context.queryParamMap().containsKey("saved"),
                file.example(),
                !(track.layout() instanceof PieceLayout layout)
                        || layout.pieces().size() <= TrackForm.MOST_PIECES,
                notices,
                TrackPage.surface(track.surface()),
                CrossingsInWords.of(track),
                TrackPage.map(track, lane, drawn, choice.byLimit()),
                drawn.map(best -> LapView.of(track, lane, new Driven(choice.car(), best), other)),
                cards);
    }

    private Optional<Driven> other(TrackChoice choice, Track track, Lane lane, boolean wanted, List<String> notices) {
        if (!wanted || choice.against().isEmpty()) {
            return Optional.empty();
        }
        Optional<PredictLap.OnLane> lap =
                car(choice.against(), notices).flatMap(setUp -> predict(setUp, track, lane, notices));
        lap.map(found -> PredictionInWords.noLap(found.outcome()))
                .filter(why -> !why.isEmpty())
                .ifPresent(why -> notices.add("%s, %s.".formatted(choice.against(), why)));
        return lap.flatMap(TrackRoutes::best).map(best -> new Driven(choice.against(), best));
    }

    private static Optional<PredictedLap> best(PredictLap.OnLane lap) {
        return lap.outcome() instanceof PredictedLap best ? Optional.of(best) : Optional.empty();
    }

    private Optional<PredictLap.OnLane> predict(SetUp setUp, Track track, Lane lane, List<String> notices) {
        try {
            return Optional.of(cases.predictLap().predict(setUp, track, lane));
        } catch (IllegalArgumentException impossible) {
            String sentence = "%s cannot be sent round: %s.".formatted(setUp.name(), impossible.getMessage());
            if (!notices.contains(sentence)) {
                notices.add(sentence);
            }
            return Optional.empty();
        }
    }

    private TrackChoice choice(Context context, KeptFile file, Track track, Lane lane, List<String> notices) {
        List<String> cars = garage.cars().stream().map(KeptFile::name).toList();
        String car = among(cars, asked(context, "car"), cars.isEmpty() ? "" : cars.get(0), notices);
        String against = among(cars, asked(context, "against"), "", notices);
        return new TrackChoice(
                garage.tracks().stream().map(kept -> kept.name()).toList(),
                file.name(),
                track.lanes().stream().map(Lane::name).toList(),
                lane.name(),
                cars,
                car,
                against.equals(car) ? "" : against,
                asked(context, "show").equals(TrackChoice.LIMITS) ? TrackChoice.LIMITS : TrackChoice.SPEED);
    }

    private static String among(List<String> names, String wanted, String otherwise, List<String> notices) {
        if (wanted.isEmpty() || names.contains(wanted)) {
            return wanted.isEmpty() ? otherwise : wanted;
        }
        notices.add("There is no car '%s' in the garage%s."
                .formatted(wanted, otherwise.isEmpty() ? "" : "; this is " + otherwise));
        return otherwise;
    }

    private static Lane lane(Track track, String wanted, List<String> notices) {
        Lane first = track.lanes().get(0);
        if (wanted.isEmpty()) {
            return first;
        }
        return track.lanes().stream()
                .filter(lane -> lane.name().equals(wanted))
                .findFirst()
                .orElseGet(() -> {
                    notices.add("The track has no lane '%s'; this is lane %s.".formatted(wanted, first.name()));
                    return first;
                });
    }

    private Optional<SetUp> car(String name, List<String> notices) {
        if (name.isEmpty()) {
            return Optional.empty();
        }
        FileReading<CarFile> reading =
                CarFile.read(garage.car(name).map(KeptFile::text).orElse(""));
        reading.problems().forEach(problem -> notices.add("The file of %s: %s".formatted(name, problem.sentence())));
        return reading.accepted().map(CarFile::setUp);
    }

    private KeptFile asked(Context context) {
        return garage.track(asked(context, "track"))
                .orElseThrow(() -> new Problem(
                        404, "There is no track of that name.", "All of them are under Track. Nothing is lost."));
    }

    private static Track read(KeptFile file) {
        FileReading<TrackFile> reading = TrackFile.read(file.text());
        return reading.accepted()
                .map(read -> read.track())
                .orElseThrow(() -> new Problem(
                        422,
                        "The file of %s cannot be used as it is.".formatted(file.name()),
                        String.join(
                                " ",
                                reading.problems().stream()
                                        .map(problem -> problem.sentence())
                                        .toList())));
    }

    private static String asked(Context context, String name) {
        String given = context.queryParam(name);
        return given == null ? "" : given;
    }
}
