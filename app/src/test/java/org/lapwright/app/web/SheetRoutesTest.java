package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.usecase.HistoryStore.NewStep;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;

/** The set-up sheet, on the page and as a table. */
class SheetRoutesTest {
    private Stage stage;
    private Visitor visitor;

    @BeforeEach
    void open() {
        stage = new Stage().withBench();
        visitor = new Visitor(stage);
    }

    @AfterEach
    void close() {
        stage.close();
    }

    private Map<String, String> table(String car) {
        Map<String, String> rows = new HashMap<>();
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .ofCsvRecord(visitor.get("/bench/sheet.csv?name=" + car).body())) {
            csv.forEach(row -> rows.put(row.getField(0) + "/" + row.getField(1), row.getField(2)));
        } catch (java.io.IOException impossible) {
            throw new AssertionError(impossible);
        }
        return rows;
    }

    @Test
    void pageAndTableSayTheSame() {
        String page = visitor.get("/bench/sheet?name=magnet").body();
        Map<String, String> table = table("magnet");
        assertThat(table).containsEntry("Car/name", "magnet").hasSizeGreaterThan(30);
        List<String> values = table.entrySet().stream()
                .filter(entry -> !entry.getKey().startsWith("section/"))
                .map(Map.Entry::getValue)
                .toList();
        assertThat(page)
                .contains(values)
                .contains("With care", "No amount of lead is safe", "go before anything said here");
    }

    @Test
    void theLastChangesAreOnIt() {
        String text = stage.ownGarage().car("plain").orElseThrow().text();
        StoredHistory one = log(OptionalLong.empty(), "shim in", text);
        log(OptionalLong.of(one.present()), "=cmd|' /C calc'!A0", text);
        String page = visitor.get("/bench/sheet?name=plain").body();
        assertThat(page.indexOf("=cmd")).isPositive().isLessThan(page.indexOf("shim in"));
        assertThat(table("plain"))
                .containsEntry("Changes/1", "'=cmd|' /C calc'!A0")
                .containsEntry("Changes/2", "shim in");
    }

    private StoredHistory log(OptionalLong onto, String words, String text) {
        return stage.garage()
                .log(
                        new NewStep("plain", onto, text, "noted", words, "{}", text, false, Stage.CLOCK.instant()),
                        "key " + words);
    }

    /** A formula guard must not change numbers: the rear pod may sit at a negative place. */
    @Test
    void numbersStayNumbers() {
        CarFile file = CarFile.read(stage.ownGarage().car("plain").orElseThrow().text())
                .accepted()
                .orElseThrow();
        assertThat(file.setUp().name()).isEqualTo("plain");
        assertThat(table("plain").values()).noneMatch(value -> value.matches("'[-+]?[0-9].*"));
    }
}
