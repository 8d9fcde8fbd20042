package org.lapwright.app.web.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.LapReading;
import org.lapwright.app.files.LapText;
import org.lapwright.app.files.ReadRun;
import org.lapwright.app.usecase.DescribeLaps;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.compare.Comparison.BoxReading;
import org.lapwright.app.web.compare.Comparison.DescribedRun;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;

/** Reads the boxes of a form into one session. */
public final class CompareReader {
    private final DescribeLaps describeLaps;

    /** Describes each run by {@code describeLaps}. */
    public CompareReader(DescribeLaps describeLaps) {
        this.describeLaps = describeLaps;
    }

    /** What the boxes amount to. */
    public Comparison read(CompareForm form) {
        List<LapReading> readings = form.boxes().stream()
                .map(box -> LapText.read(box.text(), box.answers()))
                .toList();
        List<DrivenRun> driven = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            driven.addAll(runs(form.boxes().get(i), readings.get(i)));
        }
        List<String> notices = new ArrayList<>();
        List<LapWord> words = stillAbout(driven, form.words(), notices);
        Session session = new Session(withWords(driven, words));
        boolean tooMuch =
                session.laps() > Comparison.MOST_LAPS || session.runs().size() > RunPlan.MOST_RUNS;
        if (tooMuch) {
            notices.add(
                    "That is %s in %d runs. One comparison takes up to %s in %d runs; leave out what belongs to another."
                            .formatted(
                                    Figures.laps(session.laps()),
                                    session.runs().size(),
                                    Figures.laps(Comparison.MOST_LAPS),
                                    RunPlan.MOST_RUNS));
        }
        return new Comparison(described(form, readings, session, tooMuch), session, words, notices, tooMuch);
    }

    private static List<DrivenRun> runs(Box box, LapReading reading) {
        List<DrivenRun> runs = new ArrayList<>();
        for (ReadRun run : reading.runs()) {
            if (!run.laps().isEmpty()) {
                runs.add(new DrivenRun(run.side().orElse(box.side()), run.run()));
            }
        }
        return runs;
    }

    private static List<LapWord> stillAbout(List<DrivenRun> driven, List<LapWord> words, List<String> notices) {
        List<LapWord> kept = new ArrayList<>();
        for (LapWord word : words) {
            boolean there = word.run() >= 1
                    && word.run() <= driven.size()
                    && driven.get(word.run() - 1).run().laps().stream()
                            .anyMatch(lap -> lap.number() == word.lap() && word.isAbout(lap.seconds()));
            if (there) {
                kept.add(word);
            } else {
                notices.add("Your word on run %d, lap %d (%s) was dropped: that lap is not there any more."
                        .formatted(word.run(), word.lap(), Figures.seconds(word.millis() / 1000.0)));
            }
        }
        return kept;
    }

    private static List<DrivenRun> withWords(List<DrivenRun> driven, List<LapWord> words) {
        List<DrivenRun> spoken = new ArrayList<>();
        for (int i = 0; i < driven.size(); i++) {
            int number = i + 1;
            TimedRun run = driven.get(i).run();
            List<Overrule> all = new ArrayList<>(run.overrules());
            for (LapWord word : words) {
                if (word.run() == number) {
                    all.removeIf(earlier -> earlier.lap() == word.lap());
                    all.add(word.overrule());
                }
            }
            spoken.add(new DrivenRun(driven.get(i).side(), new TimedRun(run.laps(), all)));
        }
        return spoken;
    }

    private List<BoxReading> described(CompareForm form, List<LapReading> readings, Session session, boolean tooMuch) {
        List<BoxReading> described = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < readings.size(); i++) {
            int count = runs(form.boxes().get(i), readings.get(i)).size();
            List<DescribedRun> runs = new ArrayList<>();
            for (DrivenRun run : session.runs().subList(next, next + count)) {
                if (!tooMuch) {
                    runs.add(new DescribedRun(run.side(), describeLaps.describe(run.run())));
                }
            }
            next += count;
            described.add(new BoxReading(form.boxes().get(i), readings.get(i), runs));
        }
        return described;
    }

    /** The lap of a session with this number, if it is there. */
    public static Optional<TimedLap> findLap(Session session, int run, int lap) {
        return session.runs().stream()
                .skip(Math.max(0, run - 1L))
                .limit(run >= 1 ? 1 : 0)
                .flatMap(driven -> driven.run().laps().stream())
                .filter(timed -> timed.number() == lap)
                .findFirst();
    }
}
