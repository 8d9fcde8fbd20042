package org.lapwright.app.usecase.capture;

import java.util.List;
import org.lapwright.core.units.Check;

/** What is wanted of a gate on the sound card, and who is told how loud it is. Asked and told while it listens, on its thread. */
public interface SoundWatch {
    /** Least height of a pass that is asked where nobody says otherwise: the noise asks for more than that, where there is noise. */
    double USUAL_LEAST_LEVEL = 0.01;

    /** Least height of a pass, in full scale, 0 to 1; below eight times the noise nothing ever counts. */
    double leastLevel();

    /** What was heard in the next moment (some 23 ms), lane by lane from lane 1. */
    void heard(List<SoundLevel> lanes);

    /** Asks for that least height, and looks at no levels. */
    static SoundWatch fixed(double leastLevel) {
        double checked = Check.inRange(leastLevel, 0, 1, "least level", "");
        return new SoundWatch() {
            @Override
            public double leastLevel() {
                return checked;
            }

            @Override
            public void heard(List<SoundLevel> lanes) {
                // Nobody looks.
            }
        };
    }
}
