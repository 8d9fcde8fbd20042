package org.lapwright.app.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.lang.reflect.Proxy;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.TargetDataLine;
import org.junit.jupiter.api.Test;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SoundWatch;
import org.lapwright.core.laps.pass.Pass;

/** A sound card that is pulled, comes back, or is read too late; played by a line that does what a card does then. */
class SoundCardTest {
    private static final int RATE = 44_100;
    private static final int FRAME = 4;
    private static final int ROOM = RATE * FRAME;
    private static final double PASSES_EVERY_S = 1.5;

    /** Every look takes 50 ms, so that silence is told without waiting for it. */
    private final AtomicLong nowNs = new AtomicLong();

    private final LongSupplier clock = () -> nowNs.addAndGet(50_000_000);

    private final Deque<Object> openings = new ArrayDeque<>();
    private final List<Pass> passes = new ArrayList<>();

    private final Sent news = new Sent();

    /** A card with a pulse every so often on the first channel that does what is asked once it has given its frames. */
    private static final class Card {
        private final int frames;
        private final boolean breaksInRead;
        private final int fullAt;
        private int given;
        private boolean closed;

        /** Gives frames, then is pulled; the whole room is filled when so many frames were given. */
        Card(double seconds, boolean breaksInRead, double fullAtS) {
            this.frames = (int) (seconds * RATE);
            this.breaksInRead = breaksInRead;
            this.fullAt = (int) (fullAtS * RATE);
        }

        TargetDataLine line() {
            return (TargetDataLine) Proxy.newProxyInstance(
                    Card.class.getClassLoader(),
                    new Class<?>[] {TargetDataLine.class},
                    (proxy, method, arguments) -> switch (method.getName()) {
                        case "available" -> available();
                        case "getBufferSize" -> ROOM;
                        case "read" -> read((byte[]) arguments[0], (int) arguments[2]);
                        case "close" -> {
                            closed = true;
                            yield null;
                        }
                        default -> throw new AssertionError("not asked of a card: " + method);
                    });
        }

        private int available() {
            boolean full = given <= fullAt && fullAt < given + 1024;
            return full ? ROOM : given < frames ? ROOM / 2 : breaksInRead ? ROOM / 2 : 0;
        }

        private int read(byte[] into, int bytes) {
            if (given >= frames) {
                return 0;
            }
            for (int i = 0; i < bytes / FRAME; i++, given++) {
                double since = (double) given / RATE % PASSES_EVERY_S;
                short value = (short) (given < PASSES_EVERY_S * RATE ? 0 : 12_000 * Math.exp(-since / 0.02));
                into[i * FRAME] = (byte) value;
                into[i * FRAME + 1] = (byte) (value >> 8);
                into[i * FRAME + 2] = 0;
                into[i * FRAME + 3] = 0;
            }
            return bytes;
        }
    }

    private TargetDataLine next() throws LineUnavailableException {
        Object next = openings.removeFirst();
        if (next instanceof Card card) {
            return card.line();
        }
        throw new LineUnavailableException("pulled");
    }

    private void listen(int wanted) throws IOException {
        PassSink sink = some -> {
            passes.addAll(some);
            return passes.size() < wanted;
        };
        SoundCard.open(this::next, SoundWatch.fixed(SoundWatch.USUAL_LEAST_LEVEL), clock)
                .listen(sink, news);
    }

    @Test
    void aPulledCardIsToldWaitedForAndNoLapGoesOverTheGap() throws Exception {
        Card first = new Card(5, false, -1);
        Card second = new Card(60, false, -1);
        openings.addAll(List.of(first, "pulled", "pulled", second));
        listen(6);
        assertThat(news.told()).containsExactly("gone", "back");
        assertThat(news.reasons()).containsExactly("no sound comes from the sound card any more; is it plugged in?");
        assertThat(first.closed).isTrue();
        assertThat(second.closed).isTrue();
        assertThat(passes).extracting(Pass::sequence).containsExactly(0L, 1L, 2L, 0L, 1L, 2L);
        assertThat(passes.subList(0, 3))
                .extracting(Pass::boot)
                .containsOnly(passes.get(0).boot());
        assertThat(passes.subList(3, 6))
                .extracting(Pass::boot)
                .containsOnly(passes.get(3).boot());
        assertThat(passes.get(3).boot()).isNotEqualTo(passes.get(0).boot());
        assertThat(passes.get(5).stamp().timeNs() / 1e9).isCloseTo(3 * PASSES_EVERY_S, within(1e-4));
    }

    @Test
    void aCardThatGivesLessThanIsThereIsGone() throws Exception {
        openings.addAll(List.of(new Card(4, true, -1), new Card(60, false, -1)));
        listen(3);
        assertThat(news.told()).hasSize(2).last().isEqualTo("back");
    }

    @Test
    void whereSamplesWereLostTheCountBeginsAnew() throws Exception {
        openings.add(new Card(60, false, 4));
        listen(4);
        assertThat(news.told()).containsExactly("restarted");
        assertThat(passes.get(0).boot()).isEqualTo(passes.get(1).boot());
        assertThat(passes.get(2).boot())
                .isEqualTo(passes.get(3).boot())
                .isNotEqualTo(passes.get(1).boot());
    }

    /** Some drivers say so before anything has come. */
    @Test
    void aCardThatIsFullBeforeItsFirstSamplesHasLostNothing() throws Exception {
        openings.add(new Card(60, false, 0));
        listen(2);
        assertThat(news.told()).isEmpty();
    }

    @Test
    void withoutACardItIsSaidWhatIsMissing() {
        openings.add("none");
        assertThatThrownBy(() -> SoundCard.open(this::next, SoundWatch.fixed(SoundWatch.USUAL_LEAST_LEVEL), clock))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("no sound input that gives 44,100 samples a second in two channels");
    }

    @Test
    void twoOpeningsOfTheCardAreNotTakenForTheSamePasses() throws Exception {
        openings.addAll(List.of(new Card(60, false, -1), new Card(60, false, -1)));
        listen(1);
        listen(2);
        assertThat(passes.get(1).boot()).isNotEqualTo(passes.get(0).boot());
    }
}
