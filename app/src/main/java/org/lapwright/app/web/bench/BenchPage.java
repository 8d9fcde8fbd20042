package org.lapwright.app.web.bench;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lapwright.app.files.garage.LabelListFile;
import org.lapwright.app.usecase.GarageStore.ExampleState;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.web.view.ExampleView;
import org.lapwright.app.web.view.Shell;

/**
 * All cars with numbers.
 *
 * @param shell around it
 * @param rows the cars that are shown, by name
 * @param all how many there are
 * @param sought what was looked for, empty when nothing was
 * @param byDriven whether the one driven last comes first, else they go by name
 * @param away how many are put away
 * @param showsAway whether those are shown, else the others
 * @param garage what there is of the example garage
 */
public record BenchPage(
        Shell shell,
        List<Row> rows,
        int all,
        String sought,
        boolean byDriven,
        int away,
        boolean showsAway,
        ExampleView garage) {
    /** So many are seen at a glance: no need to look for one. */
    private static final int AT_A_GLANCE = 8;

    /** Copies the list. */
    public BenchPage {
        rows = List.copyOf(rows);
    }

    /**
     * What is asked of the list.
     *
     * @param lookedFor words of names or tags; empty for all
     * @param byDriven whether the one driven last is to come first
     * @param away whether those put away are asked for
     */
    public record Asked(String lookedFor, boolean byDriven, boolean away) {}

    /**
     * The list of these cars, or those of them that somebody looks for.
     *
     * @param shell around it
     * @param cars all of them, by name
     * @param labels their tags, and which are put away
     * @param driven own cars that have laps, the one driven last first
     * @param asked what is asked
     * @param state what there is of the example garage
     */
    public static BenchPage of(
            Shell shell,
            List<KeptFile> cars,
            LabelListFile labels,
            List<String> driven,
            Asked asked,
            ExampleState state) {
        Sought sought = new Sought(asked.lookedFor());
        List<KeptFile> shown = new ArrayList<>(cars.stream()
                .filter(car -> labels.of(car.name()).putAway() == asked.away())
                .toList());
        if (asked.byDriven()) {
            shown.sort(Comparator.comparingInt(car -> place(driven, car.name())));
        }
        List<Row> rows =
                sought
                        .among(
                                shown,
                                car -> car.name() + " "
                                        + String.join(" ", labels.of(car.name()).tags()))
                        .stream()
                        .map(car -> row(car, labels))
                        .toList();
        int away = (int)
                cars.stream().filter(car -> labels.of(car.name()).putAway()).count();
        return new BenchPage(
                shell,
                rows,
                shown.size(),
                sought.typed(),
                asked.byDriven(),
                away,
                asked.away(),
                new ExampleView(state, "/bench"));
    }

    private static Row row(KeptFile car, LabelListFile labels) {
        return new Row(
                car.name(),
                address(car.name()),
                car.example(),
                labels.of(car.name()).tags());
    }

    private static int place(List<String> driven, String car) {
        int place = driven.indexOf(car);
        return place < 0 ? driven.size() : place;
    }

    /** Whether there are so many that one is looked for. */
    public boolean isSearchable() {
        return all > AT_A_GLANCE || !sought.isEmpty();
    }

    /** How many of them are shown; empty when all are. */
    public String found() {
        if (sought.isEmpty()) {
            return "";
        }
        return rows.isEmpty()
                ? "No car is called that. None is tagged so."
                : "%d of %d cars.".formatted(rows.size(), all);
    }

    /** A name as part of an address. */
    public static String encoded(String name) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8);
    }

    /** Where a car is. */
    public static String address(String name) {
        return "/bench/car?name=" + encoded(name);
    }

    /**
     * One car.
     *
     * @param name of the car
     * @param address of its page
     * @param example whether it belongs to the example garage
     * @param tags the owner's words for it
     */
    public record Row(String name, String address, boolean example, List<String> tags) {
        /** Copies the list. */
        public Row {
            tags = List.copyOf(tags);
        }
    }
}
