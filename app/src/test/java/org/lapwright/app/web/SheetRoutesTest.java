package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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

    @ParameterizedTest
    @ValueSource(strings = {"a4", "letter"})
    void thePdfSaysWhatTheTableSaysOnOnePageAndItsBack(String paper) throws java.io.IOException, InterruptedException {
        String text = stage.ownGarage().car("magnet").orElseThrow().text();
        stage.garage()
                .log(
                        new NewStep(
                                "magnet",
                                OptionalLong.empty(),
                                text,
                                "noted",
                                "<b>shim</b> & foil",
                                "{}",
                                text,
                                false,
                                Stage.CLOCK.instant()),
                        "key");
        var answer = java.net.http.HttpClient.newHttpClient()
                .send(
                        java.net.http.HttpRequest.newBuilder(
                                        java.net.URI.create(stage.url("/bench/sheet.pdf?name=magnet&paper=" + paper)))
                                .build(),
                        java.net.http.HttpResponse.BodyHandlers.ofByteArray());
        assertThat(answer.statusCode()).isEqualTo(200);
        try (PDDocument pdf = Loader.loadPDF(answer.body())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
            String front = plain(pdf, 1);
            String back = plain(pdf, 2);
            table("magnet").forEach((what, value) -> {
                if (!what.startsWith("section/")) {
                    assertThat(front).contains(value.replaceAll("\\s", ""));
                }
            });
            assertThat(front).contains("<b>shim</b>&foil").doesNotContain("Withcare");
            assertThat(inkInTheDrawing(pdf)).isBetween(0.01, 0.3);
            assertThat(back).contains("Withcare", "Noamountofleadissafe", "gobeforeanythingsaidhere");
        }
    }

    /** Share of black where the car is drawn: tyres that touch and bars of load are black, also on a printer without colours. */
    private static double inkInTheDrawing(PDDocument pdf) throws java.io.IOException {
        var picture = new PDFRenderer(pdf).renderImageWithDPI(0, 36, ImageType.GRAY);
        int black = 0;
        int wide = picture.getWidth() / 2;
        int high = picture.getHeight() * 2 / 5;
        int top = picture.getHeight() / 12;
        for (int x = 0; x < wide; x++) {
            for (int y = top; y < high; y++) {
                black += picture.getRaster().getSample(x, y, 0) < 80 ? 1 : 0;
            }
        }
        return black / (double) (wide * (high - top));
    }

    /** Without blanks, because a long line is broken where it is. */
    private static String plain(PDDocument pdf, int page) throws java.io.IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(false);
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(pdf).replaceAll("\\s", "");
    }

    @Test
    void anotherPaperIsNotThere() {
        assertThat(visitor.get("/bench/sheet.pdf?name=magnet&paper=napkin").statusCode())
                .isEqualTo(404);
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
