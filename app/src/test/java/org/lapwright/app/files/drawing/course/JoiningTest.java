package org.lapwright.app.files.drawing.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

class JoiningTest {
    private static Loops find(String content, double join) {
        return Loops.find(Drawn.read(Drawn.svg(content)), 1, join, Loops.FLAT_MM);
    }

    @Test
    void endsThatAreNearAreJoinedAndTold() {
        String content = "<path d='M0 0H100V100'/><path d='M0 .5V100.2H99.4'/>";
        Loops loops = find(content, 1);
        assertThat(loops.loops()).hasSize(1);
        assertThat(loops.loops().get(0).lengthMm()).isCloseTo(400, within(1.5));
        assertThat(loops.loops().get(0).pieces()).isEqualTo(2);
        assertThat(loops.remarks()).containsExactly("Gaps closed: 2, the widest 0.63 mm at (100, -100) mm.");
        Loops open = find(content, 0.4);
        assertThat(open.loops()).isEmpty();
        assertThat(open.remarks())
                .hasSize(2)
                .anySatisfy(
                        remark -> assertThat(remark)
                                .isEqualTo(
                                        "A line 200 mm long stays open: it goes from (0, 0) mm to (100, -100) mm, 141.4 mm apart."));
    }

    @Test
    void aLineThatEndsWhereItBeganIsClosed() {
        assertThat(find("<polyline points='0,0 50,0 50,50 0,0.3'/>", 1).loops()).hasSize(1);
        assertThat(find("<polyline points='0,0 50,0 50,50 0,3'/>", 1).loops()).isEmpty();
        // As long as three gaps only: a dot, not a loop.
        assertThat(find("<polyline points='0,0 1,0 0.5,0.5'/>", 1).loops()).isEmpty();
    }

    @Test
    void linesDrawnTwiceAreOne() {
        Loops loops = find("<path d='M0 0H100V100'/><path d='M100 100V0H0'/><path d='M0 0V100H100'/>", 1);
        assertThat(loops.loops()).hasSize(1);
        assertThat(loops.loops().get(0).lengthMm()).isCloseTo(400, within(1e-6));
        assertThat(loops.remarks()).containsExactly("1 pieces are drawn twice; one of each was taken.");
    }

    @Test
    void aForkIsTold() {
        assertThat(find("<path d='M0 0H100V100'/><path d='M0 0V100H100'/><path d='M100 100L300 300'/>", 1)
                        .remarks())
                .anySatisfy(remark -> assertThat(remark).contains("More than two lines meet at (100, -100)"));
    }

    @Test
    void severalLoopsAreSortedAndNumbered() {
        Loops loops = find("<circle r='50'/><circle cx='500' r='200'/><rect width='10' height='20'/>", 1);
        assertThat(loops.loops().stream().map(Loop::number)).containsExactly(2, 1, 3);
        assertThat(loops.numbered(3).orElseThrow().lengthMm()).isCloseTo(60, within(1e-9));
        assertThat(loops.numbered(4)).isEmpty();
    }

    @Test
    void tenThousandEndsOnOneSpotAreRefused() {
        StringBuilder star = new StringBuilder();
        for (int i = 0; i < 10_000; i++) {
            star.append("M0 0L").append(1000 + i).append(' ').append(2 * i);
        }
        Assertions.assertThrows(
                org.lapwright.app.files.drawing.Trouble.class, () -> find("<path d='" + star + "'/>", 1));
    }

    /** A loop cut into pieces, turned about and shuffled, is the same loop. */
    @Property(tries = 200)
    void piecesInAnyOrderMakeTheLoop(@ForAll long seed) {
        Random random = new Random(seed);
        int n = 3 + random.nextInt(60);
        StringBuilder content = new StringBuilder();
        List<Integer> order = new java.util.ArrayList<>();
        double[][] corners = new double[n][];
        double length = 0;
        for (int i = 0; i < n; i++) {
            double radius = 500 + 300 * random.nextDouble();
            corners[i] = new double[] {radius * Math.cos(2 * Math.PI * i / n), radius * Math.sin(2 * Math.PI * i / n)};
            order.add(i);
        }
        java.util.Collections.shuffle(order, random);
        for (int i : order) {
            double[] a = corners[i];
            double[] b = corners[(i + 1) % n];
            length += Math.hypot(a[0] - b[0], a[1] - b[1]);
            boolean turned = random.nextBoolean();
            double[] from = turned ? b : a;
            double[] to = turned ? a : b;
            content.append("<line x1='%s' y1='%s' x2='%s' y2='%s'/>".formatted(from[0], from[1], to[0], to[1]));
        }
        Loops loops = find(content.toString(), 0.5);
        assertThat(loops.loops()).hasSize(1);
        assertThat(loops.loops().get(0).pieces()).isEqualTo(n);
        assertThat(loops.loops().get(0).lengthMm()).isCloseTo(length, within(1e-6));
        assertThat(loops.remarks()).isEmpty();
    }
}
