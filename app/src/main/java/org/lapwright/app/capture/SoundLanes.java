package org.lapwright.app.capture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.sound.sampled.AudioFormat;
import org.lapwright.app.usecase.capture.SoundLevel;
import org.lapwright.app.usecase.capture.SoundWatch;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.laps.pass.PassClock;
import org.lapwright.core.laps.pass.PassStamp;
import org.lapwright.core.laps.sound.Impulse;
import org.lapwright.core.laps.sound.ImpulseDetector;

/**
 * Passes from samples that follow each other without a gap: the first channel is lane 1, the second lane 2. The clock is the count of
 * samples, so that a recording gives the laps of the evening.
 */
final class SoundLanes {
    private static final String SOURCE = "sound";
    private static final int MOST_CHANNELS = 2;
    private static final int BLOCK_FRAMES = 1024;
    private static final double NS = 1e9;

    private final AudioFormat format;
    private final String boot;
    private final SoundWatch watch;
    private final List<ImpulseDetector> detectors = new ArrayList<>();
    private final double[] channel = new double[BLOCK_FRAMES];
    private long sequence;

    private record Heard(int lane, Impulse impulse) {}

    /**
     * Nothing heard yet.
     *
     * @param format linear, signed, little-endian, of 8 to 32 bits
     * @param boot names this count of samples, and no other
     * @param watch what is wanted, and who looks
     */
    SoundLanes(AudioFormat format, String boot, SoundWatch watch) {
        this.format = format;
        this.boot = boot;
        this.watch = watch;
        for (int i = 0; i < Math.min(MOST_CHANNELS, format.getChannels()); i++) {
            detectors.add(new ImpulseDetector(ImpulseDetector.Settings.usual(format.getSampleRate())));
        }
    }

    /** Bytes of the block that {@link #take} takes at once. */
    static int blockBytes(AudioFormat format) {
        return BLOCK_FRAMES * format.getFrameSize();
    }

    /**
     * The passes that are known with these samples, in their order.
     *
     * @param block of samples
     * @param bytes how many of it; what does not fill a frame is left out
     * @param arrivalNs when they came, by the monotonic clock of this machine, ns
     */
    List<Pass> take(byte[] block, int bytes, long arrivalNs) {
        int wide = format.getSampleSizeInBits() / 8;
        int frames = bytes / format.getFrameSize();
        double least = watch.leastLevel();
        List<Heard> heard = new ArrayList<>();
        List<SoundLevel> levels = new ArrayList<>();
        for (int c = 0; c < detectors.size(); c++) {
            for (int i = 0; i < frames; i++) {
                channel[i] = sample(block, i * format.getFrameSize() + c * wide, wide);
            }
            int lane = c + 1;
            ImpulseDetector detector = detectors.get(c);
            detector.need(least);
            List<Impulse> found = detector.take(channel, 0, frames);
            found.forEach(impulse -> heard.add(new Heard(lane, impulse)));
            levels.add(new SoundLevel(detector.loudest(), detector.threshold(), found.size()));
        }
        watch.heard(levels);
        heard.sort(Comparator.comparingDouble(each -> each.impulse().sample()));
        return heard.stream().map(each -> pass(each, arrivalNs)).toList();
    }

    private Pass pass(Heard heard, long arrivalNs) {
        long at = Math.round(NS * heard.impulse().sample() / format.getSampleRate());
        PassStamp stamp = new PassStamp(PassClock.AUDIO, at, arrivalNs, 0);
        return new Pass(SOURCE, boot, sequence++, heard.lane(), 0, stamp);
    }

    /** Little-endian, signed, in full scale. */
    private static double sample(byte[] block, int at, int bytes) {
        int value = block[at + bytes - 1];
        for (int i = bytes - 2; i >= 0; i--) {
            value = value << 8 | block[at + i] & 0xff;
        }
        return value / (double) (1L << (8 * bytes - 1));
    }
}
