package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.advice.BestSetUpSearches;
import org.lapwright.app.usecase.advice.BestSetUpSearches.State;
import org.lapwright.app.usecase.advice.FindBestSetUp;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.bench.BenchPage;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.next.BestPage;
import org.lapwright.app.web.next.BestPage.Search;
import org.lapwright.app.web.next.BestPage.Typed;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.advice.Course;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.rules.ClassLimits;
import org.lapwright.core.car.rules.ClassNumber;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.NumberKey;

/** The best set-up of a car: asked for, searched while one looks on, ended early if one likes. */
final class BestRoutes {
    private static final NumberKey MASS = new NumberKey("class", "mass_g", 1, 5000);
    private static final NumberKey WIDTH = new NumberKey("class", "width_mm", 10, 500);

    private final OwnGarage garage;
    private final BestSetUpSearches searches;
    private final OwnList classes;
    private final Pages pages;

    BestRoutes(UseCases useCases, Pages pages) {
        this.garage = useCases.physics().garage();
        this.searches = useCases.bench().bestSetUps();
        this.classes = useCases.bench().ownClasses();
        this.pages = pages;
    }

    void show(Context context) {
        Typed typed = typed(name -> Forms.asked(context, name));
        OptionalLong job = Forms.number(Forms.asked(context, "job"));
        if (job.isEmpty()) {
            show(context, typed, List.of(), Optional.empty());
            return;
        }
        State state = searches.look(job.getAsLong())
                .orElseThrow(() -> new Problem(
                        404, "That search is not remembered any more.", "Ask for it again: it takes a few seconds."));
        SetUp before = Forms.readable(Forms.car(garage, typed.car())).setUp();
        show(context, typed, List.of(), Optional.of(Search.of(job.getAsLong(), state, before, typed)));
    }

    void begin(Context context) {
        Forms.require(context);
        Typed typed = typed(new Fields(context.formParamMap())::text);
        List<String> problems = new ArrayList<>();
        Optional<Track> track = Forms.track(garage, typed.track());
        if (track.isEmpty()) {
            problems.add("There is no track “%s” that can be read; choose one.".formatted(typed.track()));
        }
        ClassLimits bounds = bounds(typed, problems);
        if (!problems.isEmpty()) {
            context.status(422);
            show(context, typed, problems, Optional.empty());
            return;
        }
        try {
            List<Course> courses = typed.lane().isEmpty()
                    ? Course.all(track.orElseThrow())
                    : List.of(
                            new Course(track.orElseThrow(), track.orElseThrow().requireLane(typed.lane())));
            long number = searches.begin(new FindBestSetUp.Question(
                    Forms.readable(Forms.car(garage, typed.car())).build(), courses, List.of(), bounds));
            context.redirect(address(typed, number), HttpStatus.SEE_OTHER);
        } catch (IllegalArgumentException impossible) {
            context.status(422);
            show(context, typed, List.of(Forms.sentence(impossible)), Optional.empty());
        }
    }

    void end(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        OptionalLong job = Forms.number(fields.text("job"));
        job.ifPresent(searches::end);
        context.redirect(address(typed(fields::text), job.orElse(0)), HttpStatus.SEE_OTHER);
    }

    /** What is typed, and what the class of the car asks for. */
    private ClassLimits bounds(Typed typed, List<String> problems) {
        org.lapwright.app.web.track.Typed numbers = new org.lapwright.app.web.track.Typed();
        OptionalDouble least = number(numbers, typed.leastMass(), MASS, "Least weight");
        OptionalDouble most = number(numbers, typed.mostMass(), MASS, "Greatest weight");
        OptionalDouble width = number(numbers, typed.mostWidth(), WIDTH, "Greatest track width");
        problems.addAll(numbers.problems());
        Map<ClassNumber, Double> asked = new EnumMap<>(ClassNumber.class);
        least.ifPresent(grams -> asked.put(ClassNumber.LEAST_MASS, grams));
        most.ifPresent(grams -> asked.put(ClassNumber.MOST_MASS, grams));
        width.ifPresent(mm -> asked.put(ClassNumber.MOST_WIDTH, mm));
        try {
            return new ClassLimits(asked, !typed.noMagnet(), Map.of())
                    .and(ClassRoutes.kept(classes).limitsOf(typed.car()));
        } catch (IllegalArgumentException senseless) {
            problems.add(Forms.sentence(senseless));
            return ClassLimits.NONE;
        }
    }

    private static OptionalDouble number(
            org.lapwright.app.web.track.Typed numbers, String text, NumberKey key, String label) {
        double value = numbers.number(text, key, label, Double.NaN);
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private void show(Context context, Typed typed, List<String> problems, Optional<Search> search) {
        pages.show(
                context,
                "next/best.jte",
                new BestPage(
                        pages.shell("Best set-up", Tab.NEXT),
                        names(garage.cars()),
                        names(garage.tracks()),
                        typed,
                        problems,
                        search));
    }

    private Typed typed(UnaryOperator<String> field) {
        return new Typed(
                Forms.chosen(field.apply("car"), names(garage.cars()), 0),
                Forms.chosen(field.apply("track"), names(garage.tracks()), 0),
                field.apply("lane").strip(),
                field.apply("least_mass"),
                field.apply("most_mass"),
                field.apply("most_width"),
                field.apply("no_magnet").equals("yes"));
    }

    private static List<String> names(List<KeptFile> files) {
        return files.stream().map(KeptFile::name).toList();
    }

    private static String address(Typed typed, long job) {
        return "/next/best?job=%d&car=%s&track=%s&lane=%s&least_mass=%s&most_mass=%s&most_width=%s&no_magnet=%s"
                .formatted(
                        job,
                        BenchPage.encoded(typed.car()),
                        BenchPage.encoded(typed.track()),
                        BenchPage.encoded(typed.lane()),
                        BenchPage.encoded(typed.leastMass()),
                        BenchPage.encoded(typed.mostMass()),
                        BenchPage.encoded(typed.mostWidth()),
                        typed.noMagnet() ? "yes" : "");
    }
}
