package org.lapwright.app.web.compare;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.lapwright.core.trial.session.NoisePrior;

/** Whatever a form field holds, reading it ends in something sensible. */
class CompareFormLawTest {
    @Property(tries = 500)
    void anyTextMayComeForAWord(@ForAll @StringLength(max = 190) String text) {
        LapWord.read(text)
                .ifPresent(word -> assertThat(LapWord.read(word.code())).hasValue(word));
        assertThat(LapWord.read("1|2|6912|clean|x" + text))
                .hasValueSatisfying(word -> assertThat(word.overrule().reason()).startsWith("x"));
    }

    @Property(tries = 300)
    void anyTextMayComeForOptions(@ForAll String plan, @ForAll String margin, @ForAll String sure) {
        Options.Checked checked = new Options(plan, margin, sure, false).check(NoisePrior.DEFAULT);
        assertThat(checked.settings().alpha()).isIn(0.05, 0.10);
        assertThat(checked.settings().levelMargin()).isBetween(0.0, 0.1);
    }
}
