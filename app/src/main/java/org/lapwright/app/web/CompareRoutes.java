package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.web.compare.Box;
import org.lapwright.app.web.compare.CompareForm;
import org.lapwright.app.web.compare.CompareReader;
import org.lapwright.app.web.compare.Comparison;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.compare.Fixed;
import org.lapwright.app.web.compare.LapWord;
import org.lapwright.app.web.compare.Options;
import org.lapwright.app.web.view.ComparePage;
import org.lapwright.app.web.view.ComparePage.KeepView;
import org.lapwright.app.web.view.ComparePage.Outcome;
import org.lapwright.app.web.view.ComparePage.WordEditor;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.app.web.view.VerdictView;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.trial.Decision;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/**
 * The front page: paste, look, keep. Whatever button is pressed, the whole form comes and the whole page goes back;
 * with a script the browser takes only the part it needs from it.
 */
final class CompareRoutes {
    private static final String TEMPLATE = "compare.jte";
    private static final SecureRandom RANDOM = new SecureRandom();

    private final UseCases useCases;
    private final Pages pages;
    private final CompareReader reader;

    CompareRoutes(UseCases useCases, Pages pages) {
        this.useCases = useCases;
        this.pages = pages;
        this.reader = new CompareReader(useCases.reader(), useCases.describeLaps());
    }

    void open(Context context) {
        boolean example = context.queryParamMap().containsKey("example");
        CompareForm form = CompareForm.empty(freshKey());
        if (example) {
            form = new CompareForm(
                    List.of(
                            new Box(Side.BEFORE, Assets.text("/web/example-before.txt"), Map.of()),
                            new Box(Side.AFTER, Assets.text("/web/example-after.txt"), Map.of())),
                    form.options(),
                    form.fixed(),
                    form.words(),
                    form.keep(),
                    form.key(),
                    form.judged());
        }
        showBoxes(context, form, example);
    }

    void press(Context context) {
        if (!context.isFormUrlencoded()) {
            throw Problem.wrongType("application/x-www-form-urlencoded");
        }
        Fields fields = new Fields(context.formParamMap());
        CompareForm form = CompareForm.from(fields, freshKey());
        String[] wish = fields.text("do", "look").split("-", 3);
        switch (wish[0]) {
            case "check" -> showBoxes(context, form, false);
            case "add" -> showBoxes(context, form.withAnotherRun(), false);
            case "drop" -> showBoxes(context, form.withoutRun(number(wish)), false);
            case "reask" -> showBoxes(context, form.withoutAnswers(number(wish)), false);
            case "word" -> look(context, form, editorFor(wish[wish.length - 1]), "");
            case "unsay" -> look(context, form.withWords(without(form.words(), number(wish))), WordEditor.BLANK, "");
            case "say" -> say(context, form, fields);
            case "keep" -> keep(context, form);
            default -> look(context, form, WordEditor.BLANK, "");
        }
    }

    private void showBoxes(Context context, CompareForm form, boolean example) {
        Comparison comparison = reader.read(form);
        show(context, form.withWords(comparison.words()), comparison, comparison.notices(), Optional.empty(), example);
    }

    private void look(Context context, CompareForm form, WordEditor editor, String keepProblem) {
        look(context, form, reader.read(form), editor, keepProblem);
    }

    private void look(Context context, CompareForm form, Comparison comparison, WordEditor editor, String keepProblem) {
        List<String> notices = new ArrayList<>(comparison.notices());
        Options.Checked options = settings(form);
        notices.addAll(options.problems());
        notices.addAll(obstacles(comparison));
        if (!options.problems().isEmpty() || !obstacles(comparison).isEmpty() || comparison.tooMuch()) {
            show(context, form.withWords(comparison.words()), comparison, notices, Optional.empty(), false);
            return;
        }
        Session session = comparison.session();
        Optional<Fixed> fixed = form.fixed().or(() -> Fixed.atFirstLook(session, options.settings()));
        TrialSettings settings = fixed.map(Fixed::settings).orElse(options.settings());
        Verdict verdict = useCases.judgeChange().judge(session, settings);
        CompareForm judged = form.withWords(comparison.words())
                .withFixed(verdict.difference().isPresent() ? fixed : form.fixed())
                .withJudged(Fingerprint.of(session, settings));
        Outcome outcome = new Outcome(
                VerdictView.of(verdict, settings),
                editor,
                new KeepView(form.keep(), suggested(verdict), knownCars(), knownTracks(), keepProblem));
        show(context, judged, comparison, notices, Optional.of(outcome), false);
    }

    private static Options.Checked settings(CompareForm form) {
        return form.fixed()
                .map(fixed -> new Options.Checked(fixed.settings(), List.of()))
                .orElseGet(() -> form.options().check());
    }

    private static List<String> obstacles(Comparison comparison) {
        if (comparison.hasQuestions()) {
            return List.of("There is a question about what was pasted. Answer it under its box, then look again.");
        }
        return comparison.session().laps() == 0
                ? List.of("There are no laps yet. Paste some into both boxes, then press “Did it help?”.")
                : List.of();
    }

    private void say(Context context, CompareForm form, Fields fields) {
        WordEditor typed = new WordEditor(
                fields.text("say-run"),
                fields.text("say-lap"),
                fields.text("say-kind"),
                fields.text("say-reason"),
                "",
                true);
        Comparison comparison = reader.read(form);
        try {
            LapWord word = word(comparison.session(), typed);
            List<LapWord> words = new ArrayList<>(form.words());
            words.removeIf(earlier -> earlier.run() == word.run() && earlier.lap() == word.lap());
            words.add(word);
            look(context, form.withWords(words), WordEditor.BLANK, "");
        } catch (IllegalArgumentException wrong) {
            look(context, form, comparison, typed.withProblem(asSentence(wrong)), "");
        }
    }

    private static LapWord word(Session session, WordEditor typed) {
        int run = wholeNumber(typed.run(), "run");
        int lap = wholeNumber(typed.lap(), "lap");
        TimedLap timed = CompareReader.findLap(session, run, lap)
                .orElseThrow(() -> new IllegalArgumentException(
                        "there is no lap %d in run %d; the laps are listed under “Show the working”"
                                .formatted(lap, run)));
        LapKind kind =
                LapKind.find(typed.kind()).orElseThrow(() -> new IllegalArgumentException("choose what the lap was"));
        return LapWord.on(run, timed.seconds(), new Overrule(lap, kind, typed.reason()));
    }

    private static int wholeNumber(String text, String name) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException notANumber) {
            throw new IllegalArgumentException(
                    "'%s' is not a number of a %s; it has to be a whole number from 1 on".formatted(text, name),
                    notANumber);
        }
    }

    private void keep(Context context, CompareForm form) {
        Comparison comparison = reader.read(form);
        Options.Checked options = settings(form);
        boolean sameAsJudged = form.fixed().isPresent()
                && form.judged().equals(Fingerprint.of(comparison.session(), options.settings()));
        if (!sameAsJudged) {
            context.status(context.header("HX-Request") == null ? 422 : 200);
            look(
                    context,
                    form,
                    comparison,
                    WordEditor.BLANK,
                    form.judged().isEmpty() || form.fixed().isEmpty()
                            ? "Nothing is saved yet: there is no verdict to keep."
                            : "Nothing is saved yet: the laps are not those of the verdict you saw. Above is the verdict on what "
                                    + "stands in the boxes now. Press “Keep it” again to keep that.");
            return;
        }
        try {
            Verdict verdict = useCases.judgeChange().judge(comparison.session(), options.settings());
            KeptComparison kept =
                    form.keep().toComparison(comparison.session(), options.settings(), suggested(verdict));
            // Bound to the content: a second press saves once, a corrected form saves anew.
            String key = form.key() + "." + Fingerprint.of(kept).substring(0, 32);
            SavedComparison saved = useCases.keepComparison().keep(kept, key);
            context.redirect("/kept/" + saved.id() + "?saved", HttpStatus.SEE_OTHER);
        } catch (IllegalArgumentException wrong) {
            context.status(422);
            look(context, form, comparison, WordEditor.BLANK, "Not saved yet: " + wrong.getMessage() + ".");
        } catch (StoreException failed) {
            context.status(503);
            look(context, form, comparison, WordEditor.BLANK, "Not saved. " + failed.getMessage());
        }
    }

    private void show(
            Context context,
            CompareForm form,
            Comparison comparison,
            List<String> notices,
            Optional<Outcome> outcome,
            boolean example) {
        pages.show(
                context,
                TEMPLATE,
                new ComparePage(
                        pages.shell("Did the change help?", Tab.COMPARE),
                        form,
                        ComparePage.boxes(comparison),
                        notices,
                        outcome,
                        example));
    }

    private static Side suggested(Verdict verdict) {
        return verdict.decision() == Decision.SLOWER ? Side.BEFORE : Side.AFTER;
    }

    private List<String> knownCars() {
        try {
            return useCases.showKept().all().stream()
                    .filter(saved -> !saved.kept().example())
                    .map(saved -> saved.kept().car())
                    .distinct()
                    .limit(200)
                    .toList();
        } catch (StoreException unreadable) {
            return List.of();
        }
    }

    private List<String> knownTracks() {
        try {
            return useCases.showLadder().tracks();
        } catch (StoreException unreadable) {
            return List.of();
        }
    }

    private static WordEditor editorFor(String code) {
        String[] place = code.split("\\.", 2);
        return new WordEditor(place[0], place.length > 1 ? place[1] : "", LapKind.CLEAN.code(), "", "", true);
    }

    private static List<LapWord> without(List<LapWord> words, int number) {
        List<LapWord> others = new ArrayList<>(words);
        if (number >= 1 && number <= others.size()) {
            others.remove(number - 1);
        }
        return others;
    }

    private static int number(String[] wish) {
        String last = wish[wish.length - 1];
        return last.matches("\\d{1,4}") ? Integer.parseInt(last) : 0;
    }

    private static String asSentence(IllegalArgumentException wrong) {
        String message = String.valueOf(wrong.getMessage());
        return Character.toUpperCase(message.charAt(0)) + message.substring(1) + ".";
    }

    private static String freshKey() {
        byte[] key = new byte[16];
        RANDOM.nextBytes(key);
        return HexFormat.of().formatHex(key);
    }
}
