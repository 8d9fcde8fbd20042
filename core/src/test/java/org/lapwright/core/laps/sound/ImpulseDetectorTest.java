package org.lapwright.core.laps.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.core.laps.sound.ImpulseDetector.Settings;

/** Edges at times that are known, in noise of known strength; and by another way, the best fit of the pulse's own shape. */
final class ImpulseDetectorTest {
    private static final double RATE = 44_100;

    /** A blocked light behind a capacitor: a ramp of 0.5 ms, then it leaks away. Half-way up the ramp is the edge. */
    private static double pulse(double t, double rampS) {
        return t < 0 ? 0 : t < rampS ? t / rampS : Math.exp(-(t - rampS) / 0.03);
    }

    private static double[] recording(
            double[] edges, double height, double noise, double rampS, SplittableRandom chance) {
        double[] samples = new double[(int) ((edges[edges.length - 1] + 1) * RATE)];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = 0.02 + 0.003 * Math.sin(2 * Math.PI * 0.3 * i / RATE) + noise * chance.nextGaussian();
        }
        for (double edge : edges) {
            int from = (int) ((edge - rampS) * RATE);
            for (int i = from; i < Math.min(samples.length, from + 20_000); i++) {
                samples[i] += height * pulse(i / RATE - edge + rampS / 2, rampS);
            }
        }
        return samples;
    }

    private static double[] edges(SplittableRandom chance, int count) {
        double[] edges = new double[count];
        double at = 1;
        for (int i = 0; i < count; i++) {
            at += chance.nextDouble(2, 6);
            edges[i] = at;
        }
        return edges;
    }

    private static List<Impulse> heard(double[] samples, Settings settings) {
        return new ImpulseDetector(settings).take(samples, 0, samples.length);
    }

    /** At 20 dB (a pulse ten times the noise) every edge is found, none is invented, and the worst is off by less than 0.1 ms. */
    @ParameterizedTest
    @CsvSource({
        "0.3, 0.03, 0.0005",
        "-0.3, 0.03, 0.0005",
        "0.05, 0.005, 0.0005",
        "0.5, 0.001, 0.001",
        "0.3, 0.03, 0.00005"
    })
    void edgesAreFoundToATenthOfAMillisecond(double height, double noise, double rampS) {
        SplittableRandom chance = new SplittableRandom(11);
        double[] edges = edges(chance, 40);
        List<Impulse> heard = heard(recording(edges, height, noise, rampS, chance), Settings.usual(RATE));
        assertThat(heard).hasSize(edges.length);
        for (int i = 0; i < edges.length; i++) {
            assertThat(heard.get(i).sample() / RATE).isCloseTo(edges[i], within(1e-4));
            assertThat(heard.get(i).height()).isCloseTo(Math.abs(height), within(0.35 * Math.abs(height)));
        }
    }

    /** The least-squares fit of the very pulse, on a fine grid of times, finds the same edge. */
    @Test
    void theBestFitOfThePulseAgrees() {
        SplittableRandom chance = new SplittableRandom(5);
        double[] edges = edges(chance, 8);
        double[] samples = recording(edges, 0.3, 0.03, 0.0005, chance);
        List<Impulse> heard = heard(samples, Settings.usual(RATE));
        for (Impulse impulse : heard) {
            double found = impulse.sample() / RATE;
            double best = found;
            double least = Double.POSITIVE_INFINITY;
            for (double edge = found - 3e-4; edge < found + 3e-4; edge += 2e-6) {
                double squares = 0;
                for (int i = (int) ((found - 0.002) * RATE); i < (found + 0.004) * RATE; i++) {
                    double off = samples[i] - 0.02 - 0.3 * pulse(i / RATE - edge + 0.00025, 0.0005);
                    squares += off * off;
                }
                if (squares < least) {
                    least = squares;
                    best = edge;
                }
            }
            assertThat(found).isCloseTo(best, within(1e-4));
        }
    }

    /** An hour of noise alone. */
    @Test
    void noiseIsNoPulse() {
        SplittableRandom chance = new SplittableRandom(3);
        ImpulseDetector detector = new ImpulseDetector(new Settings(8000, 0, 0.4));
        double[] second = new double[8000];
        int found = 0;
        for (int i = 0; i < 3600; i++) {
            Arrays.setAll(second, k -> 0.01 * chance.nextGaussian());
            found += detector.take(second, 0, second.length).size();
        }
        assertThat(found).isZero();
    }

    /** However the samples come in, the same edges come out: a recording and what is live are one. */
    @Test
    void blocksOfAnySizeGiveTheSame() {
        SplittableRandom chance = new SplittableRandom(8);
        double[] samples = recording(edges(chance, 6), 0.3, 0.02, 0.0005, chance);
        List<Impulse> whole = heard(samples, Settings.usual(RATE));
        ImpulseDetector detector = new ImpulseDetector(Settings.usual(RATE));
        List<Impulse> pieces = new ArrayList<>();
        for (int i = 0; i < samples.length; ) {
            int to = Math.min(samples.length, i + chance.nextInt(1, 5000));
            pieces.addAll(detector.take(samples, i, to));
            i = to;
        }
        assertThat(pieces).isEqualTo(whole);
    }

    /** In and out of the beam are one pass. */
    @Test
    void aCarThatGoesInAndOutIsOnePass() {
        SplittableRandom chance = new SplittableRandom(2);
        double[] samples = recording(new double[] {3, 8}, 0.3, 0.01, 0.0005, chance);
        double[] out = recording(new double[] {3.05, 8.06}, -0.3, 0, 0.0005, chance);
        for (int i = 0; i < samples.length; i++) {
            samples[i] += out[i] - 0.02;
        }
        assertThat(heard(samples, Settings.usual(RATE))).hasSize(2);
    }

    @Test
    void silenceAndNonsenseAreNoPulses() {
        double[] silence = new double[100_000];
        assertThat(heard(silence, Settings.usual(RATE))).isEmpty();
        Arrays.fill(silence, Double.NaN);
        assertThat(heard(silence, Settings.usual(RATE))).isEmpty();
        assertThatThrownBy(() -> new Settings(100, 0, 0.4)).hasMessageContaining("sampling rate");
    }
}
