package org.lapwright.app.web.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

class CompareFormTest {
    private static final NoisePrior LEARNED = new NoisePrior(1.0 / 3, 170, 0.1 + 0.2, 12);
    private static final String KEY = "0123456789abcdef0123456789abcdef";

    @Test
    void anEmptyFormHasOneBoxASide() {
        CompareForm form = CompareForm.from(new Fields(Map.of()), KEY);
        assertThat(form.boxes()).extracting(Box::side).containsExactly(Side.BEFORE, Side.AFTER);
        assertThat(form.options()).isEqualTo(Options.USUAL);
        assertThat(form.key()).isEqualTo(KEY);
    }

    /** The order A B B A balances a straight drift: Cox, Biometrika 38 (1951). */
    @Test
    void runsAddedFollowAbba() {
        CompareForm form = CompareForm.empty(KEY);
        for (int i = 0; i < 6; i++) {
            form = form.withAnotherRun();
        }
        assertThat(form.boxes())
                .extracting(box -> box.side().letter())
                .containsExactly('A', 'B', 'B', 'A', 'A', 'B', 'B', 'A');
    }

    @Test
    void neverFewerThanTwoRuns() {
        CompareForm form = CompareForm.empty(KEY);
        assertThat(form.withoutRun(1).boxes()).hasSize(2);
        assertThat(form.withAnotherRun().withoutRun(0).boxes()).hasSize(3);
        assertThat(form.withAnotherRun().withoutRun(4).boxes()).hasSize(3);
        assertThat(form.withAnotherRun().withoutRun(3).boxes()).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "short", "0123456789ABCDEF0123456789ABCDEF", "../../../../../../etc/passwd0000"})
    void aKeyThatIsNotOursIsReplaced(String key) {
        assertThat(CompareForm.from(fields("key", key), KEY).key()).isEqualTo(KEY);
    }

    @Test
    void whatIsFixedSurvivesTheWayThroughThePage() {
        TrialSettings settings =
                new Options("ABBA x 12", "0.45", "90", true).check(LEARNED).settings();
        Fixed fixed = Fixed.atFirstLook(new Session(List.of()), settings).orElseThrow();
        Map<String, String> carried = new LinkedHashMap<>();
        fixed.hidden().forEach(field -> carried.put(field.name(), field.value()));
        assertThat(Fixed.from(fields(carried))).hasValue(fixed);
        assertThat(fixed.planInWords()).isEqualTo("A B B A × 12");
    }

    @Test
    void whatMakesNoSenseFixesNothing() {
        assertThat(Fixed.from(fields("fixed-plan", "AB x 0"))).isEmpty();
        assertThat(Fixed.from(fields(Map.of("fixed-plan", "AB x 9", "fixed-margin", "99"))))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "0.3 20", "x 20 0.1 3", "0.9 20 0.1 3", "NaN 20 0.1 3", "0.3 20 0.1 3.5", "0.3 20 0.1 3 4"})
    void aBeliefThatMakesNoSenseIsTheUsualOne(String belief) {
        Map<String, String> carried =
                Map.of("fixed-plan", "AB x 9", "fixed-margin", "0.3", "fixed-sure", "95", "fixed-belief", belief);
        assertThat(Fixed.from(fields(carried)).orElseThrow().settings().prior()).isEqualTo(NoisePrior.DEFAULT);
    }

    @Test
    void thePlanAsDrivenNeverAsksForLess() {
        assertThat(planned(10, 11)).hasValue(RunPlan.parse("AB x 11"));
        assertThat(planned(22, 22)).hasValue(RunPlan.parse("AB x 22"));
        assertThat(Fixed.atFirstLook(
                        new Session(List.of(new DrivenRun(Side.BEFORE, run(10)), new DrivenRun(Side.BEFORE, run(10)))),
                        TrialSettings.DEFAULT))
                .as("one side only")
                .isEmpty();
        assertThat(planned(2, 2)).as("too few for a plan").isEmpty();
        assertThat(planned(900, 900)).hasValue(RunPlan.parse("AB x 500"));
    }

    @Test
    void aWordSurvivesTheWayThroughThePage() {
        LapWord word = LapWord.on(3, 6.9124, new Overrule(14, LapKind.OFF_OR_MISSED, "cat | dog & \"co\""));
        assertThat(LapWord.read(word.code())).hasValue(word);
        assertThat(word.isAbout(6.912)).isTrue();
        assertThat(word.isAbout(6.913)).isFalse();
    }

    @Test
    void aWordOutOfRangeIsNone() {
        assertThat(LapWord.read("1|0|6912|clean|why")).isEmpty();
        assertThat(LapWord.read("1|2|6912|fast|why")).isEmpty();
        assertThat(LapWord.read("1|2|6912|clean| ")).isEmpty();
        assertThat(LapWord.read("1|2|x|clean|why")).isEmpty();
    }

    private static Optional<RunPlan> planned(int before, int after) {
        return Fixed.atFirstLook(Session.of(run(before), run(after)), TrialSettings.DEFAULT)
                .map(Fixed::plan);
    }

    private static TimedRun run(int laps) {
        double[] seconds = new double[laps];
        java.util.Arrays.fill(seconds, 6.2);
        return TimedRun.of(seconds);
    }

    private static Fields fields(String name, String value) {
        return fields(Map.of(name, value));
    }

    private static Fields fields(Map<String, String> values) {
        Map<String, List<String>> lists = new LinkedHashMap<>();
        values.forEach((name, value) -> lists.put(name, List.of(value)));
        return new Fields(lists);
    }
}
