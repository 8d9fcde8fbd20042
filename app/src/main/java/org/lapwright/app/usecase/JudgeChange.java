package org.lapwright.app.usecase;

import org.lapwright.core.trial.Judge;
import org.lapwright.core.trial.Session;
import org.lapwright.core.trial.TrialSettings;
import org.lapwright.core.trial.Verdict;

/** Did the change help? */
public final class JudgeChange {
    /** The verdict on a session. */
    public Verdict judge(Session session, TrialSettings settings) {
        return Judge.judge(session, settings);
    }
}
