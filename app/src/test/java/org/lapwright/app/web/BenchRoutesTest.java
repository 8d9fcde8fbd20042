package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.core.units.Reading;

class BenchRoutesTest {
    private Stage stage;
    private Visitor visitor;

    @BeforeEach
    void open() {
        stage = new Stage();
        visitor = new Visitor(stage);
    }

    @AfterEach
    void close() {
        stage.close();
    }

    private static Map<String, String> knot() {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("was", "");
        typed.put("name", "Knot");
        typed.put("scale", "32");
        typed.put("mass.total_g", "73,1");
        typed.put("chassis.guide_to_rear_axle_mm", "98");
        typed.put("chassis.rear_track_mm", "50");
        typed.put("rear_tyre.diameter_mm", "20");
        typed.put("gears.pinion_teeth", "11");
        typed.put("gears.axle_teeth", "28");
        typed.put("motor.no_load_rpm", "20500");
        typed.put("motor.test_voltage_v", "12");
        return typed;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private CarFile kept(String name) {
        return CarFile.read(stage.ownGarage().car(name).orElseThrow().text())
                .accepted()
                .orElseThrow();
    }

    @Test
    void theExamplesCarsGoInOneClickAndComeBack() {
        stage.withExampleGarage();
        assertThat(visitor.get("/bench").body()).contains("This is an example garage, invented.", "Dunlin");
        var gone = visitor.post("/example/remove", Map.of("back", "/bench"));
        assertThat(gone.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/bench"));
        assertThat(visitor.get("/bench").body()).doesNotContain("Dunlin").contains("Bring the example garage back");
        assertThat(visitor.get("/track").body()).doesNotContain("Shed loop");
        visitor.post("/example/bring-back", Map.of("back", "/bench"));
        assertThat(visitor.get("/bench").body()).contains("Dunlin");
    }

    @Test
    void aCarIsFoundAmongManyByWordsOfItsNameInAnyOrderCaseAndAccent() {
        String text = Reference.text("plain.car.json");
        for (int i = 1; i <= 30; i++) {
            stage.ownGarage().keepCar("Racer " + i, text);
        }
        stage.ownGarage().keepCar("Grébe huppé", text);
        assertThat(visitor.get("/bench").body()).contains("Find a car", "Racer 30");
        String one = visitor.get("/bench?find=" + encoded(" HUPPE greb ")).body();
        assertThat(one).contains("Grébe huppé", "1 of 31 cars.").doesNotContain("Racer 1");
        String none = visitor.get("/bench?find=" + encoded("<b>swan")).body();
        assertThat(none).contains("No car is called that.", "&lt;b>swan").doesNotContain("<b>swan");
    }

    @Test
    void fewCarsAreNotSearched() {
        stage.withExampleGarage();
        assertThat(visitor.get("/bench").body()).doesNotContain("Find a car");
    }

    @Test
    void anEmptyBenchSaysWhatWillBeThereAndGivesOneButton() {
        String page = visitor.get("/bench").body();
        assertThat(page).contains("Here every car with numbers will stand", "href=\"/bench/measure\"");
        assertThat(page.split("class=\"button", -1)).hasSize(2);
    }

    @Test
    void aMeasuredCarIsKeptAndShown() {
        HttpResponse<String> answer = visitor.post("/bench/measure", knot());
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location")).hasValue("/bench/car?name=Knot&saved");
        String page = visitor.get("/bench/car?name=Knot&saved").body();
        assertThat(page)
                .contains("19 numbers are usual values that nobody measured")
                .contains("<span class=\"tag\">usual, not measured</span> 1 ± 0.2")
                .contains("73.1 ± 0.5 g")
                .contains("Slides before it tips");
        assertThat(visitor.get("/bench").body()).contains("Knot").doesNotContain("example</span>");
    }

    @Test
    void mistakesAreNamedAndNothingTypedIsLost() {
        Map<String, String> typed = knot();
        typed.put("mass.total_g", "7,3o1");
        typed.put("rear_tyre.grip", "1,1");
        typed.put("ballast-0.name", "pod <b>");
        HttpResponse<String> answer = visitor.post("/bench/measure", typed);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("Nothing is saved yet. What you typed is still here.")
                .contains(
                        "<a href=\"#mass-total_g\">Weight of the car</a>: '7,3o1' is not a number; give one from 5 to 2000 g.")
                .contains("value=\"7,3o1\"", "value=\"1,1\"", "value=\"pod &lt;b>\"", "aria-invalid=\"true\"");
        assertThat(stage.ownGarage().cars()).isEmpty();
    }

    @Test
    void aNameIsTakenOnce() {
        visitor.post("/bench/measure", knot());
        HttpResponse<String> again = visitor.post("/bench/measure", knot());
        assertThat(again.statusCode()).isEqualTo(422);
        assertThat(again.body()).contains("You have a car of that name; choose another, or change that one.");
    }

    @Test
    void changingACarKeepsWhatElseItsFileSays() {
        stage.ownGarage()
                .keepCar(
                        "plain",
                        Reference.text("plain.car.json")
                                .replace("\"grip\": 1.05", "\"grip\": 1.05, \"compound\": \"soft\""));
        String form = visitor.get("/bench/measure?name=plain").body();
        assertThat(form).contains("name=\"rear_tyre.grip\" value=\"1.05\"", "name=\"was\" value=\"plain\"");
        Map<String, String> typed = knot();
        typed.put("was", "plain");
        typed.put("name", "plain");
        typed.put("rear_tyre.grip", "1.2");
        typed.put("rear_tyre.grip.plus_minus", "0.1");
        assertThat(visitor.post("/bench/measure", typed).statusCode()).isEqualTo(303);
        assertThat(kept("plain").setUp().rearTyre().grip()).isEqualTo(new Reading(1.2, 0.1));
        assertThat(kept("plain").text()).contains("\"compound\" : \"soft\"");
    }

    @Test
    void whenTheStorageFailsTheFormIsStillThere() {
        stage.garage().failWith("The disk is full.");
        HttpResponse<String> answer = visitor.post("/bench/measure", knot());
        assertThat(answer.statusCode()).isEqualTo(503);
        assertThat(answer.body()).contains("Not saved. The disk is full.", "value=\"73,1\"");
    }

    @Test
    void aFileIsPastedDownloadedAndPastedAgain() {
        String text = Reference.text("tall.car.json");
        Map<String, String> paste = new LinkedHashMap<>(Map.of("text", text));
        assertThat(visitor.post("/bench/file", paste).statusCode()).isEqualTo(303);
        HttpResponse<String> file = visitor.get("/bench/car.json?name=tall");
        assertThat(file.body()).isEqualTo(text);
        assertThat(file.headers().firstValue("Content-Disposition"))
                .hasValue("attachment; filename=\"tall.car.json\"; filename*=UTF-8''tall.car.json");
        HttpResponse<String> again = visitor.post("/bench/file", paste);
        assertThat(again.statusCode()).isEqualTo(422);
        assertThat(again.body()).contains("you have a car called “tall” already");
        paste.put("replace", "yes");
        assertThat(visitor.post("/bench/file", paste).statusCode()).isEqualTo(303);
    }

    @Test
    void aSlipInTheNameOfAKeyIsTold() {
        String text = Reference.text("tall.car.json").replace("yaw_inertia_g_mm2", "yaw_inertai_g_mm2");
        visitor.post("/bench/file", Map.of("text", text));
        assertThat(visitor.get("/bench/car?name=tall&saved").body())
                .contains("In the file: mass.yaw_inertai_g_mm2 is not used; it is kept as it is.");
        assertThat(visitor.get("/bench/car?name=tall").body()).doesNotContain("is not used");
    }

    @Test
    void aFileIsUploaded() {
        String text = Reference.text("soft.car.json");
        assertThat(visitor.upload("/bench/file", "file", "soft.car.json", text).statusCode())
                .isEqualTo(303);
        assertThat(stage.ownGarage().car("soft").orElseThrow().text()).isEqualTo(text);
    }

    @Test
    void aFileThatIsTooLargeIsRefused() {
        HttpResponse<String> answer = visitor.upload("/bench/file", "file", "big.json", " ".repeat(10_000_001));
        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(visitor.uploadInChunks("/bench/file", "file", "big.json", " ".repeat(10_000_001))
                        .statusCode())
                .isEqualTo(413);
        assertThat(stage.ownGarage().cars()).isEmpty();
    }

    @Test
    void aFormThatCannotBeTakenApartIsNoFault() {
        HttpResponse<String> answer = visitor.upload("/bench/file", "a\r\n\r\n--", "b", "c");
        assertThat(answer.statusCode()).isBetween(400, 422);
        assertThat(answer.body()).contains("Nothing");
        String text = Reference.text("soft.car.json");
        assertThat(visitor.uploadInChunks("/bench/file", "file", "soft.json", text)
                        .statusCode())
                .isEqualTo(303);
    }

    @Test
    void everyProblemOfAFileIsListed() {
        String text = Reference.text("plain.car.json")
                .replace("\"rear_track_mm\": 50", "\"rear_track_mm\": 5000")
                .replace("\"grip\": 1.05", "\"grip\": -1");
        HttpResponse<String> answer = visitor.post("/bench/file", Map.of("text", text));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("chassis.rear_track_mm is 5000 mm; it must be from 10 to 200 mm.")
                .contains("rear_tyre.grip is -1; it must be from 0.05 to 5.")
                .contains("\"rear_track_mm\": 5000");
        assertThat(visitor.post("/bench/file", Map.of("text", "")).body()).contains("the file is empty");
    }

    @Test
    void aTrackCountsAndSaysHowSure() {
        stage.withBench();
        visitor.post("/bench/measure", knot());
        String page = visitor.get("/bench/car?name=Knot&track=Shed+loop").body();
        assertThat(page)
                .contains("Best lap on Shed loop", "What it works out to on Shed loop")
                .contains("What makes it uncertain", "Tilt board: wheels locked")
                .containsPattern("<strong>\\d\\.\\d{3} s</strong>")
                .containsPattern("9 in 10 between \\d\\.\\d\\d and \\d\\.\\d\\d s");
        assertThat(visitor.get("/bench/car?name=plain&track=Shed+loop").body())
                .contains("how sure is not known", "No number of the car has a ± yet");
        assertThat(visitor.get("/bench/car?name=Knot&track=Nowhere").body())
                .contains("There is no track called “Nowhere”; the numbers are those on the bench.");
    }

    @Test
    void exampleCarsAreMarked() {
        stage.garage()
                .keepFile(new org.lapwright.app.usecase.KeptFile(
                        org.lapwright.app.usecase.FileStore.Kind.CAR,
                        "Dunlin",
                        Reference.text("plain.car.json"),
                        true,
                        Stage.CLOCK.instant()));
        assertThat(visitor.get("/bench").body()).contains("<span class=\"tag\">example</span>");
        assertThat(visitor.get("/bench/car?name=Dunlin").body()).contains("<span class=\"tag\">example</span>");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/bench/car", "/bench/car?name=", "/bench/car?name=+&track="})
    void withoutANameThereAreAllOfThem(String path) {
        stage.withBench();
        HttpResponse<String> answer = visitor.get(path);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).contains("/bench/car?name=plain");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/bench/car.json",
                "/bench/car?name=Nobody",
                "/bench/car.json?name=Nobody",
                "/bench/measure?name=Nobody"
            })
    void aCarThatIsNotThereSaysSo(String path) {
        HttpResponse<String> answer = visitor.get(path);
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("There is no car of that name on the bench.", "Nothing is lost.");
    }

    @Test
    void aKeptFileThatCannotBeReadSaysWhy() {
        stage.ownGarage().keepCar("Ruff", "{");
        HttpResponse<String> answer = visitor.get("/bench/car?name=Ruff");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("The file of “Ruff” cannot be read.", "this is not JSON");
        assertThat(visitor.get("/bench/car.json?name=Ruff").body()).isEqualTo("{");
    }

    @ParameterizedTest
    @ValueSource(strings = {"<img src=x onerror=alert(1)>", "a&b=c#d?e", "Bläss \"huhn\" 10 % ½", "../../etc", "'; --"})
    void namesAreTextEverywhere(String name) {
        Map<String, String> typed = knot();
        typed.put("name", name);
        HttpResponse<String> answer = visitor.post("/bench/measure", typed);
        assertThat(answer.statusCode()).isEqualTo(303);
        String page = visitor.get(answer.headers().firstValue("Location").orElseThrow())
                .body();
        assertThat(page).contains("/bench/measure?name=" + encoded(name)).doesNotContain("<img");
        assertThat(visitor.get("/bench").body())
                .contains("/bench/car?name=" + encoded(name))
                .doesNotContain("<img");
        assertThat(visitor.get("/bench/measure?name=" + encoded(name)).statusCode())
                .isEqualTo(200);
        HttpResponse<String> file = visitor.get("/bench/car.json?name=" + encoded(name));
        assertThat(file.headers().firstValue("Content-Disposition").orElseThrow())
                .matches("attachment; filename=\"[A-Za-z0-9._-]+\"; filename\\*=UTF-8''[A-Za-z0-9._%-]+");
        assertThat(CarFile.read(file.body()).accepted().orElseThrow().setUp().name())
                .isEqualTo(name);
    }
}
