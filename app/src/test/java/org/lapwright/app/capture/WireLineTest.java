package org.lapwright.app.capture;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Lines on the wire. */
class WireLineTest {
    private static String line(String body) {
        return body + "*" + WireLine.checksum(body);
    }

    /** The GGA sentence that introductions to NMEA 0183 show, as remembered: its checksum is 47. */
    @Test
    void theChecksumIsThatOfNmea0183() {
        assertThat(WireLine.checksum("GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,"))
                .isEqualTo("47");
    }

    @Test
    void passesAndHeartbeatsAreRead() {
        assertThat(WireLine.parse(line("P,17,2,6214000,1"))).isEqualTo(new WireLine.Passed(17, 2, 6_214_000, 1, 0));
        assertThat(WireLine.parse(line("P,18,2,7214000,1,3"))).isEqualTo(new WireLine.Passed(18, 2, 7_214_000, 1, 3));
        assertThat(WireLine.parse(line("H,7f3a,1000000,0") + "\r"))
                .isEqualTo(new WireLine.Heartbeat("7f3a", 1_000_000, 0));
        assertThat(WireLine.parse("# gate on lane 2")).isEqualTo(new WireLine.Comment());
    }

    @Test
    void whatCannotBeBelievedSaysWhy() {
        assertThat(WireLine.parse("P,17,2,6214000,1*00"))
                .isInstanceOfSatisfying(
                        WireLine.Bad.class, bad -> assertThat(bad.why()).contains("checksum 00"));
        assertThat(WireLine.parse("P,17,2,6214000,1")).isInstanceOf(WireLine.Bad.class);
        assertThat(WireLine.parse(line("P,17,2,6214000,7"))).isInstanceOf(WireLine.Bad.class);
        assertThat(WireLine.parse(line("P," + "9".repeat(30) + ",2,1,1"))).isInstanceOf(WireLine.Bad.class);
    }

    @Property
    void noTextBreaksTheReader(@ForAll String text) {
        assertThat(WireLine.parse(text)).isNotNull();
    }

    /** One character changed anywhere is never taken for another pass. */
    @Property(tries = 300)
    void oneWrongCharacterIsNoticed(@ForAll int place, @ForAll char other) {
        String good = line("P,17,2,6214000,1");
        int at = Math.floorMod(place, good.length());
        String bad = good.substring(0, at) + other + good.substring(at + 1);
        WireLine read = WireLine.parse(bad);
        assertThat(read instanceof WireLine.Passed && !read.equals(WireLine.parse(good)))
                .isFalse();
    }
}
