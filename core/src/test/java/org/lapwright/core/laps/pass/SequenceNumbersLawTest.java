package org.lapwright.core.laps.pass;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeSet;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** The ranges hold what a set of all numbers holds. */
class SequenceNumbersLawTest {
    @Property
    void theSameAsASetOfThem(@ForAll List<@LongRange(min = 0, max = 40) Long> sent) {
        SequenceNumbers numbers = new SequenceNumbers();
        TreeSet<Long> all = new TreeSet<>();
        for (long number : sent) {
            assertThat(numbers.add(number)).isEqualTo(all.add(number));
            assertThat(numbers.greatest()).isEqualTo(all.last());
        }
        assertThat(numbers.ranges()).isEqualTo((int)
                all.stream().filter(each -> !all.contains(each - 1)).count());
    }

    @Example
    void aDayOfPassesTakesNoRoom() {
        SequenceNumbers numbers = new SequenceNumbers();
        for (long number = 0; number < 1_000_000; number++) {
            numbers.add(number);
        }
        assertThat(numbers.ranges()).isEqualTo(1);
    }
}
