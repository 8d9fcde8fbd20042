package org.lapwright.app.usecase;

import java.util.function.BiFunction;
import org.lapwright.core.trial.Judge;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.TrialSettings;

/** Did the change help? */
public final class JudgeChange {
    private final BiFunction<Session, TrialSettings, Verdict> judge;

    /** Judges by {@link Judge}. */
    public JudgeChange() {
        this(Judge::judge);
    }

    /** Judges by another judge. */
    public JudgeChange(BiFunction<Session, TrialSettings, Verdict> judge) {
        this.judge = judge;
    }

    /** The verdict on a session. */
    public Verdict judge(Session session, TrialSettings settings) {
        return judge.apply(session, settings);
    }
}
