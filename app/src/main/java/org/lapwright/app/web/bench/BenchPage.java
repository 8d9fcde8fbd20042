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
 * @param rows the cars, by name
 * @param garage what there is of the example garage
 */
public record BenchPage(Shell shell, List<Row> rows, ExampleView garage) {
    /** Copies the list. */
    public BenchPage {
        rows = List.copyOf(rows);
    }

    /** The list of these cars. */
    public static BenchPage of(Shell shell, List<KeptFile> cars, ExampleState state) {
        return new BenchPage(
                shell,
                cars.stream()
                        .map(car -> new Row(car.name(), address(car.name()), car.example()))
                        .toList(),
                new ExampleView(state, "/bench"));
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
