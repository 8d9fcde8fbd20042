package org.lapwright.core.laps.sound;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.units.Check;

/**
 * Finds the leading edges of pulses in the samples of one channel, whatever their polarity, on a clock that counts samples.
 *
 * <p>Samples are smoothed over a third of a millisecond, and what creeps (the input is coupled by a capacitor) is taken off. A pulse begins where
 * that leaves the noise by eight times, or a level of the racer's own; its edge is where it crosses half of its peak of the next five milliseconds, between samples by a
 * straight line, so that neither the height of a pulse nor the level moves it. After an edge the gate is deaf for a while: the car that goes in comes out again.
 * Memory is constant; an edge is told some five milliseconds after it.
 */
public final class ImpulseDetector {
    private static final double SMOOTH_S = 0.0003;
    private static final double LOOK_AHEAD_S = 0.005;
    private static final double BEFORE_S = 0.010;
    private static final double CREEP_S = 0.1;
    private static final double NOISE_S = 0.3;
    private static final double TIMES_NOISE = 8;

    /** Standard deviation over mean distance from the mean, for normal noise: √(π/2). */
    private static final double BY_MEAN_DISTANCE = Math.sqrt(Math.PI / 2);

    private final int smooth;
    private final int ahead;
    private final int deaf;
    private final int settle;
    private final double creepShare;
    private final double noiseShare;
    private final double[] box;
    private final double[] recent;

    private double leastLevel;
    private double loudest;
    private double boxSum;
    private double creep;
    private double distance = 1e-4;
    private long count;
    private long trigger = -1;
    private long deafUntil;

    /**
     * How to listen.
     *
     * @param samplesPerS sampling rate, 4,000 to 400,000 a second
     * @param leastLevel least height of a pulse in full scale, 0 to 1; 0 leaves it to the noise
     * @param deafS how long to be deaf after an edge, 0.01 to 10 s
     */
    public record Settings(double samplesPerS, double leastLevel, double deafS) {
        /** Checks each. */
        public Settings {
            Check.inRange(samplesPerS, 4_000, 400_000, "sampling rate", "a second");
            Check.inRange(leastLevel, 0, 1, "least level", "");
            Check.inRange(deafS, 0.01, 10, "time to be deaf", "s");
        }

        /** By the noise alone, deaf for 0.4 s: no lap of a home track is shorter. */
        public static Settings usual(double samplesPerS) {
            return new Settings(samplesPerS, 0.01, 0.4);
        }
    }

    /** A detector for one channel. */
    public ImpulseDetector(Settings settings) {
        double rate = settings.samplesPerS();
        smooth = Math.max(1, (int) Math.round(SMOOTH_S * rate));
        ahead = (int) Math.round(LOOK_AHEAD_S * rate);
        deaf = (int) Math.round(settings.deafS() * rate);
        settle = (int) Math.round(NOISE_S * rate);
        creepShare = 1 / (CREEP_S * rate);
        noiseShare = 1 / (NOISE_S * rate);
        leastLevel = settings.leastLevel();
        box = new double[smooth];
        recent = new double[ahead + (int) Math.round(BEFORE_S * rate) + 2];
        deafUntil = settle;
    }

    /**
     * Takes samples as they come.
     *
     * @param samples in full scale, −1 to 1; what is not finite counts as silence
     * @param from the first
     * @param to one after the last
     * @return edges that have become certain, in order
     */
    public List<Impulse> take(double[] samples, int from, int to) {
        List<Impulse> found = new ArrayList<>();
        loudest = 0;
        for (int i = from; i < to; i++) {
            next(Double.isFinite(samples[i]) ? samples[i] : 0, found);
        }
        return found;
    }

    /** Asks another least height of a pulse from now on, in full scale, 0 to 1; 0 leaves it to the noise. */
    public void need(double level) {
        leastLevel = Check.inRange(level, 0, 1, "least level", "");
    }

    /** Height that a pulse needs now, in full scale: for a picture of the level. */
    public double threshold() {
        return Math.max(leastLevel, TIMES_NOISE * BY_MEAN_DISTANCE * distance);
    }

    /** The greatest height among the samples taken last, smoothed and without what creeps, in full scale. */
    public double loudest() {
        return loudest;
    }

    private void next(double sample, List<Impulse> found) {
        int slot = (int) (count % smooth);
        boxSum += sample - box[slot];
        box[slot] = sample;
        double smoothed = boxSum / smooth;
        boolean quiet = trigger < 0 && Math.abs(smoothed - creep) < threshold();
        // While a pulse stands, neither the middle nor the noise learns from it.
        if (quiet || count < settle) {
            creep += creepShare * (smoothed - creep);
            distance += noiseShare * (Math.abs(smoothed - creep) - distance);
        }
        recent[(int) (count % recent.length)] = smoothed - creep;
        loudest = Math.max(loudest, Math.abs(smoothed - creep));
        if (trigger < 0 && count >= deafUntil && Math.abs(smoothed - creep) >= threshold()) {
            trigger = count;
        }
        if (trigger >= 0 && count == trigger + ahead) {
            found.add(edge());
            deafUntil = trigger + deaf;
            trigger = -1;
        }
        count++;
    }

    private double at(long index) {
        return recent[(int) (index % recent.length)];
    }

    /** Where the pulse crosses half of its peak on the way up; smoothing put it off by half of its width. */
    private Impulse edge() {
        double sign = Math.signum(at(trigger));
        long top = trigger;
        for (long i = trigger; i <= trigger + ahead; i++) {
            top = sign * at(i) > sign * at(top) ? i : top;
        }
        double half = sign * at(top) / 2;
        long oldest = Math.max(0, count - recent.length + 1);
        long i = top;
        while (i > oldest && sign * at(i - 1) >= half) {
            i--;
        }
        double below = i > oldest ? sign * at(i - 1) : half;
        double above = sign * at(i);
        double share = above > below ? (half - below) / (above - below) : 0;
        double peak = sign * at(top);
        return new Impulse(i - 1 + share - (smooth - 1) / 2.0, peak, peak / (BY_MEAN_DISTANCE * distance));
    }
}
