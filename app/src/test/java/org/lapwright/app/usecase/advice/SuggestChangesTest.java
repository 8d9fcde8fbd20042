package org.lapwright.app.usecase.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.advice.SuggestChanges.Advice;
import org.lapwright.app.usecase.advice.SuggestChanges.Question;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.numbers.SetUpNumbers;
import org.lapwright.core.track.Track;

class SuggestChangesTest {
    private static double rearLoadG(Build car) {
        return SetUpNumbers.onBench(car.setUp()).standing().rearLoadG();
    }

    /** Whatever puts weight on the driven tyres is told with what the model leaves out; the rest is not spoiled by it. */
    @Test
    void whereTheModelFlattersIsSaid() {
        Build car = CarFile.read(Reference.text("plain.car.json"))
                .accepted()
                .orElseThrow()
                .build();
        Track track = TrackFile.read(Reference.text("loop.track.json"))
                .accepted()
                .orElseThrow()
                .track();
        List<Advice> advice =
                new SuggestChanges(12).answer(Question.of(car, track)).worthwhile();
        assertThat(advice).isNotEmpty().allSatisfy(one -> {
            boolean heavier = rearLoadG(one.suggestion().after()) > 1.02 * rearLoadG(car);
            assertThat(one.caution().orElse("").contains("real tyres give a little less"))
                    .as(one.words())
                    .isEqualTo(heavier);
        });
        assertThat(advice).anyMatch(one -> one.caution().orElse("").contains("real tyres"));
    }
}
