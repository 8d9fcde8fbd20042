package org.lapwright.app.capture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SoundWatch;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.app.usecase.capture.TimingSource;

/** A recording of a light gate or contact on the sound card. */
public final class SoundRecording implements TimingSource {
    private final InputStream samples;
    private final AudioFormat format;
    private final String boot;
    private final SoundWatch watch;

    private SoundRecording(InputStream samples, AudioFormat format, String boot, SoundWatch watch) {
        this.samples = samples;
        this.format = format;
        this.boot = boot;
        this.watch = watch;
    }

    /**
     * A recording: WAV, AIFF or AU, of 8 to 32 bits.
     *
     * @param watch what is wanted of it
     * @throws IOException if it cannot be read, or is none, with what would be right
     */
    public static SoundRecording open(Path file, SoundWatch watch) throws IOException {
        try {
            AudioInputStream stream = AudioSystem.getAudioInputStream(file.toFile());
            AudioFormat found = stream.getFormat();
            int bits = found.getSampleSizeInBits() > 0 ? found.getSampleSizeInBits() : 16;
            AudioFormat plain = new AudioFormat(found.getSampleRate(), bits, found.getChannels(), true, false);
            boolean asItIs = found.matches(plain);
            if (!asItIs && !AudioSystem.isConversionSupported(plain, found)) {
                throw new IOException("%s is recorded as %s; save it as a plain WAV of 16 bits".formatted(file, found));
            }
            AudioInputStream samples = asItIs ? stream : AudioSystem.getAudioInputStream(plain, stream);
            return new SoundRecording(samples, plain, boot(file), watch);
        } catch (UnsupportedAudioFileException | IllegalArgumentException none) {
            throw new IOException("%s is no recording; it should be a WAV file".formatted(file), none);
        }
    }

    /** The same file, handed on twice, gives passes that are known already; another file gives others. */
    private static String boot(Path file) throws IOException {
        String which = "%s %d %s"
                .formatted(file.toAbsolutePath().normalize(), Files.size(file), Files.getLastModifiedTime(file));
        return UUID.nameUUIDFromBytes(which.getBytes(StandardCharsets.UTF_8)).toString();
    }

    @Override
    public void listen(PassSink sink, SourceNews news) throws IOException {
        SoundLanes lanes = new SoundLanes(format, boot, watch);
        byte[] block = new byte[SoundLanes.blockBytes(format)];
        try (samples) {
            int read = samples.readNBytes(block, 0, block.length);
            while (read > 0 && Handing.on(lanes.take(block, read, System.nanoTime()), sink)) {
                read = samples.readNBytes(block, 0, block.length);
            }
        }
    }
}
