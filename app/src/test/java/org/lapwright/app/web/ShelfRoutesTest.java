package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.app.usecase.ShelfStore.NewPart;
import org.lapwright.app.usecase.bench.KeepShelf;
import org.lapwright.core.car.shelf.PartEvent;
import org.lapwright.core.car.shelf.PartKind;
import org.lapwright.core.car.shelf.PartState;
import org.lapwright.core.car.shelf.Shelf;

/** The shelf over the wire. */
class ShelfRoutesTest {
    private final Stage stage = new Stage().withBench();
    private final Visitor visitor = new Visitor(stage);

    @AfterEach
    void close() {
        stage.close();
    }

    private Shelf shelf() {
        return new KeepShelf(stage.garage(), Stage.CLOCK).shelf();
    }

    private PartState only() {
        assertThat(shelf().parts()).hasSize(1);
        return shelf().parts().get(0);
    }

    private static Map<String, String> form(String... namesAndValues) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            fields.put(namesAndValues[i], namesAndValues[i + 1]);
        }
        return fields;
    }

    private HttpResponse<String> press(String... namesAndValues) {
        Map<String, String> fields = form(namesAndValues);
        fields.put("id", "1");
        return visitor.post("/shelf/part", fields);
    }

    @Test
    void aPartIsAddedFittedDrivenServicedAndTakenOff() {
        assertThat(visitor.get("/shelf").body()).contains("Here your parts will stand");
        assertThat(visitor.post("/shelf", form("kind", "Braid", "name", "wide <pair>", "note", "n", "key", "k"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(press("do", "fit", "car", "plain", "key", "a").statusCode()).isEqualTo(303);
        assertThat(press("do", "remind", "service", "new braid", "every", "30", "key", "b")
                        .statusCode())
                .isEqualTo(303);
        press("do", "laps", "laps", "30", "key", "l");
        assertThat(only().isDue()).isTrue();
        press("do", "done", "service", "new braid", "key", "c");
        assertThat(only().isDue()).isFalse();
        stage.keep("plain", 6.2, 6.1, 3);
        assertThat(only().laps()).isEqualTo(70);
        assertThat(visitor.get("/shelf").body()).contains("wide &lt;pair&gt;", "on plain, 70 laps", "service due");
        assertThat(visitor.get("/shelf/part?id=1").body())
                .contains("Fitted to plain, 70 laps run on it.", "Due now: 40 laps since it was done last")
                .contains("/bench/change?name=plain&amp;kind=braid-fitted");
        press("do", "off", "key", "d");
        assertThat(only().car()).isEmpty();
        press("do", "laps", "laps", "-10", "key", "e");
        press("do", "laps", "laps", "-10", "key", "e");
        assertThat(only().laps()).isEqualTo(20);
        press("do", "away", "key", "f");
        assertThat(visitor.get("/shelf").body()).contains("Put away");
    }

    @Test
    void whatIsWrongIsNamedAndStaysInTheForm() {
        HttpResponse<String> nameless = visitor.post("/shelf", form("kind", "braid", "name", "", "note", "keep me"));
        assertThat(nameless.statusCode()).isEqualTo(422);
        assertThat(nameless.body()).contains("Name of the part", "keep me");
        visitor.post("/shelf", form("kind", "braid", "name", "b", "key", "k"));
        assertThat(press("do", "fit", "car", "Nobody").body()).contains("You have no car called", "Nobody");
        assertThat(press("do", "laps", "laps", "many").body()).contains("“many”; it must be a whole number");
        assertThat(press("do", "sing").statusCode()).isEqualTo(422);
        assertThat(visitor.get("/shelf/part?id=99").statusCode()).isEqualTo(404);
        stage.garage().failWith("The disk is full.");
        assertThat(press("do", "off").statusCode()).isEqualTo(503);
        assertThat(visitor.post("/shelf", form("kind", "axle", "name", "typed")).body())
                .contains("Not saved. The disk is full.", "typed");
    }

    @Test
    void aPartFileGoesOutWithoutANoteAndComesIn() {
        visitor.post("/shelf", form("kind", "axle", "name", "steel", "note", "from a friend", "key", "k"));
        press("do", "laps", "laps", "120", "key", "a");
        press("do", "remind", "service", "oil", "every", "100", "key", "b");
        press("do", "fit", "car", "plain", "key", "c");
        String file = visitor.get("/shelf/part.json?id=1").body();
        assertThat(file).contains("\"laps\" : 120", "lapwright-part/1").doesNotContain("friend", "plain", "2026");
        Map<String, String> sent = form("text", file, "key", "in");
        assertThat(visitor.post("/shelf", sent).statusCode()).isEqualTo(303);
        visitor.post("/shelf", sent);
        assertThat(shelf().parts()).hasSize(2);
        PartState copy = shelf().parts().get(1);
        assertThat(copy.laps()).isEqualTo(120);
        assertThat(copy.part().name()).isEqualTo("steel");
        assertThat(copy.services()).containsExactly(new PartState.Service("oil", 100, 0));
        for (String broken : new String[] {
            "{}",
            file.replace("120", "-1"),
            file.replace("120", "1.5"),
            file.replace("100", "0"),
            file.replace("part/1", "part/9"),
            file.replace("\"steel\"", "7")
        }) {
            assertThat(visitor.post("/shelf", form("text", broken)).statusCode())
                    .as(broken)
                    .isEqualTo(422);
        }
        assertThat(shelf().parts()).hasSize(2);
    }

    @Test
    void aSetUpGoesOutWithItsNumbersAndNoWordOfItsOwner() {
        String own = Reference.text("plain.car.json")
                .replace("\"name\": \"plain\"", "\"name\": \"Owners secret\", \"note\": \"secret\"");
        stage.ownGarage().keepCar("Owners secret", own);
        HttpResponse<String> shared = visitor.get("/bench/share.json?name=Owners+secret");
        assertThat(shared.body()).doesNotContain("secret").contains("lapwright-car/1");
        CarFile file = CarFile.read(shared.body()).accepted().orElseThrow();
        assertThat(file.setUp().numbers())
                .isEqualTo(CarFile.read(own).accepted().orElseThrow().setUp().numbers());
    }

    /** Each comparison is kept with the same part on: its laps count up, and the car gets slower by 0.04 s in a hundred. */
    @Test
    void aPartShowsWhatItsLapsDoToThePace() {
        KeepShelf shelf = new KeepShelf(stage.garage(), Stage.CLOCK);
        long part = shelf.add(new NewPart(new PartKind("tyres"), "soft", ""), "wear")
                .id();
        shelf.happened(part, new PartEvent.Fitted("plain"), "wear-fit");
        assertThat(visitor.get("/shelf/part?id=" + part).body()).doesNotContain("<h2>Wear</h2>");
        for (int evening = 0; evening < 6; evening++) {
            stage.keepOn("red", "plain", 6.2 + 0.016 * evening, 40 + evening);
        }
        String page = visitor.get("/shelf/part?id=" + part).body();
        assertThat(page)
                .contains("<h2>Wear</h2>")
                .containsPattern("A hundred laps on it make a lap 0\\.0[2-6]\\d s slower, somewhere between 0\\.0");
    }
}
