package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.garage.LabelListFile;
import org.lapwright.app.usecase.OwnListStore.ListKind;
import org.lapwright.app.web.bench.BenchPage;

/** Tags of cars, and putting one away. */
class LabelsTest {
    private Stage stage;
    private Visitor visitor;

    @BeforeEach
    void open() {
        stage = new Stage().withReferenceFiles();
        visitor = new Visitor(stage);
    }

    @AfterEach
    void close() {
        stage.close();
    }

    private HttpResponse<String> label(String car, String tags, boolean away) {
        Map<String, String> fields = new HashMap<>(Map.of("name", car, "tags", tags));
        if (away) {
            fields.put("away", "yes");
        }
        return visitor.post("/bench/label", fields);
    }

    @Test
    void aCarIsFoundByItsTags() {
        assertThat(label("plain", "Thursday, loan , Thursday", false).statusCode())
                .isEqualTo(303);
        assertThat(visitor.get("/bench/car?name=plain").body()).contains("value=\"Thursday, loan\"");
        assertThat(visitor.get("/bench?find=thurs").body())
                .contains("car?name=plain", ">Thursday</span>", "1 of 5 cars.")
                .doesNotContain("car?name=magnet");
    }

    @Test
    void aCarThatIsPutAwayIsOffTheBenchAndComesBack() {
        label("plain", "", true);
        assertThat(visitor.get("/bench").body())
                .contains("car?name=magnet", "1 car is put away")
                .doesNotContain("car?name=plain");
        assertThat(visitor.get("/bench?away=yes").body())
                .contains("car?name=plain", "Back to the cars on the bench")
                .doesNotContain("car?name=magnet");
        label("plain", "", false);
        assertThat(visitor.get("/bench").body()).contains("car?name=plain").doesNotContain("put away");
    }

    @Test
    void theCarDrivenLastComesFirst() {
        stage.keep("soft", 6.2, 6.1, 1);
        stage.keep("magnet", 6.2, 6.1, 2);
        String list = visitor.get("/bench?order=driven&find=").body();
        assertThat(list.indexOf("car?name=magnet")).isLessThan(list.indexOf("car?name=soft"));
        assertThat(list.indexOf("car?name=soft")).isLessThan(list.indexOf("car?name=plain"));
    }

    @Test
    void theFastestOnATrackComesFirstAndSaysItsPace() {
        stage.keep("soft", 6.2, 6.1, 1);
        stage.keep("magnet", 5.2, 5.1, 2);
        String track = stage.garage().tracks().get(0);
        String list = visitor.get("/bench?find=&order=" + BenchPage.encoded("pace " + track))
                .body();
        assertThat(list.indexOf("car?name=magnet")).isLessThan(list.indexOf("car?name=soft"));
        assertThat(list.indexOf("car?name=soft")).isLessThan(list.indexOf("car?name=plain"));
        assertThat(list).containsPattern("car[?]name=magnet.*<span class=\"detail\">5\\.\\d+ s</span>");
        assertThat(list).doesNotContainPattern("car[?]name=plain.*class=\"detail\"");
    }

    @Test
    void anOrderThatThereIsNotIsByName() {
        stage.keep("soft", 6.2, 6.1, 1);
        String byName = visitor.get("/bench").body();
        String unknown = visitor.get("/bench?order=pace+nowhere").body();
        assertThat(unknown.indexOf("car?name=magnet")).isEqualTo(byName.indexOf("car?name=magnet"));
        assertThat(unknown.indexOf("car?name=soft")).isEqualTo(byName.indexOf("car?name=soft"));
    }

    @Test
    void whatIsNoTagIsNamedAndNothingChanges() {
        label("plain", "kept", false);
        HttpResponse<String> answer = label("plain", "x".repeat(31), false);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("Nothing was changed.");
        assertThat(visitor.get("/bench/car?name=plain").body()).contains("value=\"kept\"");
    }

    @Test
    void theListGoesRoundUnchanged() {
        label("plain", "a, b \u2713", true);
        LabelListFile read = LabelListFile.read(
                        stage.garage().list(ListKind.LABELS).orElseThrow())
                .accepted()
                .orElseThrow();
        assertThat(LabelListFile.read(read.text()).accepted()).contains(read);
        assertThat(read.of("plain").putAway()).isTrue();
        assertThat(LabelListFile.read("{\"format\":\"lapwright-labels/1\",\"cars\":[{\"tags\":[1]}]}")
                        .problems())
                .hasSizeGreaterThan(1);
    }
}
