package org.lapwright.app.web.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.LapReading;
import org.lapwright.app.files.Problem;
import org.lapwright.app.files.Question;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.chart.LapChart;
import org.lapwright.app.web.compare.Comparison.BoxReading;
import org.lapwright.app.web.compare.Comparison.DescribedRun;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.trial.JudgedRun;

/**
 * What was read in a box, shown under it before anything is believed.
 *
 * @param runs one line a run: how many laps, pace, spread
 * @param understood how the text was taken
 * @param odd laps that will not count, at most a dozen
 * @param moreOdd how many more there are
 * @param problems sentences about what could not be read, at most a dozen
 * @param moreProblems how many more there are
 * @param ready what is safe in spite of the problems
 * @param questions what only the racer knows
 * @param strip the laps drawn
 */
public record PreviewView(
        List<String> runs,
        String understood,
        List<LapLine> odd,
        int moreOdd,
        List<String> problems,
        int moreProblems,
        String ready,
        List<Question> questions,
        Optional<LapChart> strip) {
    private static final int MOST_LINES = 12;

    /** Copies the lists. */
    public PreviewView {
        runs = List.copyOf(runs);
        odd = List.copyOf(odd);
        problems = List.copyOf(problems);
        questions = List.copyOf(questions);
    }

    static PreviewView of(BoxReading box) {
        List<JudgedRun> judged = box.runs().stream()
                .map(run -> new JudgedRun(run.side(), run.stint()))
                .toList();
        List<LapLine> odd = new ArrayList<>();
        for (int i = 0; i < judged.size(); i++) {
            LapLine.of(i + 1, judged.get(i)).stream()
                    .filter(lap -> !lap.counts() || lap.overruled())
                    .forEach(odd::add);
        }
        LapReading reading = box.reading();
        List<String> problems = reading.problems().stream()
                .limit(MOST_LINES)
                .map(Problem::sentence)
                .toList();
        return new PreviewView(
                runs(box),
                box.box().text().isBlank() ? "" : reading.understoodAs(),
                odd.stream().limit(MOST_LINES).toList(),
                Math.max(0, odd.size() - MOST_LINES),
                problems,
                reading.problemCount() - problems.size(),
                problems.isEmpty() ? "" : ready(reading.laps()),
                reading.questions(),
                judged.isEmpty() ? Optional.empty() : Optional.of(LapChart.strip(judged)));
    }

    /** Whether there is nothing to show. */
    public boolean isEmpty() {
        return runs.isEmpty() && problems.isEmpty() && questions.isEmpty() && understood.isEmpty();
    }

    /** The preview in a line, for those who hear it. */
    public String said() {
        String laps = runs.isEmpty() ? "no laps read" : String.join("; ", runs);
        return problems.isEmpty() ? laps : laps + "; " + (problems.size() + moreProblems) + " not read";
    }

    private static List<String> runs(BoxReading box) {
        List<String> lines = new ArrayList<>();
        boolean many = box.runs().size() > 1
                || box.reading().runs().stream().anyMatch(run -> run.side().isPresent());
        for (int i = 0; i < box.runs().size(); i++) {
            DescribedRun run = box.runs().get(i);
            String start = many ? "Run %d, %s: ".formatted(i + 1, run.side().code()) : "";
            lines.add(start + line(run.stint()));
        }
        return lines;
    }

    private static String line(Stint stint) {
        StringBuilder line = new StringBuilder(Figures.laps(stint.laps().size()));
        stint.paceS().ifPresent(pace -> line.append(" · pace ").append(Figures.seconds(pace)));
        stint.spreadS().ifPresent(spread -> line.append(" · spread ").append(Figures.seconds(spread)));
        return line.toString();
    }

    private static String ready(int laps) {
        return switch (laps) {
            case 0 -> "No lap is ready yet.";
            case 1 -> "The other lap is ready.";
            default -> "The other %s are ready.".formatted(Figures.laps(laps));
        };
    }
}
