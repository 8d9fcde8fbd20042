package org.lapwright.app.capture;

import java.io.IOException;
import java.util.UUID;
import java.util.function.LongSupplier;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.TargetDataLine;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SoundWatch;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.app.usecase.capture.TimingSource;

/**
 * A light gate or contact on the sound card, live. A card that was pulled is waited for. Each time it begins to count its samples anew,
 * and where samples were lost, passes get a boot of their own, so that no lap goes over the gap.
 */
public final class SoundCard implements TimingSource {
    /** What the usual sound card gives. */
    private static final AudioFormat LIVE = new AudioFormat(44_100, 16, 2, true, false);

    private static final String GONE = "no sound comes from the sound card any more; is it plugged in?";
    private static final long SILENT_NS = 2_000_000_000L;
    private static final int POLL_MS = 5;
    private static final int RETRY_MS = 300;

    /** Where a line to the card comes from. */
    interface Opening {
        /** An open line that runs, in {@link SoundCard}'s format. */
        TargetDataLine open() throws LineUnavailableException;
    }

    private final Opening opening;
    private final SoundWatch watch;
    private final LongSupplier clock;
    private TargetDataLine line;

    private SoundCard(Opening opening, SoundWatch watch, LongSupplier clock, TargetDataLine line) {
        this.opening = opening;
        this.watch = watch;
        this.clock = clock;
        this.line = line;
    }

    /**
     * The sound card's input, as the system has chosen it.
     *
     * @param watch what is wanted of it
     * @param clock the monotonic clock of this machine, ns
     * @throws IOException if there is none, or another program has it
     */
    public static SoundCard open(SoundWatch watch, LongSupplier clock) throws IOException {
        return open(SoundCard::usual, watch, clock);
    }

    static SoundCard open(Opening opening, SoundWatch watch, LongSupplier clock) throws IOException {
        try {
            return new SoundCard(opening, watch, clock, opening.open());
        } catch (LineUnavailableException | IllegalArgumentException none) {
            throw new IOException(
                    "there is no sound input that gives 44,100 samples a second in two channels, or another program has it",
                    none);
        }
    }

    private static TargetDataLine usual() throws LineUnavailableException {
        TargetDataLine line = AudioSystem.getTargetDataLine(LIVE);
        // A second of room: what waits longer than that is lost, and with it the count of the samples.
        line.open(LIVE, (int) LIVE.getSampleRate() * LIVE.getFrameSize());
        line.start();
        return line;
    }

    @Override
    public void listen(PassSink sink, SourceNews news) {
        try {
            while (hear(sink, news)) {
                news.gone(GONE);
                reopen();
                news.back();
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        } finally {
            line.close();
        }
    }

    /** Hears until the card is gone; false where no more is wanted. */
    private boolean hear(PassSink sink, SourceNews news) throws InterruptedException {
        byte[] block = new byte[SoundLanes.blockBytes(LIVE)];
        SoundLanes lanes = anew();
        boolean begun = false;
        long heardNs = clock.getAsLong();
        while (true) {
            int ready = line.available();
            if (ready < block.length) {
                if (clock.getAsLong() - heardNs > SILENT_NS) {
                    return true;
                }
                Thread.sleep(POLL_MS);
                continue;
            }
            // Before the first samples some drivers call the whole room filled.
            if (begun && ready >= line.getBufferSize()) {
                lanes = anew();
                news.restarted();
            }
            // A line gives less than is there only where it has broken.
            if (line.read(block, 0, block.length) < block.length) {
                return true;
            }
            begun = true;
            heardNs = clock.getAsLong();
            if (!Handing.on(lanes.take(block, block.length, heardNs), sink)) {
                return false;
            }
        }
    }

    private SoundLanes anew() {
        return new SoundLanes(LIVE, UUID.randomUUID().toString(), watch);
    }

    private void reopen() throws InterruptedException {
        line.close();
        while (true) {
            Thread.sleep(RETRY_MS);
            try {
                line = opening.open();
                return;
            } catch (LineUnavailableException | IllegalArgumentException notYet) {
                // The card is not there: it is asked for again.
            }
        }
    }
}
