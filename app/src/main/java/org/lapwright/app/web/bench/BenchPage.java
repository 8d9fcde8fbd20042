package org.lapwright.app.web.bench;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
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
 * @param garage what there is of the example garage
 */
public record BenchPage(Shell shell, List<Row> rows, int all, String sought, ExampleView garage) {
    /** So many are seen at a glance: no need to look for one. */
    private static final int AT_A_GLANCE = 8;

    /** Copies the list. */
    public BenchPage {
        rows = List.copyOf(rows);
    }

    /** The list of these cars, or those of them that somebody looks for. */
    public static BenchPage of(Shell shell, List<KeptFile> cars, String lookedFor, ExampleState state) {
        Sought sought = new Sought(lookedFor);
        return new BenchPage(
                shell,
                sought.among(cars, KeptFile::name).stream()
                        .map(car -> new Row(car.name(), address(car.name()), car.example()))
                        .toList(),
                cars.size(),
                sought.typed(),
                new ExampleView(state, "/bench"));
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
        return rows.isEmpty() ? "No car is called that." : "%d of %d cars.".formatted(rows.size(), all);
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
     */
    public record Row(String name, String address, boolean example) {}
}
