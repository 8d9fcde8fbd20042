package org.lapwright.app.capture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.TargetDataLine;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.app.usecase.capture.TimingSource;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.laps.pass.PassClock;
import org.lapwright.core.laps.pass.PassStamp;
import org.lapwright.core.laps.sound.Impulse;
import org.lapwright.core.laps.sound.ImpulseDetector;

/**
 * A light gate or contact on the sound card, live or from a recording: the first channel is lane 1, the second lane 2. The clock is the
 * count of samples, so that a replay gives the laps of the evening.
 */
public final class SoundSource implements TimingSource {
    private static final String NAME = "sound";
    private static final int MOST_CHANNELS = 2;
    private static final int BLOCK_FRAMES = 1024;
    private static final double NS = 1e9;

    /** What the usual sound card gives. */
    private static final AudioFormat LIVE = new AudioFormat(44_100, 16, 2, true, false);

    private final InputStream samples;
    private final AudioFormat format;
    private final List<ImpulseDetector> detectors = new ArrayList<>();
    private long sequence;

    private SoundSource(InputStream samples, AudioFormat format) {
        this.samples = samples;
        this.format = format;
        for (int i = 0; i < Math.min(MOST_CHANNELS, format.getChannels()); i++) {
            detectors.add(new ImpulseDetector(ImpulseDetector.Settings.usual(format.getSampleRate())));
        }
    }

    /**
     * A recording: WAV, AIFF or AU, of 8 to 32 bits.
     *
     * @throws IOException if it cannot be read, or is none, with what would be right
     */
    public static SoundSource recording(Path file) throws IOException {
        try {
            AudioInputStream stream = AudioSystem.getAudioInputStream(file.toFile());
            AudioFormat found = stream.getFormat();
            int bits = found.getSampleSizeInBits() > 0 ? found.getSampleSizeInBits() : 16;
            AudioFormat plain = new AudioFormat(found.getSampleRate(), bits, found.getChannels(), true, false);
            boolean asItIs = found.matches(plain);
            if (!asItIs && !AudioSystem.isConversionSupported(plain, found)) {
                throw new IOException("%s is recorded as %s; save it as a plain WAV of 16 bits".formatted(file, found));
            }
            return new SoundSource(asItIs ? stream : AudioSystem.getAudioInputStream(plain, stream), plain);
        } catch (UnsupportedAudioFileException | IllegalArgumentException none) {
            throw new IOException("%s is no recording; it should be a WAV file".formatted(file), none);
        }
    }

    /**
     * The sound card's input, as the system has chosen it.
     *
     * @throws IOException if there is none, or another program has it
     */
    public static SoundSource soundCard() throws IOException {
        try {
            TargetDataLine line = AudioSystem.getTargetDataLine(LIVE);
            line.open(LIVE);
            line.start();
            return new SoundSource(new AudioInputStream(line), LIVE);
        } catch (LineUnavailableException | IllegalArgumentException none) {
            throw new IOException(
                    "there is no sound input that gives 44,100 samples a second in two channels, or another program has it",
                    none);
        }
    }

    @Override
    public void listen(PassSink sink, SourceNews news) throws IOException {
        int bytes = format.getSampleSizeInBits() / 8;
        byte[] block = new byte[BLOCK_FRAMES * format.getFrameSize()];
        double[] channel = new double[BLOCK_FRAMES];
        try (samples) {
            int read = samples.readNBytes(block, 0, block.length);
            while (read > 0) {
                int frames = read / format.getFrameSize();
                List<Heard> heard = new ArrayList<>();
                for (int c = 0; c < detectors.size(); c++) {
                    for (int i = 0; i < frames; i++) {
                        channel[i] = sample(block, i * format.getFrameSize() + c * bytes, bytes);
                    }
                    int lane = c + 1;
                    detectors.get(c).take(channel, 0, frames).forEach(impulse -> heard.add(new Heard(lane, impulse)));
                }
                heard.sort(Comparator.comparingDouble(each -> each.impulse().sample()));
                for (Heard each : heard) {
                    if (!pass(each, sink)) {
                        return;
                    }
                }
                read = samples.readNBytes(block, 0, block.length);
            }
        }
    }

    private record Heard(int lane, Impulse impulse) {}

    private boolean pass(Heard heard, PassSink sink) {
        long at = Math.round(NS * heard.impulse().sample() / format.getSampleRate());
        return sink.accept(List.of(new Pass(
                NAME, "first", sequence++, heard.lane(), 0, new PassStamp(PassClock.AUDIO, at, System.nanoTime(), 0))));
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
