package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.files.SessionJson;
import org.lapwright.app.files.VerdictJson;
import org.lapwright.core.trial.Judge;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.TrialSettings;

class VerdictApiTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static Stage stage;
    private static Visitor visitor;

    @BeforeAll
    static void open() {
        stage = new Stage();
        visitor = new Visitor(stage);
    }

    @AfterAll
    static void close() {
        stage.close();
    }

    @Test
    void theFieldsAreThoseThatStayFixed() throws JsonProcessingException {
        HttpResponse<String> answer = visitor.postJson("/api/verdict", session(6.5, 6.3));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("application/json"));
        JsonNode verdict = JSON.readTree(answer.body());
        assertThat(verdict.fieldNames())
                .toIterable()
                .containsExactly(
                        "verdict",
                        "difference_s",
                        "interval_s",
                        "confidence",
                        "spread_ratio",
                        "spread_interval",
                        "laps_needed",
                        "decided_at_lap",
                        "before",
                        "after",
                        "difference_percent",
                        "consistency",
                        "needed_afresh",
                        "offs",
                        "plan",
                        "caveats",
                        "session");
        assertThat(verdict.get("verdict").asText()).isEqualTo("faster");
        assertThat(verdict.get("difference_s").asDouble()).isNegative();
        assertThat(verdict.get("interval_s")).hasSize(2);
        assertThat(verdict.get("confidence").asDouble()).isEqualTo(0.95);
        assertThat(verdict.get("before").fieldNames())
                .toIterable()
                .containsExactly("laps", "pace_s", "spread_s", "best_s", "drift_s_per_lap");
        assertThat(verdict.get("before").get("laps").get(0).toString())
                .matches("\\{\"lap\":1,\"lap_s\":6\\.\\d+,\"kind\":\"clean\"}");
    }

    @Test
    void theDriverIsTheOneKnownHere() throws JsonProcessingException {
        try (Stage season = new Stage()) {
            String usual = new Visitor(season)
                    .postJson("/api/verdict", session(6.5, 6.49))
                    .body();
            assertThat(JSON.readTree(usual)).isEqualTo(JSON.readTree(asked(NoisePrior.DEFAULT)));
            for (int evening = 0; evening < 3; evening++) {
                season.keep("Redshank", 6.5, 6.5, evening);
            }
            String learned = new Visitor(season)
                    .postJson("/api/verdict", session(6.5, 6.49))
                    .body();
            assertThat(season.knownDriver().prior().sessions()).isEqualTo(3);
            assertThat(JSON.readTree(learned))
                    .isNotEqualTo(JSON.readTree(usual))
                    .isEqualTo(JSON.readTree(asked(season.knownDriver().prior())));
        }
    }

    private static String asked(NoisePrior prior) throws JsonProcessingException {
        SessionJson asked = JSON.readValue(session(6.5, 6.49), SessionJson.class);
        TrialSettings settings = asked.toSettings().withPrior(prior);
        return JSON.writeValueAsString(VerdictJson.of(Judge.judge(asked.toSession(), settings), settings));
    }

    @Test
    void whatCannotBeToldIsNull() throws JsonProcessingException {
        JsonNode verdict =
                JSON.readTree(visitor.postJson("/api/verdict", "{\"runs\":[{\"side\":\"before\",\"lap_s\":[6.2]}]}")
                        .body());
        assertThat(verdict.get("verdict").asText()).isEqualTo("more-laps");
        assertThat(verdict.get("difference_s").isNull()).isTrue();
        assertThat(verdict.get("interval_s").isNull()).isTrue();
        assertThat(verdict.get("after").get("pace_s").isNull()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "null",
                "[]",
                "{",
                "{\"runs\":[]} x",
                "{\"runs\":7}",
                "{\"runs\":[],\"speed\":1}",
                "{\"runs\":[{\"side\":\"before\",\"lap_s\":[\"6.2\"]}]}",
                "{\"runs\":[{\"side\":\"before\",\"lap_s\":[NaN]}]}",
                "{\"runs\":[{\"side\":\"before\",\"lap_s\":[1e400]}]}",
                "{\"runs\":[],\"settings\":{\"hand_timed\":\"yes\"}}",
            })
    void whatIsWrongIsAProblemDocument(String body) throws JsonProcessingException {
        HttpResponse<String> answer = visitor.postJson("/api/verdict", body);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertProblem(answer, 400);
        assertThat(answer.body()).doesNotContain("Exception", "jackson", "org.lapwright");
    }

    @Test
    void anUnknownKeyIsNamedWithThoseThatAreKnown() {
        assertThat(visitor.postJson("/api/verdict", "{\"runs\":[],\"settings\":{\"hand_timd\":true}}")
                        .body())
                .contains("settings.hand_timd is not known", "hand_timed");
    }

    @Test
    void tenThousandBracketsAreNotTheEnd() throws JsonProcessingException {
        assertProblem(visitor.postJson("/api/verdict", "{\"runs\":" + "[".repeat(10_000)), 400);
    }

    @Test
    void tooManyLapsAreRefused() {
        String laps = "6.2" + ",6.2".repeat(2000);
        assertThat(visitor.postJson("/api/verdict", "{\"runs\":[{\"side\":\"before\",\"lap_s\":[" + laps + "]}]}")
                        .body())
                .contains("runs has 2001 laps; at most 2000 fit");
    }

    @Test
    void formsAreNotTakenForJson() throws JsonProcessingException {
        assertProblem(visitor.post("/api/verdict", Map.of("runs", "[]")), 415);
    }

    @Test
    void otherAddressesThereAnswerInJsonToo() throws JsonProcessingException {
        assertProblem(visitor.get("/api/nothing"), 404);
        assertProblem(visitor.get("/api/verdict"), 405);
    }

    private static void assertProblem(HttpResponse<String> answer, int status) throws JsonProcessingException {
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("application/problem+json"));
        JsonNode problem = JSON.readTree(answer.body());
        assertThat(problem.get("status").asInt()).isEqualTo(status);
        assertThat(problem.get("title").asText()).endsWith(".");
        assertThat(problem.get("type").asText()).isEqualTo("about:blank");
    }

    private static String session(double before, double after) {
        return "{\"runs\":[{\"side\":\"before\",\"lap_s\":[%s]},{\"side\":\"after\",\"lap_s\":[%s]}]}"
                .formatted(list(before, 1), list(after, 2));
    }

    private static String list(double pace, long seed) {
        return Visitor.laps(pace, 20, seed).strip().replaceAll("\\s+", ",");
    }
}
