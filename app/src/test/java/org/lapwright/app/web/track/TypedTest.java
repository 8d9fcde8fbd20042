package org.lapwright.app.web.track;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.Power;

class TypedTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"12;12", "12.5;12.5", "12,5;12.5", " 9 ;9", ".5;0.5", ",5;0.5", "12,000;12", "+7;7"})
    void pointAndCommaAreBothDecimalMarks(String text, double value) {
        Typed typed = new Typed();
        assertThat(typed.number(text, Power.SUPPLY, "Supply")).isEqualTo(value);
        assertThat(typed.problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "'';Length is empty; give a number from 1 to 50000 mm.",
                "1.2.3;Length: '1.2.3' is not a number",
                "1e3;Length: '1e3' is not a number",
                "NaN;Length: 'NaN' is not a number",
                "0;Length is 0; it must be from 1 to 50000 mm.",
                "-5;Length is -5; it must be",
                "60000;Length is 60000; it must be",
            })
    void whatIsNoLengthIsSaidToBeNone(String text, String sentence) {
        Typed typed = new Typed();
        assertThat(typed.number(text, Piece.STRAIGHT, "Length")).isNaN();
        assertThat(typed.problems()).singleElement().asString().contains(sentence.split(";")[0]);
    }

    @Test
    void oneMarkBeforeThreeDigitsIsAsked() {
        Typed typed = new Typed();
        assertThat(typed.number("1,800", Piece.STRAIGHT, "Length")).isNaN();
        assertThat(typed.problems())
                .containsExactly(
                        "Length: '1,800' may be 1800 or 1.8; write it without the mark, or with fewer decimals.");
    }

    @Test
    void anOptionalNumberMayBeLeftOut() {
        Typed typed = new Typed();
        assertThat(typed.number(" ", Piece.RISE, "Rise", 0)).isZero();
        assertThat(typed.number("\u22125", Piece.RISE, "Rise", 0)).isEqualTo(-5);
        assertThat(typed.problems()).isEmpty();
    }

    @Property
    void anyTextIsANumberInRangeOrAProblem(@ForAll String text) {
        Typed typed = new Typed();
        double value = typed.number(text, Piece.RADIUS, "Radius");
        assertThat(Double.isNaN(value)).isEqualTo(typed.problems().size() == 1);
        assertThat(Double.isNaN(value) || (value >= 30 && value <= 20_000)).isTrue();
    }
}
