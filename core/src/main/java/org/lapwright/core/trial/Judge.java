package org.lapwright.core.trial;

/** Judges a session: did the change help, on pace and on consistency. */
public final class Judge {
    private Judge() {}

    /**
     * The verdict on a session.
     *
     * @param session the runs in the order driven; any number of laps, even none
     * @param settings what the racer fixed beforehand
     * @return the verdict, {@link Decision#MORE_LAPS} when there are too few laps; never NaN
     */
    public static Verdict judge(Session session, TrialSettings settings) {
        throw new UnsupportedOperationException("being built: " + session.laps() + settings.alpha());
    }
}
