package org.lapwright.app.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.trial.Caveat;
import org.lapwright.core.trial.Consistency;
import org.lapwright.core.trial.Difference;
import org.lapwright.core.trial.JudgedRun;
import org.lapwright.core.trial.Look;
import org.lapwright.core.trial.OffRates;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.Working;
import org.lapwright.core.units.Interval;

/**
 * A verdict as it was shown, as JSON.
 *
 * <p>Keys that the {@code verdict} command has too are named as there. A number that there is none of, and an end of an
 * interval that is open, is {@code null}. The laps are not repeated: they are kept raw; the kind that each was given is.
 */
final class VerdictJson {
    private static final JsonFactory JSON = new JsonFactory();

    private final JsonGenerator out;

    private VerdictJson(JsonGenerator out) {
        this.out = out;
    }

    static String write(Verdict verdict) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = JSON.createGenerator(text)) {
            new VerdictJson(out).verdict(verdict);
        } catch (IOException e) {
            throw new UncheckedIOException("a verdict could not be written to memory", e);
        }
        return text.toString();
    }

    private void verdict(Verdict verdict) throws IOException {
        out.writeStartObject();
        out.writeStringField("verdict", verdict.decision().code());
        if (verdict.difference().isPresent()) {
            difference(verdict.difference().get());
        }
        if (verdict.consistency().isPresent()) {
            consistency(verdict.consistency().get());
        }
        whole("laps_needed", verdict.needed().eachWay());
        whole("laps_needed_for_margin", verdict.needed().forMargin());
        whole("decided_at_lap", verdict.decidedAtLap());
        out.writeObjectFieldStart("before");
        stint(verdict.before());
        out.writeObjectFieldStart("after");
        stint(verdict.after());
        out.writeArrayFieldStart("runs");
        for (JudgedRun run : verdict.runs()) {
            run(run);
        }
        out.writeEndArray();
        if (verdict.working().isPresent()) {
            working(verdict.working().get());
        }
        out.writeArrayFieldStart("caveats");
        for (Caveat caveat : verdict.caveats().stream().sorted().toList()) {
            out.writeString(caveat.name());
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private void difference(Difference difference) throws IOException {
        number("difference_s", difference.seconds());
        interval("interval_s", Optional.of(difference.intervalS()));
        number("difference_share", difference.share());
        interval("interval_share", Optional.of(difference.intervalShare()));
        number("confidence", difference.confidence());
    }

    private void consistency(Consistency consistency) throws IOException {
        out.writeStringField("steadiness", consistency.decision().code());
        number("spread_ratio", consistency.spreadRatio().orElse(Double.NaN));
        interval("spread_interval", consistency.ratioInterval());
        out.writeObjectFieldStart("offs");
        rate("before", consistency.offs().before());
        rate("after", consistency.offs().after());
        number("fisher_p", consistency.offs().fisherP());
        out.writeEndObject();
    }

    private void rate(String name, OffRates.Rate rate) throws IOException {
        out.writeObjectFieldStart(name);
        out.writeNumberField("offs", rate.offs());
        out.writeNumberField("laps", rate.laps());
        interval("interval", Optional.of(rate.interval()));
        out.writeEndObject();
    }

    private void run(JudgedRun run) throws IOException {
        out.writeStartObject();
        out.writeStringField("side", run.side().code());
        out.writeArrayFieldStart("kinds");
        for (Lap lap : run.stint().laps()) {
            out.writeString(lap.kind().code());
        }
        out.writeEndArray();
        out.writeObjectFieldStart("stint");
        stint(run.stint());
        out.writeEndObject();
    }

    private void stint(Stint stint) throws IOException {
        out.writeNumberField("clean_laps", stint.cleanLaps());
        number("pace_s", stint.paceS());
        number("spread_s", stint.spreadS());
        number("mad_s", stint.madS());
        number("best_s", stint.bestS());
        number("held_s", stint.heldS());
        interval("held_interval_s", stint.heldIntervalS());
        number("drift_s_per_lap", stint.driftSPerLap());
        number("autocorrelation", stint.autocorrelation());
        number("effective_laps", stint.effectiveLaps());
        number("time_per_lap_s", stint.timePerLapS());
        out.writeEndObject();
    }

    private void working(Working working) throws IOException {
        out.writeObjectFieldStart("working");
        number("autocorrelation", working.autocorrelation());
        number("run_share", working.runShare());
        number("lap_scatter", working.lapScatter());
        number("drift_share", working.driftShare());
        number("warm_up_share", working.warmUpShare());
        out.writeStringField("plan", working.planText());
        number("alpha", working.alpha());
        number("level_margin", working.levelMargin());
        out.writeArrayFieldStart("looks");
        for (Look look : working.looks()) {
            out.writeStartObject();
            out.writeNumberField("lap", look.lap());
            number("delta", look.delta());
            number("half_width", look.halfWidth());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private void interval(String name, Optional<Interval> interval) throws IOException {
        out.writeFieldName(name);
        if (interval.isEmpty()) {
            out.writeNull();
            return;
        }
        out.writeStartArray();
        number(interval.get().low());
        number(interval.get().high());
        out.writeEndArray();
    }

    private void whole(String name, OptionalInt value) throws IOException {
        out.writeFieldName(name);
        if (value.isPresent()) {
            out.writeNumber(value.getAsInt());
        } else {
            out.writeNull();
        }
    }

    private void number(String name, OptionalDouble value) throws IOException {
        number(name, value.orElse(Double.NaN));
    }

    private void number(String name, double value) throws IOException {
        out.writeFieldName(name);
        number(value);
    }

    private void number(double value) throws IOException {
        if (Double.isFinite(value)) {
            out.writeNumber(value);
        } else {
            out.writeNull();
        }
    }
}
