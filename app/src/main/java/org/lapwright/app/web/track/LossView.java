package org.lapwright.app.web.track;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.physics.SectionTimes;
import org.lapwright.app.usecase.physics.SectionTimes.SectionTime;
import org.lapwright.app.web.chart.Scale;
import org.lapwright.core.track.Stretch;

/**
 * Where one car loses time against another.
 *
 * @param sentence the whole of it
 * @param here the car in question
 * @param other the car it is held against
 * @param rows section by section
 * @param total the laps
 */
public record LossView(String sentence, String here, String other, List<Row> rows, Row total) {
    private static final double LEVEL_S = 0.0005;

    /** Copies the list. */
    public LossView {
        rows = List.copyOf(rows);
    }

    /**
     * One section.
     *
     * @param number its number along the lap
     * @param name what it is
     * @param hereS time in it
     * @param otherS the other's time in it
     * @param loss signed difference with its unit
     * @param css {@code lost}, {@code gained} or {@code level}
     * @param barX where its bar begins
     * @param barWidth how long its bar is
     */
    public record Row(
            String number,
            String name,
            String hereS,
            String otherS,
            String loss,
            String css,
            String barX,
            String barWidth) {}

    static LossView of(String here, String other, SectionTimes times) {
        double most = times.sections().stream()
                .mapToDouble(section -> Math.abs(section.lossS()))
                .max()
                .orElse(0);
        Scale scale = new Scale(-Math.max(most, LEVEL_S), Math.max(most, LEVEL_S), 0, 100);
        List<Row> rows = new ArrayList<>();
        double hereS = 0;
        double otherS = 0;
        for (SectionTime section : times.sections()) {
            rows.add(row(
                    String.valueOf(rows.size() + 1),
                    name(section.stretch()),
                    section.hereS(),
                    section.otherS(),
                    scale));
            hereS += section.hereS();
            otherS += section.otherS();
        }
        return new LossView(
                sentence(here, other, times, hereS - otherS), here, other, rows, row("", "Lap", hereS, otherS, scale));
    }

    private static Row row(String number, String name, double hereS, double otherS, Scale scale) {
        double loss = hereS - otherS;
        double from = scale.clamped(Math.min(0, loss));
        return new Row(
                number,
                name,
                Figures.fixed(hereS, 3),
                Figures.fixed(otherS, 3),
                Figures.signed(loss, 3) + " s",
                loss >= LEVEL_S ? "lost" : loss <= -LEVEL_S ? "gained" : "level",
                Scale.percent(from),
                Scale.percent(scale.clamped(Math.max(0, loss)) - from));
    }

    private static String sentence(String here, String other, SectionTimes times, double lossS) {
        if (Math.abs(lossS) < LEVEL_S) {
            return "%s and %s come out level over the lap.".formatted(here, other);
        }
        int worst = 0;
        for (int i = 1; i < times.sections().size(); i++) {
            boolean more = Math.signum(lossS) * times.sections().get(i).lossS()
                    > Math.signum(lossS) * times.sections().get(worst).lossS();
            worst = more ? i : worst;
        }
        return "%s is %s s a lap %s than %s; most of it in section %d, the %s (%s s)."
                .formatted(
                        here,
                        Figures.fixed(Math.abs(lossS), 3),
                        lossS > 0 ? "slower" : "faster",
                        other,
                        worst + 1,
                        name(times.sections().get(worst).stretch()),
                        Figures.signed(times.sections().get(worst).lossS(), 3));
    }

    /** A stretch in words: {@code left turn, 180° at 300 mm}. */
    static String name(Stretch stretch) {
        if (stretch.kind() == Stretch.Kind.STRAIGHT) {
            return "straight, %s m".formatted(Figures.fixed(stretch.lengthM(), 2));
        }
        double turned = Math.abs(stretch.turnedRad());
        return "%s turn, %s° at %s mm"
                .formatted(
                        stretch.kind().name().toLowerCase(Locale.ROOT),
                        Figures.fixed(Math.toDegrees(turned), 0),
                        Figures.fixed(1000 * stretch.lengthM() / turned, 0));
    }
}
