package org.lapwright.app.web.run;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.capture.SoundLevel;

/**
 * How loud a lane of a gate on the sound card was over the last ten seconds, on a scale of factors from a thousandth of the full
 * scale up, with the line that a pass has to reach.
 *
 * @param lane its number
 * @param summary what it shows, in words
 * @param loud outline of the level
 * @param needed line that a pass has to reach
 * @param passes where passes were seen
 */
public record LevelPicture(int lane, String summary, String loud, String needed, List<String> passes) {
    /** Width of the drawing. */
    public static final int WIDTH = 324;

    /** Height of the drawing. */
    public static final int HEIGHT = 96;

    private static final double TOP = 12;
    private static final double BOTTOM = 92;
    private static final double STEP = 3;
    private static final double DECADES = 3;
    private static final double PERCENT = 100;

    /** Copies the list. */
    public LevelPicture {
        passes = List.copyOf(passes);
    }

    /**
     * A line across with its word.
     *
     * @param y how far down
     * @param label what it stands for
     */
    public record Tick(String y, String label) {}

    /** The lines across. */
    public static List<Tick> ticks() {
        return List.of(
                new Tick(at(1), "100 %"),
                new Tick(at(0.1), "10 %"),
                new Tick(at(0.01), "1 %"),
                new Tick(at(0.001), ""));
    }

    /** The pictures of all lanes. */
    public static List<LevelPicture> of(List<List<SoundLevel>> lanes) {
        List<LevelPicture> pictures = new ArrayList<>();
        for (List<SoundLevel> levels : lanes) {
            pictures.add(of(pictures.size() + 1, levels));
        }
        return pictures;
    }

    private static LevelPicture of(int lane, List<SoundLevel> levels) {
        StringBuilder loud = new StringBuilder("M");
        StringBuilder needed = new StringBuilder("M");
        List<String> passes = new ArrayList<>();
        // The newest is at the right, so that a picture which is not full yet grows from there.
        double x = WIDTH - levels.size() * STEP;
        loud.append(Figures.fixed(x, 0)).append(' ').append(Figures.fixed(BOTTOM, 0));
        for (SoundLevel level : levels) {
            String from = Figures.fixed(x, 0) + " ";
            String to = Figures.fixed(x + STEP, 0) + " ";
            loud.append('L')
                    .append(from)
                    .append(at(level.loudest()))
                    .append('L')
                    .append(to)
                    .append(at(level.loudest()));
            needed.append(needed.length() > 1 ? "L" : "").append(from).append(at(level.needed()));
            needed.append('L').append(to).append(at(level.needed()));
            if (level.passes() > 0) {
                passes.add(Figures.fixed(x + STEP / 2, 1));
            }
            x += STEP;
        }
        loud.append('L')
                .append(WIDTH)
                .append(' ')
                .append(Figures.fixed(BOTTOM, 0))
                .append('Z');
        return new LevelPicture(lane, summary(lane, levels, passes.size()), loud.toString(), needed.toString(), passes);
    }

    private static String summary(int lane, List<SoundLevel> levels, int passes) {
        double loudest = levels.stream().mapToDouble(SoundLevel::loudest).max().orElse(0);
        double needed = levels.isEmpty() ? 0 : levels.get(levels.size() - 1).needed();
        return "Lane %s: a pass has to reach %s %% of the full scale; the loudest of the last ten seconds was %s %%, with %s."
                .formatted(
                        Figures.count(lane),
                        Figures.significant(needed * PERCENT, 2),
                        Figures.significant(loudest * PERCENT, 2),
                        passes == 1 ? "one pass" : Figures.count(passes) + " passes");
    }

    /** How far down a height in full scale is. */
    private static String at(double height) {
        double decades = Math.log10(Math.max(height, 1e-9)) + DECADES;
        double share = Math.min(1, Math.max(0, decades / DECADES));
        return Figures.fixed(BOTTOM - share * (BOTTOM - TOP), 1);
    }
}
