package org.lapwright.app.web.bench.sheet;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.app.usecase.HistoryStore.StoredStep;
import org.lapwright.app.usecase.bench.Caution;
import org.lapwright.app.usecase.physics.ExplainedNumber;
import org.lapwright.app.usecase.physics.ForecastInWords;
import org.lapwright.app.usecase.physics.NumberWords;
import org.lapwright.app.usecase.physics.NumbersInWords;
import org.lapwright.app.web.bench.BenchPage;
import org.lapwright.app.web.bench.PlanDrawing;
import org.lapwright.app.web.bench.PlanView;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.NamedReading;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.PartPlace;
import org.lapwright.core.car.change.Trim;
import org.lapwright.core.trial.ladder.LadderEntry;

/**
 * A car on one sheet of paper, in the order in which one works down a bench: guide, front, weight, ballast, rear, gears and motor,
 * magnet, what it works out to, what was done to it, its pace.
 *
 * @param shell around it on the screen
 * @param car its name
 * @param when it was printed
 * @param plan the car from above
 * @param sections rows by section
 * @param changes the last changes, the newest first
 */
public record SheetPage(
        Shell shell, String car, String when, PlanView plan, List<Section> sections, List<String> changes) {
    private static final int MOST_CHANGES = 8;
    private static final String FORMULA_STARTS = "=+-@\t\r";

    /** Copies the lists. */
    public SheetPage {
        sections = List.copyOf(sections);
        changes = List.copyOf(changes);
    }

    /**
     * Some rows under a title.
     *
     * @param title of the section
     * @param rows of it
     */
    public record Section(String title, List<Row> rows) {
        /** Copies the list. */
        public Section {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One row.
     *
     * @param label what it is
     * @param value with its doubt and unit
     */
    public record Row(String label, String value) {}

    /**
     * A car's place on a ladder.
     *
     * @param track where
     * @param entry its place and pace
     */
    public record Place(String track, LadderEntry entry) {}

    /**
     * The sheet of a car.
     *
     * @param numbers what it works out to
     * @param history what was done to it; empty when nothing was logged
     * @param places on the ladders
     */
    public static SheetPage of(
            Shell shell,
            CarFile file,
            String when,
            NumbersInWords numbers,
            Optional<StoredHistory> history,
            List<Place> places) {
        Build build = file.build();
        List<Section> sections = new ArrayList<>();
        sections.add(section(build, "Guide and front", List.of("guide.", "pickup_ohm"), front(build)));
        sections.add(section(build, "Chassis and weight", List.of("chassis.", "mass."), List.of()));
        sections.add(new Section("Ballast", ballast(build)));
        sections.add(section(build, "Rear", List.of("rear_tyre.", "drag."), List.of()));
        sections.add(section(build, "Gears and motor", List.of("gears.", "motor."), List.of()));
        sections.add(section(build, "Magnet", List.of("magnet."), List.of()));
        sections.add(new Section("Parts fitted", parts(build.trim())));
        sections.add(new Section(
                "Works out to", numbers.all().stream().map(SheetPage::workedOut).toList()));
        sections.add(new Section("Pace", places.stream().map(SheetPage::pace).toList()));
        sections.removeIf(section -> section.rows().isEmpty());
        return new SheetPage(
                shell,
                build.setUp().name(),
                when,
                PlanDrawing.of(build.setUp(), numbers.numbers()),
                sections,
                history.map(SheetPage::changes).orElse(List.of()));
    }

    /** The cautions for its back. */
    public List<Caution> cautions() {
        return List.of(Caution.values());
    }

    /** What stands under them. */
    public String deference() {
        return Caution.deference();
    }

    /** Its name as part of an address. */
    public String encodedName() {
        return BenchPage.encoded(car);
    }

    /** The same as a table: section, what, value. Texts that a spreadsheet would take for a formula are marked as texts. */
    public String csv() {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().build(text)) {
            writeTo(csv);
        } catch (IOException impossible) {
            throw new UncheckedIOException("text in memory cannot be written", impossible);
        }
        return text.toString();
    }

    private void writeTo(CsvWriter csv) {
        csv.writeRecord("section", "what", "value");
        csv.writeRecord("Car", "name", guarded(car));
        for (Section section : sections) {
            for (Row row : section.rows()) {
                csv.writeRecord(section.title(), guarded(row.label()), guarded(row.value()));
            }
        }
        for (int i = 0; i < changes.size(); i++) {
            csv.writeRecord("Changes", Integer.toString(i + 1), guarded(changes.get(i)));
        }
    }

    private static String guarded(String text) {
        boolean formula =
                !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 && !text.matches("[+\\-]?[0-9].*");
        return formula ? "'" + text : text;
    }

    private static Section section(Build build, String title, List<String> paths, List<Row> first) {
        List<Row> rows = new ArrayList<>(first);
        for (NamedReading number : build.setUp().numbers()) {
            if (paths.stream().anyMatch(number.path()::startsWith)) {
                rows.add(new Row(
                        NumberWords.of(number.path()).label(),
                        ForecastInWords.reading(
                                number.reading().value(),
                                number.reading().plusMinus(),
                                number.key().unit())));
            }
        }
        return new Section(title, rows);
    }

    private static List<Row> front(Build build) {
        List<Row> rows = new ArrayList<>();
        boolean touch = build.setUp().chassis().frontWheels() == FrontWheels.TOUCHING;
        rows.add(new Row("Front wheels", touch ? "touch the track" : "hang clear"));
        build.trim()
                .frontGapMm()
                .ifPresent(gap -> rows.add(new Row("Front wheels above the track", Figures.fixed(gap, 2) + " mm")));
        List<Double> shims = build.trim().shimsMm();
        if (!shims.isEmpty()) {
            rows.add(new Row(
                    "Shims under the guide",
                    String.join(
                                    " + ",
                                    shims.stream()
                                            .map(shim -> Figures.significant(shim, 3))
                                            .toList())
                            + " mm"));
        }
        return rows;
    }

    private static List<Row> ballast(Build build) {
        List<Row> rows = new ArrayList<>();
        for (Ballast piece : build.setUp().ballast()) {
            rows.add(new Row(
                    piece.name(),
                    "%s g at x %s, y %s, z %s mm"
                            .formatted(
                                    Figures.significant(piece.massG().value(), 4),
                                    Figures.significant(piece.xMm().value(), 4),
                                    Figures.significant(piece.yMm().value(), 4),
                                    Figures.significant(piece.zMm().value(), 4))));
        }
        return rows;
    }

    private static List<Row> parts(Trim trim) {
        List<Row> rows = new ArrayList<>();
        for (PartPlace place : PartPlace.values()) {
            trim.fittedAt(place).ifPresent(name -> rows.add(new Row(place.label(), name)));
        }
        trim.bodyTurns()
                .ifPresent(
                        turns -> rows.add(new Row("body screws backed off", Figures.significant(turns, 3) + " turns")));
        return rows;
    }

    private static Row workedOut(ExplainedNumber number) {
        return new Row(number.label(), number.shown());
    }

    private static Row pace(Place place) {
        LadderEntry entry = place.entry();
        return new Row(
                place.track(),
                "%s (%s to %s), place %d of its ladder, %d clean laps"
                        .formatted(
                                Figures.seconds(entry.paceS()),
                                Figures.fixed(entry.intervalS().low(), 3),
                                Figures.seconds(entry.intervalS().high()),
                                entry.place(),
                                entry.laps()));
    }

    private static List<String> changes(StoredHistory history) {
        List<String> newestFirst = new ArrayList<>();
        Optional<StoredStep> at = Optional.of(history.presentStep());
        while (at.isPresent() && newestFirst.size() < MOST_CHANGES) {
            StoredStep step = at.get();
            if (step.parent().isEmpty()) {
                break;
            }
            newestFirst.add(step.words());
            long parent = step.parent().getAsLong();
            at = history.steps().stream().filter(found -> found.id() == parent).findFirst();
        }
        return newestFirst;
    }
}
