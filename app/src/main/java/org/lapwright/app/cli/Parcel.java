package org.lapwright.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.ComparisonJson;
import org.lapwright.app.files.SessionJson;
import org.lapwright.app.files.SessionJson.OverruleJson;
import org.lapwright.app.files.SessionJson.RunJson;
import org.lapwright.app.files.SessionJson.SettingsJson;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/** A comparison on its way out of a garage or into one. */
final class Parcel {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private Parcel() {}

    /**
     * What came in.
     *
     * @param kept the comparison
     * @param at when it was kept
     */
    record Unpacked(KeptComparison kept, Instant at) {}

    static String pack(SavedComparison saved) {
        KeptComparison kept = saved.kept();
        TrialSettings settings = kept.settings();
        return Json.of(new ComparisonJson(
                ComparisonJson.FORMAT,
                kept.car(),
                kept.track(),
                kept.lane(),
                kept.driver(),
                kept.conditions(),
                kept.change(),
                kept.stays().code(),
                saved.savedAt().toString(),
                new SessionJson(
                        kept.session().runs().stream().map(Parcel::run).toList(),
                        new SettingsJson(
                                settings.plan().map(RunPlan::text).orElse(null),
                                1 - settings.alpha(),
                                100 * settings.levelMargin(),
                                settings.handTimed()))));
    }

    private static RunJson run(DrivenRun driven) {
        return new RunJson(
                driven.side().code(),
                driven.run().laps().stream().map(TimedLap::seconds).toList(),
                driven.run().overrules().stream()
                        .map(word -> new OverruleJson(word.lap(), word.kind().code(), word.reason()))
                        .toList());
    }

    /**
     * Reads it.
     *
     * @throws IllegalArgumentException with what is wrong
     */
    static Unpacked unpack(String text) {
        try {
            ComparisonJson json = MAPPER.readValue(text, ComparisonJson.class);
            if (!ComparisonJson.FORMAT.equals(json.format())) {
                throw new IllegalArgumentException(
                        "format is %s; it must be %s".formatted(json.format(), ComparisonJson.FORMAT));
            }
            SessionJson session = json.session();
            String stays = json.stays();
            if (session == null || stays == null) {
                throw new IllegalArgumentException((session == null ? "session" : "stays") + " is missing");
            }
            KeptComparison kept = new KeptComparison(
                    text(json.car()),
                    text(json.track()),
                    text(json.lane()),
                    text(json.driver()),
                    text(json.conditions()),
                    text(json.change()),
                    Side.find(stays)
                            .orElseThrow(() -> new IllegalArgumentException(
                                    "stays is '%s'; it must be before or after".formatted(stays))),
                    session.toSession(),
                    session.toSettings(),
                    false);
            return new Unpacked(kept, Instant.parse(text(json.savedAt())));
        } catch (JsonProcessingException broken) {
            throw new IllegalArgumentException("it is no comparison: " + broken.getOriginalMessage(), broken);
        } catch (DateTimeException wrong) {
            throw new IllegalArgumentException("saved_at is no time such as 2026-03-01T20:15:30Z", wrong);
        }
    }

    private static String text(@Nullable String given) {
        return Optional.ofNullable(given).orElse("");
    }
}
