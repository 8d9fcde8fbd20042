package org.lapwright.app.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.app.usecase.capture.SoundLevel;
import org.lapwright.app.usecase.capture.SoundWatch;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.laps.pass.PassClock;

/** Recordings of a gate on the sound card, written by Java's own sound library and read back. */
class SoundRecordingTest {
    @TempDir
    Path folder;

    private static List<Pass> passes(Path file) throws IOException {
        List<Pass> passes = new ArrayList<>();
        Sent news = new Sent();
        SoundRecording.open(file, SoundWatch.fixed(SoundWatch.USUAL_LEAST_LEVEL))
                .listen(passes::addAll, news);
        assertThat(news.told()).isEmpty();
        return passes;
    }

    /** Two lanes: lane 1 every 2.5 s, lane 2 every 3.1 s, as pulses that leak away. */
    private Path recorded(int bits, boolean bigEndian, AudioFileFormat.Type type, float rate) throws IOException {
        int frames = (int) (12 * rate);
        byte[] bytes = new byte[frames * 2 * bits / 8];
        SplittableRandom chance = new SplittableRandom(4);
        for (int i = 0; i < frames; i++) {
            double t = i / rate;
            put(bytes, (2 * i) * bits / 8, bits, bigEndian, value(t, 2.5, chance));
            put(bytes, (2 * i + 1) * bits / 8, bits, bigEndian, -value(t, 3.1, chance));
        }
        AudioFormat format = new AudioFormat(rate, bits, 2, true, bigEndian);
        Path file = folder.resolve("gate." + type.getExtension());
        AudioSystem.write(new AudioInputStream(new ByteArrayInputStream(bytes), format, frames), type, file.toFile());
        return file;
    }

    private static double value(double t, double every, SplittableRandom chance) {
        double since = t % every;
        double pulse = t < every ? 0 : 0.4 * Math.exp(-since / 0.02);
        return pulse + 0.01 * chance.nextGaussian();
    }

    private static void put(byte[] bytes, int at, int bits, boolean bigEndian, double value) {
        long whole = Math.round(Math.max(-1, Math.min(0.999, value)) * (1L << (bits - 1)));
        for (int k = 0; k < bits / 8; k++) {
            bytes[at + (bigEndian ? bits / 8 - 1 - k : k)] = (byte) (whole >> (8 * k));
        }
    }

    @ParameterizedTest
    @CsvSource({"16, false, 44100", "16, false, 48000", "24, false, 44100", "8, false, 22050", "16, true, 44100"})
    void bothLanesAreHeard(int bits, boolean bigEndian, float rate) throws Exception {
        AudioFileFormat.Type type = bigEndian ? AudioFileFormat.Type.AIFF : AudioFileFormat.Type.WAVE;
        Path file = bits == 8 ? unsigned(rate) : recorded(bits, bigEndian, type, rate);
        List<Pass> passes = passes(file);
        List<Pass> one = passes.stream().filter(pass -> pass.lane() == 1).toList();
        List<Pass> two = passes.stream().filter(pass -> pass.lane() == 2).toList();
        assertThat(one).hasSize(4);
        assertThat(two).hasSize(3);
        for (int i = 0; i < 4; i++) {
            assertThat(one.get(i).stamp().clock()).isEqualTo(PassClock.AUDIO);
            assertThat(one.get(i).stamp().timeNs() / 1e9).isCloseTo(2.5 * (i + 1), within(1e-4));
        }
        assertThat(two.get(2).stamp().timeNs() / 1e9).isCloseTo(9.3, within(1e-4));
        assertThat(passes).extracting(Pass::sequence).isSorted().doesNotHaveDuplicates();
    }

    /** WAV of eight bits is unsigned. */
    private Path unsigned(float rate) throws IOException, UnsupportedAudioFileException {
        Path signed = recorded(16, false, AudioFileFormat.Type.WAVE, rate);
        try (AudioInputStream in = AudioSystem.getAudioInputStream(signed.toFile())) {
            byte[] wide = in.readAllBytes();
            byte[] narrow = new byte[wide.length / 2];
            for (int i = 0; i < narrow.length; i++) {
                narrow[i] = (byte) (wide[2 * i + 1] + 128);
            }
            AudioFormat format = new AudioFormat(rate, 8, 2, false, false);
            Path file = folder.resolve("eight.wav");
            AudioSystem.write(
                    new AudioInputStream(new ByteArrayInputStream(narrow), format, narrow.length / 2),
                    AudioFileFormat.Type.WAVE,
                    file.toFile());
            return file;
        }
    }

    @Test
    void theSameFileGivesTheSamePassesAndAnotherFileGivesOthers() throws IOException {
        Path file = recorded(16, false, AudioFileFormat.Type.WAVE, 44_100);
        Path other = Files.copy(file, folder.resolve("next-run.wav"));
        assertThat(passes(file))
                .extracting(Pass::boot)
                .containsOnly(passes(file).get(0).boot());
        assertThat(passes(other).get(0).boot()).isNotEqualTo(passes(file).get(0).boot());
    }

    @Test
    void whatIsNoRecordingIsSaid() throws IOException {
        Path text = Files.writeString(folder.resolve("laps.wav"), "6.2\n6.3\n");
        assertThatThrownBy(() -> SoundRecording.open(text, SoundWatch.fixed(SoundWatch.USUAL_LEAST_LEVEL)))
                .hasMessageContaining("is no recording");
        assertThatThrownBy(() ->
                        SoundRecording.open(folder.resolve("none.wav"), SoundWatch.fixed(SoundWatch.USUAL_LEAST_LEVEL)))
                .isInstanceOf(IOException.class);
    }

    /** The pulses are 0.4 of the full scale high. */
    @Test
    void aHeightThatPulsesDoNotReachLeavesThemOut() throws Exception {
        Path file = recorded(16, false, AudioFileFormat.Type.WAVE, 44_100);
        List<Pass> passes = new ArrayList<>();
        SoundRecording.open(file, SoundWatch.fixed(0.3)).listen(passes::addAll, new Sent());
        assertThat(passes).hasSize(7);
        passes.clear();
        SoundRecording.open(file, SoundWatch.fixed(0.5)).listen(passes::addAll, new Sent());
        assertThat(passes).isEmpty();
    }

    @Test
    void howLoudEachLaneIsIsToldWithTheHeightThatIsNeeded() throws Exception {
        List<List<SoundLevel>> told = new ArrayList<>();
        SoundWatch watch = new SoundWatch() {
            @Override
            public double leastLevel() {
                return told.size() < 100 ? 0.2 : 0.6;
            }

            @Override
            public void heard(List<SoundLevel> lanes) {
                told.add(lanes);
            }
        };
        SoundRecording.open(recorded(16, false, AudioFileFormat.Type.WAVE, 44_100), watch)
                .listen(passes -> true, new Sent());
        // Twelve seconds of moments of 1024 samples.
        assertThat(told).hasSize(517).allSatisfy(lanes -> assertThat(lanes).hasSize(2));
        assertThat(told.stream().mapToInt(lanes -> lanes.get(0).passes()).sum()).isEqualTo(0);
        assertThat(told.stream().mapToDouble(lanes -> lanes.get(0).loudest()).max())
                .hasValueCloseTo(0.4, within(0.05));
        assertThat(told.get(50).get(1).needed()).isEqualTo(0.2);
        assertThat(told.get(500).get(1).needed()).isEqualTo(0.6);
    }
}
