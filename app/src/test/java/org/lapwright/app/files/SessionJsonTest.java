package org.lapwright.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

class SessionJsonTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @Test
    void readsRunsInTheOrderDriven() throws JsonProcessingException {
        SessionJson json = read("""
                {"runs": [
                   {"side": "before", "lap_s": [6.2, 6.3],
                    "overrules": [{"lap": 2, "kind": "off", "reason": "marshal's foot"}]},
                   {"side": "after", "lap_s": [6.1]}],
                 "settings": {"plan": "ABBA x 10", "confidence": 0.9, "margin_percent": 0.5, "hand_timed": true}}
                """);
        Session session = json.toSession();
        assertThat(session.runs()).extracting(run -> run.side()).containsExactly(Side.BEFORE, Side.AFTER);
        assertThat(session.runs().get(0).run().laps())
                .extracting(lap -> lap.seconds())
                .containsExactly(6.2, 6.3);
        assertThat(session.runs().get(0).run().overrules())
                .containsExactly(new Overrule(2, LapKind.OFF, "marshal's foot"));
        TrialSettings settings = json.toSettings();
        assertThat(settings.alpha()).isEqualTo(0.1);
        assertThat(settings.levelMargin()).isEqualTo(0.005);
        assertThat(settings.handTimed()).isTrue();
        assertThat(settings.plan()).hasValue(RunPlan.parse("ABBA x 10"));
    }

    @Test
    void withoutSettingsTheUsualOnesHold() throws JsonProcessingException {
        SessionJson json = read("{\"runs\": []}");
        assertThat(json.toSettings()).isEqualTo(TrialSettings.DEFAULT);
        assertThat(json.toSession().laps()).isZero();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    {} | runs is missing
                    {"runs": [null]} | runs[0] is missing
                    {"runs": [{"lap_s": []}]} | runs[0].side is missing
                    {"runs": [{"side": "During", "lap_s": []}]} | runs[0].side is 'During'; it must be before or after
                    {"runs": [{"side": "after"}]} | runs[0].lap_s is missing
                    {"runs": [{"side": "after", "lap_s": [6, null]}]} | runs[0].lap_s[1] is missing
                    {"runs": [{"side": "after", "lap_s": [6, -1]}]} | runs[0].lap_s[1]: lap time is -1 s
                    {"runs": [{"side": "after", "lap_s": [6], "overrules": [{"lap": 1, "kind": "fast", "reason": "x"}]}]} | runs[0].overrules[0]: 'fast' is not a kind of lap; the kinds are clean, first, off
                    {"runs": [{"side": "after", "lap_s": [6], "overrules": [{"lap": 1, "kind": "off", "reason": " "}]}]} | runs[0].overrules[0]: reason is empty
                    {"runs": [{"side": "after", "lap_s": [6], "overrules": [{"kind": "off", "reason": "x"}]}]} | runs[0].overrules[0]: lap is missing
                    """)
    void whatIsWrongNamesTheKey(String json, String message) throws JsonProcessingException {
        SessionJson session = read(json);
        assertThatIllegalArgumentException().isThrownBy(session::toSession).withMessageStartingWith(message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    {"plan": "AAAA x 10"} | settings.plan: the plan has runs of one side only
                    {"plan": "soon"} | settings.plan: 'soon' is not a run plan
                    {"confidence": 95} | settings.confidence is 95.0; it must be from 0.7 to 0.999
                    {"margin_percent": -1} | settings.margin_percent is -1.0; it must be from 0 to 10
                    """)
    void impossibleSettingsNameTheKey(String settings, String message) throws JsonProcessingException {
        SessionJson session = read("{\"runs\": [], \"settings\": " + settings + "}");
        assertThatIllegalArgumentException().isThrownBy(session::toSettings).withMessageStartingWith(message);
    }

    private static SessionJson read(String json) throws JsonProcessingException {
        return JSON.readValue(json, SessionJson.class);
    }
}
