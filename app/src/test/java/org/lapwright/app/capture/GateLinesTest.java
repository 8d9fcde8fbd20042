package org.lapwright.app.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.lapwright.core.laps.pass.LapSplits;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.laps.pass.PassClock;
import org.lapwright.core.laps.pass.PassCounter;
import org.lapwright.core.laps.pass.PassCounter.CountedLap;

/** What lines amount to, on a wire that is not to be trusted. */
class GateLinesTest {
    private final Sent news = new Sent();
    private final PassCounter counter = new PassCounter(1, 0.5);
    private GateLines lines = new GateLines("wire", true);

    private void at(double arrivalS, String line) {
        lines.take(line, Math.round(arrivalS * 1e9), news).forEach(counter::add);
    }

    private List<Double> laps() {
        return counter.laps().stream().map(CountedLap::seconds).toList();
    }

    @Test
    void passesWaitForTheHeartbeatThatNamesTheirClock() {
        at(100, Sent.pass(0, 10));
        assertThat(counter.isOpen()).isFalse();
        at(100.5, Sent.beat("7f3a", 10.5));
        at(106, Sent.pass(1, 16));
        assertThat(laps()).containsExactly(6.0);
        assertThat(news.told).isEmpty();
    }

    @Test
    void aSenderWithoutHeartbeatsIsListenedToAllTheSame() {
        at(100, Sent.pass(0, 10));
        at(106, Sent.pass(1, 16));
        at(112, Sent.pass(2, 22));
        assertThat(laps()).containsExactly(6.0, 6.0);
    }

    @Test
    void bothEdgesOfACarAreOnePassAndNoGap() {
        at(100, Sent.beat("7f3a", 9));
        at(101, Sent.pass(0, 10));
        at(101, Sent.line("P,1,1,10100000,0"));
        at(107, Sent.pass(2, 16));
        assertThat(counter.laps()).containsExactly(new CountedLap(6, false, new LapSplits(6, new TreeMap<>())));
    }

    @Test
    void aBadChecksumIsToldAndTheLapMarked() {
        at(100, Sent.beat("7f3a", 9));
        at(101, Sent.pass(0, 10));
        at(107, "P,1,1,16000000,1*00");
        at(113, Sent.pass(2, 22));
        assertThat(counter.laps()).containsExactly(new CountedLap(12, true, new LapSplits(12, new TreeMap<>())));
        assertThat(news.told).containsExactly("unreadable");
    }

    /** 32 bits of microseconds turn over after 71.6 minutes. */
    @Test
    void aCounterThatTurnsOverLosesNoLap() {
        double turn = Math.pow(2, 32) * 1e-6;
        at(100, Sent.beat("7f3a", turn - 4));
        at(101, Sent.pass(0, turn - 3));
        at(103, Sent.beat("7f3a", turn - 1));
        at(107, Sent.pass(1, 3));
        at(113, Sent.pass(2, 9));
        assertThat(laps()).hasSize(2);
        assertThat(laps().get(0)).isCloseTo(6, within(1e-5));
        assertThat(laps().get(1)).isCloseTo(6, within(1e-5));
        assertThat(news.told).isEmpty();
    }

    @Test
    void noLapGoesOverAClockThatIsSet() {
        for (double set : new double[] {3600, 2, -3600, -3}) {
            PassCounter before = counter;
            int laps = before.laps().size();
            lines = new GateLines("wire " + set, true);
            at(100, Sent.beat("7f3a", 4000));
            at(101, Sent.pass(0, 4001));
            at(103, Sent.beat("7f3a", 4003));
            at(104, Sent.beat("7f3a", 4004 + set));
            at(107, Sent.pass(1, 4007 + set));
            at(113, Sent.pass(2, 4013 + set));
            assertThat(laps().subList(laps, laps().size()))
                    .as("set by %s s", set)
                    .containsExactly(6.0);
            assertThat(news.told).containsExactly("stepped");
            news.told.clear();
        }
    }

    @Test
    void aSlowLinkIsNoClockThatWasSet() {
        at(100, Sent.beat("7f3a", 10));
        at(101, Sent.pass(0, 11));
        at(109, Sent.beat("7f3a", 12));
        at(109, Sent.pass(1, 17));
        at(112, Sent.beat("7f3a", 22));
        at(113, Sent.pass(2, 23));
        assertThat(laps()).containsExactly(6.0, 6.0);
        assertThat(news.told).isEmpty();
    }

    @Test
    void whatComesTwiceIsTakenOnce() {
        at(100, Sent.beat("7f3a", 10));
        at(101, Sent.pass(0, 11));
        at(107, Sent.pass(1, 17));
        at(107, Sent.pass(0, 11));
        at(107, Sent.pass(1, 17));
        at(113, Sent.pass(2, 23));
        assertThat(laps()).containsExactly(6.0, 6.0);
    }

    @Test
    void aRestartWithoutAHeartbeatIsNoticed() {
        at(100, Sent.beat("7f3a", 10));
        at(101, Sent.pass(0, 11));
        at(107, Sent.pass(1, 17));
        at(120, Sent.pass(0, 19));
        at(126, Sent.pass(1, 25));
        assertThat(laps()).containsExactly(6.0, 6.0);
        assertThat(news.told).containsExactly("restarted");
    }

    @Test
    void afterABrokenConnectionTheHeartbeatSaysWhetherTheLapGoesOn() {
        at(100, Sent.beat("7f3a", 10));
        at(101, Sent.pass(0, 11));
        lines.broken();
        at(107, Sent.pass(1, 17));
        at(107.5, Sent.beat("7f3a", 17.5));
        assertThat(laps()).containsExactly(6.0);
        lines.broken();
        at(113, Sent.pass(2, 23));
        at(113.5, Sent.beat("9c01", 23.5));
        assertThat(laps()).containsExactly(6.0);
        assertThat(news.told).containsExactly("restarted");
    }

    @Test
    void whatGpiomonPrintsIsReadInBothItsForms() {
        List<Pass> old = lines.take("event: FALLING EDGE offset: 17 timestamp: [   69913.990484974]", 0, news);
        assertThat(old).singleElement().satisfies(pass -> {
            assertThat(pass.stamp().timeNs()).isEqualTo(69_913_990_484_974L);
            assertThat(pass.stamp().clock()).isEqualTo(PassClock.KERNEL);
        });
        assertThat(lines.take("event:  RISING EDGE offset: 17 timestamp: [   69914.090484974]", 0, news))
                .isEmpty();
        GateLines newer = new GateLines("wire", false);
        newer.take("100.000000000\tfalling\tgpiochip0 17", 0, news).forEach(counter::add);
        newer.take("106.250000000\tfalling\tgpiochip0 17", 0, news).forEach(counter::add);
        assertThat(laps()).containsExactly(6.25);
        assertThat(news.told).isEmpty();
        assertThat(newer.take("107.000000000\tfalling\tgpiochip0 27", 0, news)).isEmpty();
        assertThat(news.told).containsExactly("unreadable");
    }

    @Test
    void sectionGatesOfOneSenderSplitTheLap() {
        at(100, Sent.beat("7f3a", 9));
        at(101, Sent.pass(0, 10));
        at(103, Sent.line("P,1,1,12000000,1,1"));
        at(105, Sent.line("P,2,1,14500000,1,2"));
        at(107, Sent.pass(3, 16));
        assertThat(counter.lastLap().splits().atS()).containsExactly(entry(1, 2.0), entry(2, 4.5));
    }

    @Test
    void aSectionGateThatCannotBeIsTold() {
        at(100, Sent.beat("7f3a", 9));
        at(101, Sent.line("P,0,1,10000000,1,32"));
        assertThat(news.told).containsExactly("unreadable");
    }
}
