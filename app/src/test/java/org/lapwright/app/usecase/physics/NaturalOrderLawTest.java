package org.lapwright.app.usecase.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;

class NaturalOrderLawTest {
    @Example
    void numbersGoBySizeAndLettersWhateverTheirCase() {
        List<String> names = new ArrayList<>(List.of(
                "Plover 129", "plover 29", "Ruff", "Plover", "Plover 3 b", "Plover 3 a", "Plover 003 a", "dunlin 2"));
        names.sort(NaturalOrder.OF_NAMES);
        assertThat(names)
                .containsExactly(
                        "dunlin 2",
                        "Plover",
                        "Plover 003 a",
                        "Plover 3 a",
                        "Plover 3 b",
                        "plover 29",
                        "Plover 129",
                        "Ruff");
    }

    /** Against arithmetic that knows no digits. */
    @Property(tries = 300)
    void ofTwoNumbersTheSmallerComesFirst(
            @ForAll @BigRange(min = "0", max = "99999999999999999999999999") BigInteger one,
            @ForAll @BigRange(min = "0", max = "99999999999999999999999999") BigInteger other) {
        assertThat(Integer.signum(NaturalOrder.OF_NAMES.compare("Plover " + one, "Plover " + other)))
                .isEqualTo(one.compareTo(other));
    }

    /** A comparator that breaks its contract makes a sort throw, or lose the order. */
    @Property(tries = 500)
    void anyThreeNamesHaveOneOrder(
            @ForAll("names") String one, @ForAll("names") String other, @ForAll("names") String third) {
        NaturalOrder order = NaturalOrder.OF_NAMES;
        assertThat(order.compare(one, other) == 0).isEqualTo(one.equals(other));
        assertThat(Integer.signum(order.compare(one, other))).isEqualTo(-Integer.signum(order.compare(other, one)));
        List<String> sorted = new ArrayList<>(List.of(one, other, third));
        Collections.sort(sorted, order);
        assertThat(order.compare(sorted.get(0), sorted.get(1))).isNotPositive();
        assertThat(order.compare(sorted.get(1), sorted.get(2))).isNotPositive();
        assertThat(order.compare(sorted.get(0), sorted.get(2))).isNotPositive();
    }

    @Provide
    Arbitrary<String> names() {
        return Arbitraries.strings().withChars("aAb 019!~é²").ofMaxLength(6);
    }
}
