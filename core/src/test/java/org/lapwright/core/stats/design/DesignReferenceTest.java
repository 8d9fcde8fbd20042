package org.lapwright.core.stats.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.hipparchus.stat.StatUtils;
import org.junit.jupiter.api.Test;
import org.lapwright.core.stats.OneWayAnova;
import org.lapwright.core.stats.ReferenceCase;

/** Designs, effects and Lenth's margins against Box, Hunter and Hunter 1978 and R 4.2.2. */
class DesignReferenceTest {
    private static int[][] states(ReferenceCase c) {
        return Arrays.stream(c.inputRows("design"))
                .map(row -> Arrays.stream(row).mapToInt(v -> (int) v).toArray())
                .toArray(int[][]::new);
    }

    private static void assertSame(TwoLevelDesign design, int[][] states) {
        assertThat(design.runs()).isEqualTo(states.length);
        for (int r = 0; r < states.length; r++) {
            for (int f = 0; f < states[r].length; f++) {
                assertThat(design.state(r, f)).as("run %d factor %d", r, f).isEqualTo(states[r][f]);
            }
        }
    }

    private static void checkMain(ReferenceCase c, TwoLevelDesign design, double[] y, String name) {
        for (int f = 0; f < design.factors(); f++) {
            c.check(design.effect(y, f), name, "x" + (f + 1));
        }
    }

    private static void checkLenth(ReferenceCase c, double[] effects) {
        LenthMargins margins = LenthMargins.of(effects);
        c.check(margins.firstScale(), "lenth", "s0");
        c.check(margins.pseudoStandardError(), "lenth", "pse");
        c.check(margins.df(), "lenth", "df");
        c.check(margins.margin(), "lenth", "margin_of_error");
        c.check(margins.simultaneousMargin(), "lenth", "simultaneous_margin");
    }

    /** Box, Hunter and Hunter 1978, p. 391: effects 3.5, 12, 1, 22.5, 0.5, 1, 2.5 on a bicycle. */
    @Test
    void sevenFactorsInEightRuns() {
        ReferenceCase c = ReferenceCase.load("doe-bicycle-2-7-4");
        TwoLevelDesign design = TwoLevelDesign.sevenInEight();
        assertSame(design, states(c));
        double[] y = c.inputs("y");
        c.check(StatUtils.mean(y), "mean");
        checkMain(c, design, y, "effects");
        checkLenth(c, design.mainEffects(y));
        assertThat(design.aliases(3)).hasSize(3).contains(new TwoLevelDesign.Alias(0, 1, 1));
    }

    /** Box, Hunter and Hunter 1978, p. 394: a second half with factor 4 in the other state. */
    @Test
    void foldOver() {
        ReferenceCase c = ReferenceCase.load("doe-bicycle-foldover");
        TwoLevelDesign half = TwoLevelDesign.sevenInEight();
        TwoLevelDesign design = half.foldedOver(3);
        assertSame(design, states(c));
        double[] y = c.inputs("y");
        checkMain(c, design, y, "effects_16");
        checkMain(c, half, Arrays.copyOf(y, 8), "effects_first_8");
        int[][] second = Arrays.copyOfRange(states(c), 8, 16);
        double[] ySecond = Arrays.copyOfRange(y, 8, 16);
        checkMain(c, TwoLevelDesign.of(second), ySecond, "effects_second_8");
        c.check(StatUtils.mean(ySecond) - StatUtils.mean(y, 0, 8), "block_effect");
        assertThat(design.aliases(3)).isEmpty();
        assertThat(design.aliases(0)).isNotEmpty();
        TwoLevelDesign all = half.foldedOver(0, 1, 2, 3, 4, 5, 6);
        assertThat(IntStream.range(0, 7).mapToObj(all::aliases)).allMatch(List::isEmpty);
    }

    /** Box, Hunter and Hunter 1978, p. 308: pilot plant, T 23, C -5, K 1.5, TC 1.5, TK 10, CK 0, TCK 0.5. */
    @Test
    void pilotPlant() {
        ReferenceCase c = ReferenceCase.load("doe-pilot-2-3");
        TwoLevelDesign design = TwoLevelDesign.full(3);
        assertSame(design, states(c));
        double[] y = c.inputs("y");
        String[] letters = {"T", "C", "K"};
        double[] effects = new double[7];
        for (int set = 1; set < 8; set++) {
            int bits = set;
            int[] factors =
                    IntStream.range(0, 3).filter(f -> (bits >> f & 1) == 1).toArray();
            effects[set - 1] = design.effect(y, factors);
            c.check(
                    effects[set - 1],
                    "effects",
                    String.join(
                            ":",
                            Arrays.stream(factors).mapToObj(f -> letters[f]).toList()));
        }
        c.check(StatUtils.mean(y), "mean");
        checkLenth(c, effects);
    }

    /** Plackett and Burman 1946, Biometrika 33, p. 323. */
    @Test
    void twelveRuns() {
        ReferenceCase c = ReferenceCase.load("doe-plackett-burman-12");
        TwoLevelDesign design = TwoLevelDesign.plackettBurman12();
        assertSame(design, states(c));
        double[] y = c.inputs("y");
        checkMain(c, design, y, "effects");
        checkLenth(c, design.mainEffects(y));
        double[] shares = IntStream.range(2, 11)
                .mapToDouble(f -> design.aliases(f).stream()
                        .filter(a -> a.first() == 0 && a.second() == 1)
                        .mapToDouble(a -> Math.abs(a.share()))
                        .sum())
                .toArray();
        c.checkAll(shares, "abs_alias_of_x1x2_with_x3_to_x11");
    }

    /** Venables and Ripley 2002, p. 165: peas in six blocks; sums of squares are n/4 times squared effects. */
    @Test
    void peasInBlocks() {
        ReferenceCase c = ReferenceCase.load("doe-npk-blocks");
        double[] y = c.inputs("yield");
        String[] names = {"N", "P", "K"};
        int[][] states = new int[y.length][3];
        for (int f = 0; f < 3; f++) {
            String[] levels = c.inputTexts(names[f]);
            for (int r = 0; r < y.length; r++) {
                states[r][f] = levels[r].equals("1") ? 1 : -1;
            }
        }
        TwoLevelDesign design = TwoLevelDesign.of(states);
        Map<String, List<Double>> blocks = new TreeMap<>();
        for (int r = 0; r < y.length; r++) {
            blocks.computeIfAbsent(c.inputTexts("block")[r], b -> new ArrayList<>())
                    .add(y[r]);
        }
        OneWayAnova byBlock = OneWayAnova.of(blocks.values().stream()
                .map(v -> v.stream().mapToDouble(Double::doubleValue).toArray())
                .toList());
        Map<String, Double> squares = new TreeMap<>();
        squares.put("N", 6 * Math.pow(design.effect(y, 0), 2));
        squares.put("P", 6 * Math.pow(design.effect(y, 1), 2));
        squares.put("K", 6 * Math.pow(design.effect(y, 2), 2));
        squares.put("N:P", 6 * Math.pow(design.effect(y, 0, 1), 2));
        squares.put("N:K", 6 * Math.pow(design.effect(y, 0, 2), 2));
        squares.put("P:K", 6 * Math.pow(design.effect(y, 1, 2), 2));
        double residual = byBlock.ssWithin()
                - squares.values().stream().mapToDouble(Double::doubleValue).sum();
        c.check(residual, "ss", "Residuals");
        c.check(byBlock.ssBetween(), "ss", "block");
        c.check(byBlock.ssBetween() / 5 / (residual / 12), "F", "block");
        squares.forEach((name, ss) -> {
            c.check(ss, "ss", name);
            c.check(ss / (residual / 12), "F", name);
        });
    }

    /** Box, Hunter and Hunter 1978, chapter 12: resolution IV for four factors in eight runs, V for five in sixteen. */
    @Test
    void halves() {
        TwoLevelDesign four = TwoLevelDesign.half(4);
        TwoLevelDesign five = TwoLevelDesign.half(5);
        assertThat(four.runs()).isEqualTo(8);
        assertThat(five.runs()).isEqualTo(16);
        assertThat(TwoLevelDesign.half(3).aliases(2)).containsExactly(new TwoLevelDesign.Alias(0, 1, 1));
        assertThat(IntStream.range(0, 4).mapToObj(four::aliases)).allMatch(List::isEmpty);
        assertThat(IntStream.range(0, 5).mapToObj(five::aliases)).allMatch(List::isEmpty);
        double[] y = IntStream.range(0, 16)
                .mapToDouble(r -> 5 + 2 * five.state(r, 4) * five.state(r, 0))
                .toArray();
        assertThat(five.effect(y, 0, 4)).isCloseTo(4, within(1e-12));
        assertThat(five.effect(y, 1, 2)).isCloseTo(0, within(1e-12));
    }

    @Test
    void edges() {
        assertThat(LenthMargins.of(new double[] {0, 0, 0, 5}).margin()).isZero();
        assertThat(LenthMargins.halfNormalScores(1)[0]).isCloseTo(0.6744897501960817, within(1e-12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LenthMargins.of(new double[] {1, 2}))
                .withMessage("effects has 2 values; at least 3 are needed");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TwoLevelDesign.of(new int[][] {{1, 1}, {1, -1}}))
                .withMessage("factor 1 keeps one state; it must take both");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TwoLevelDesign.of(new int[][] {{1, 0}, {-1, 1}}))
                .withMessage("factor 2 of run 1 is 0; it must be -1 or +1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TwoLevelDesign.sevenInEight().effect(new double[8], 0, 1, 3))
                .withMessageContaining("keeps one state");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TwoLevelDesign.full(7))
                .withMessage("7 free factors; there must be from 1 to 6");
    }
}
