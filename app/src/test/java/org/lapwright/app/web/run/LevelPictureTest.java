package org.lapwright.app.web.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapwright.app.usecase.capture.SoundLevel;

/** The scale is one of factors: full scale at the top, a thousandth of it at the bottom. */
class LevelPictureTest {
    @Test
    void aTenthOfTheFullScaleIsAThirdOfTheWayDown() {
        LevelPicture picture = LevelPicture.of(
                        List.of(List.of(new SoundLevel(0.1, 0.01, 0), new SoundLevel(1, 0.01, 1))))
                .get(0);
        assertThat(picture.loud()).isEqualTo("M318 92L318 38.7L321 38.7L321 12.0L324 12.0L324 92Z");
        assertThat(picture.needed()).isEqualTo("M318 65.3L321 65.3L321 65.3L324 65.3");
        assertThat(picture.passes()).containsExactly("322.5");
        assertThat(picture.summary())
                .isEqualTo("Lane 1: a pass has to reach 1 % of the full scale; the loudest of the last ten seconds was"
                        + " 100 %, with one pass.");
    }

    @Test
    void whatIsBeyondTheScaleStaysInThePicture() {
        LevelPicture picture =
                LevelPicture.of(List.of(List.of(new SoundLevel(0, 2, 0)))).get(0);
        assertThat(picture.loud()).contains("L321 92.0L324 92.0");
        assertThat(picture.needed()).isEqualTo("M321 12.0L324 12.0");
    }

    @Test
    void aLaneThatHasNotBeenHeardYetIsAnEmptyPicture() {
        assertThat(LevelPicture.of(List.of())).isEmpty();
    }
}
