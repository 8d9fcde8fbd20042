package org.lapwright.core.dynamics;

/** What became of a car sent round a lane: a lap, or the reason why there is none. */
public sealed interface LapOutcome permits PredictedLap, Stuck, TooTight {
    /** Lap time, s; infinite when there is no lap. */
    double lapS();
}
