package org.lapwright.app.web;

import io.javalin.http.Context;
import org.lapwright.app.files.SessionJson;
import org.lapwright.app.files.VerdictJson;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.KnownDriver;
import org.lapwright.app.web.compare.Comparison;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.TrialSettings;

/** The verdict for programs: JSON in, JSON out. */
final class VerdictApi {
    private final JudgeChange judgeChange;
    private final KnownDriver knownDriver;

    VerdictApi(JudgeChange judgeChange, KnownDriver knownDriver) {
        this.judgeChange = judgeChange;
        this.knownDriver = knownDriver;
    }

    void judge(Context context) {
        if (!Door.isJson(context.contentType())) {
            throw Problem.wrongType("application/json");
        }
        Session session;
        TrialSettings settings;
        try {
            SessionJson asked = Json.read(context.bodyAsBytes(), SessionJson.class);
            session = asked.toSession();
            settings = asked.toSettings().withPrior(knownDriver.prior());
            if (session.laps() > Comparison.MOST_LAPS) {
                throw new IllegalArgumentException(
                        "runs has %d laps; at most %d fit".formatted(session.laps(), Comparison.MOST_LAPS));
            }
        } catch (IllegalArgumentException wrong) {
            throw new Problem(400, "The session cannot be judged.", wrong.getMessage() + ".");
        }
        VerdictJson verdict = VerdictJson.of(judgeChange.judge(session, settings), settings);
        context.contentType("application/json").result(Json.write(verdict)).header("Cache-Control", "no-store");
    }
}
