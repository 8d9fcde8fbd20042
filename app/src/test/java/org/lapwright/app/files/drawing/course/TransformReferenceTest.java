package org.lapwright.app.files.drawing.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Transforms of SVG 1.1, §7.6, against the matrices that the same section writes out, multiplied by the JDK. */
class TransformReferenceTest {
    private static AffineTransform matrix(double... abcdef) {
        return new AffineTransform(abcdef);
    }

    private static void mapsAs(String transform, AffineTransform expected) {
        for (double[] at : new double[][] {{0, 0}, {100, 0}, {0, 100}, {-30, 70}}) {
            String content = "<g transform='%s'><path d='M%s %sl1 1'/></g>".formatted(transform, at[0], at[1]);
            Spot first = Drawn.only(Drawn.svg(content)).first();
            Point2D there = expected.transform(new Point2D.Double(at[0], at[1]), null);
            assertThat(first.x()).as(transform).isCloseTo(there.getX(), within(1e-9));
            assertThat(-first.y()).as(transform).isCloseTo(there.getY(), within(1e-9));
        }
    }

    @Test
    void eachOfTheSix() {
        double c = Math.cos(Math.toRadians(30));
        double s = Math.sin(Math.toRadians(30));
        mapsAs("matrix(1 2 3 4 5 6)", matrix(1, 2, 3, 4, 5, 6));
        mapsAs("translate(7)", matrix(1, 0, 0, 1, 7, 0));
        mapsAs("translate(7,-8)", matrix(1, 0, 0, 1, 7, -8));
        mapsAs("scale(3)", matrix(3, 0, 0, 3, 0, 0));
        mapsAs("scale(3 -2)", matrix(3, 0, 0, -2, 0, 0));
        mapsAs(" rotate( 30 ) ", matrix(c, s, -s, c, 0, 0));
        mapsAs("skewX(30)", matrix(1, 0, Math.tan(Math.PI / 6), 1, 0, 0));
        mapsAs("skewY(30)", matrix(1, Math.tan(Math.PI / 6), 0, 1, 0, 0));
        // About a point: there, turn, and back again.
        AffineTransform about = matrix(1, 0, 0, 1, 50, 60);
        about.concatenate(matrix(c, s, -s, c, 0, 0));
        about.concatenate(matrix(1, 0, 0, 1, -50, -60));
        mapsAs("rotate(30, 50 60)", about);
    }

    /** The example of §7.6: groups inside groups are one after the other, as a list is. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<g transform='translate(50,90)'><g transform='rotate(-45)'><path transform='translate(130,160)' d='M1 2l1 1'/></g></g>",
                "<path transform='translate(50,90),rotate(-45) translate(130,160)' d='M1 2l1 1'/>",
            })
    void nestedGroups(String content) {
        AffineTransform expected = matrix(1, 0, 0, 1, 50, 90);
        double h = Math.sqrt(0.5);
        expected.concatenate(matrix(h, -h, h, h, 0, 0));
        expected.concatenate(matrix(1, 0, 0, 1, 130, 160));
        Point2D there = expected.transform(new Point2D.Double(1, 2), null);
        Spot first = Drawn.only(Drawn.svg(content)).first();
        assertThat(first.x()).isCloseTo(there.getX(), within(1e-9));
        assertThat(-first.y()).isCloseTo(there.getY(), within(1e-9));
    }
}
