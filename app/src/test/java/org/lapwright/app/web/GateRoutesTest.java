package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.lapwright.app.usecase.OwnListStore.ListKind;

/** A gate on this computer, from its page to the laps of the drive. */
class GateRoutesTest {
    private static final String SOUND = "do=begin&kind=sound&port=&level=1";
    private static final String DRIVE = "car=plain&track=Shed loop&plan=AB x 3&warm_up=0&lane_number=2";

    private final Stage stage = new Stage().withBench();
    private Visitor visitor;

    @BeforeEach
    void visit() {
        visitor = new Visitor(stage);
    }

    @AfterEach
    void close() {
        stage.close();
    }

    private HttpResponse<String> press(String form) {
        return visitor.post("/run/gate", fields(form));
    }

    private static Map<String, String> fields(String form) {
        return Arrays.stream(form.split("&"))
                .map(pair -> pair.split("=", 2))
                .collect(Collectors.toMap(pair -> pair[0], pair -> pair[1]));
    }

    private String page(String path) {
        return visitor.get(path).body();
    }

    /** What a gate's thread does is seen a moment later. */
    private static void await(BooleanSupplier seen) throws InterruptedException {
        for (int i = 0; i < 500 && !seen.getAsBoolean(); i++) {
            Thread.sleep(10);
        }
        assertThat(seen.getAsBoolean()).isTrue();
    }

    private void awaitText(String path, String text) throws InterruptedException {
        await(() -> page(path).contains(text));
    }

    @Test
    void passesOfTheSoundCardAreLapsOfTheDriveOnItsLane() throws Exception {
        visitor.post("/run", fields(DRIVE));
        assertThat(press(SOUND).statusCode()).isEqualTo(303);
        stage.gates().pass(2, 1.0);
        stage.gates().pass(1, 1.5);
        stage.gates().pass(2, 7.25);
        awaitText("/run", "6.250");
        assertThat(page("/run")).contains("Listening to the sound card.");
        assertThat(page("/run/gate"))
                .contains("Listening to the sound card: 3 passes, 3 of them in a drive.")
                .contains("counts lane 2");
    }

    @Test
    void withoutADriveAPassIsShownAndCountsForNothing() throws Exception {
        press(SOUND);
        stage.gates().pass(1, 1);
        awaitText("/run/gate", "1 pass, 0 of them in a drive");
        assertThat(page("/run/gate")).contains("No drive is on");
        visitor.post("/run", fields(DRIVE));
        assertThat(page("/run")).contains("the first pass starts the clock");
    }

    @Test
    void theLevelIsDrawnAndTheHeightAskedHoldsAtOnceAndAfterARestart() throws Exception {
        press(SOUND);
        stage.gates().level(0.42);
        awaitText("/run/gate", "the loudest of the last ten seconds was 42 %");
        assertThat(press("do=need&level=7,5").statusCode()).isEqualTo(303);
        stage.gates().level(0.1);
        await(() -> stage.gates().leastLevel() == 0.075);
        assertThat(stage.garage().list(ListKind.GATE).orElseThrow())
                .contains("\"least_level_percent\" : 7.5")
                .contains("\"listening\" : true");
        assertThat(page("/run/gate")).contains("value=\"7.5\"");
    }

    @Test
    void aPulledCableIsShownOnTheDriveToo() throws Exception {
        visitor.post("/run", fields(DRIVE));
        press("do=begin&kind=serial&port=/dev/gate&level=1");
        stage.gates().pulled("the serial line is broken; is the cable in?");
        awaitText("/run", "The gate: the serial line is broken; is the cable in?");
        awaitText("/run/gate", "is the cable in?");
        stage.gates().back();
        awaitText("/run", "Listening to /dev/gate.");
    }

    @Test
    void listeningToAnotherGateOrToNoneEndsTheFirst() throws Exception {
        press(SOUND);
        await(() -> stage.gates().listening() == 1);
        press("do=begin&kind=serial&port=/dev/gate&level=1");
        assertThat(page("/run/gate")).contains("Listening to /dev/gate");
        await(() -> stage.gates().listening() == 1);
        press("do=end");
        await(() -> stage.gates().listening() == 0);
        assertThat(page("/run/gate")).contains("No gate is listened to.").contains("value=\"/dev/gate\"");
        assertThat(stage.garage().list(ListKind.GATE).orElseThrow()).contains("\"listening\" : false");
    }

    @Test
    void whatCannotBeIsRefusedWithWhatWouldBeRight() {
        assertThat(press("do=begin&kind=serial&port=&level=1").body())
                .contains("The serial line needs its port, such as /dev/ttyUSB0 or COM3.");
        assertThat(press("do=begin&kind=serial&port=/dev/none&level=1").body())
                .contains("There is no such port; the ports here are /dev/gate.")
                .contains("value=\"/dev/none\"");
        assertThat(press("do=begin&kind=sound&level=loud").body()).contains("'loud'; give a number from 0 to 100");
        assertThat(press("do=begin&kind=sound&level=101").statusCode()).isEqualTo(422);
        assertThat(press("do=dance").statusCode()).isEqualTo(422);
        assertThat(stage.garage().list(ListKind.GATE)).isEmpty();
    }
}
