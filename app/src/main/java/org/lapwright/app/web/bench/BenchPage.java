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
 * @param rows the cars that are shown, in their order
 * @param all how many there are
 * @param sought what was looked for, empty when nothing was
 * @param order in which they stand
 * @param orders the orders that there are
 * @param away how many are put away
 * @param showsAway whether those are shown, else the others
 * @param garage what there is of the example garage
 */
public record BenchPage(
        Shell shell,
        List<Row> rows,
        int all,
        String sought,
        BenchOrder order,
        List<BenchOrder.Choice> orders,
        int away,
        boolean showsAway,
        ExampleView garage) {
    /** So many are seen at a glance: no need to look for one. */
    private static final int AT_A_GLANCE = 8;

    /** Copies the lists. */
    public BenchPage {
        rows = List.copyOf(rows);
        orders = List.copyOf(orders);
    }

    /**
     * What is asked of the list.
     *
     * @param lookedFor words of names or tags; empty for all
     * @param order in which they are to stand
     * @param orders the orders that there are
     * @param away whether those put away are asked for
     */
    public record Asked(String lookedFor, BenchOrder order, List<BenchOrder.Choice> orders, boolean away) {
        /** Copies the list. */
        public Asked {
            orders = List.copyOf(orders);
        }
    }

    /**
     * The list of these cars, or those of them that somebody looks for.
     *
     * @param shell around it
     * @param cars all of them, by name
     * @param labels their tags, and which are put away
     * @param asked what is asked
     * @param state what there is of the example garage
     */
    public static BenchPage of(
            Shell shell, List<KeptFile> cars, LabelListFile labels, Asked asked, ExampleState state) {
        Sought sought = new Sought(asked.lookedFor());
        List<KeptFile> shown = new ArrayList<>(cars.stream()
                .filter(car -> labels.of(car.name()).putAway() == asked.away())
                .toList());
        shown.sort(Comparator.comparing(KeptFile::name, asked.order().comparator()));
        List<Row> rows =
                sought
                        .among(
                                shown,
                                car -> car.name() + " "
                                        + String.join(" ", labels.of(car.name()).tags()))
                        .stream()
                        .map(car -> row(car, labels, asked.order()))
                        .toList();
        int away = (int)
                cars.stream().filter(car -> labels.of(car.name()).putAway()).count();
        return new BenchPage(
                shell,
                rows,
                shown.size(),
                sought.typed(),
                asked.order(),
                asked.orders(),
                away,
                asked.away(),
                new ExampleView(state, "/bench"));
    }

    private static Row row(KeptFile car, LabelListFile labels, BenchOrder order) {
        return new Row(
                car.name(),
                address(car.name()),
                car.example(),
                order.beside().getOrDefault(car.name(), ""),
                labels.of(car.name()).tags());
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
     * @param beside what is told of it in this order, or nothing
     * @param tags the owner's words for it
     */
    public record Row(String name, String address, boolean example, String beside, List<String> tags) {
        /** Copies the list. */
        public Row {
            tags = List.copyOf(tags);
        }
    }
}
