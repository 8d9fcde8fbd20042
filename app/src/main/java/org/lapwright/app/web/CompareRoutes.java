package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.web.compare.CompareForm;
import org.lapwright.app.web.compare.CompareReader;
import org.lapwright.app.web.compare.Comparison;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.compare.Fixed;
import org.lapwright.app.web.compare.LapWord;
import org.lapwright.app.web.compare.Options;
import org.lapwright.app.web.compare.WordFields;
import org.lapwright.app.web.view.ComparePage;
import org.lapwright.app.web.view.ComparePage.KeepView;
import org.lapwright.app.web.view.ComparePage.Outcome;
import org.lapwright.app.web.view.ComparePage.WordEditor;
import org.lapwright.app.web.view.Shell;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.app.web.view.VerdictView;
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
    private static final int MOST_OFFERED = 200;

    private final UseCases useCases;
    private final Pages pages;
    private final CompareReader reader;

    CompareRoutes(UseCases useCases, Pages pages) {
        this.useCases = useCases;
        this.pages = pages;
        this.reader = new CompareReader(useCases.describeLaps());
    }

    void open(Context context) {
        useCases.knownDriver().prepare();
        boolean example = context.queryParamMap().containsKey("example");
        CompareForm form = example
                ? CompareForm.filled(
                        Assets.text("/web/example-before.txt"), Assets.text("/web/example-after.txt"), Forms.freshKey())
                : CompareForm.empty(Forms.freshKey()).about(asked(context, "car"), asked(context, "change"));
        Comparison comparison = reader.read(form);
        show(
                context,
                new ComparePage(shell(), form, ComparePage.boxes(comparison), List.of(), Optional.empty(), 0, example));
    }

    private static String asked(Context context, String name) {
        return Optional.ofNullable(context.queryParam(name)).orElse("");
    }

    void press(Context context) {
        if (!context.isFormUrlencoded()) {
            throw Problem.wrongType("application/x-www-form-urlencoded");
        }
        Fields fields = new Fields(context.formParamMap());
        CompareForm form = CompareForm.from(fields, Forms.freshKey());
        String[] wish = fields.text("do", "look").split("-", 2);
        String about = wish.length > 1 ? wish[1] : "";
        switch (wish[0]) {
            case "check" -> showBoxes(context, form, 0);
            case "add" -> showBoxes(context, form.withAnotherRun(), form.boxes().size() + 1);
            case "drop" -> showBoxes(context, form.withoutRun(number(about)), Math.max(1, number(about) - 1));
            case "reask" -> showBoxes(context, form.withoutAnswers(number(about)), 0);
            case "word" -> look(context, form, editorFor(about), "");
            case "unsay" -> look(context, form.withWords(without(form.words(), number(about))), WordEditor.BLANK, "");
            case "say" -> say(context, form, WordFields.from(fields));
            case "keep" -> keep(context, form);
            default -> look(context, form, WordEditor.BLANK, "");
        }
    }

    private void showBoxes(Context context, CompareForm form, int focus) {
        Comparison comparison = reader.read(form);
        show(
                context,
                new ComparePage(
                        shell(),
                        form.withWords(comparison.words()),
                        ComparePage.boxes(comparison),
                        comparison.notices(),
                        Optional.empty(),
                        focus,
                        false));
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
            show(
                    context,
                    new ComparePage(
                            shell(),
                            form.withWords(comparison.words()),
                            ComparePage.boxes(comparison),
                            notices,
                            Optional.empty(),
                            0,
                            false));
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
        show(
                context,
                new ComparePage(
                        shell(), judged, ComparePage.boxes(comparison), notices, Optional.of(outcome), 0, false));
    }

    private Options.Checked settings(CompareForm form) {
        return form.fixed()
                .map(fixed -> new Options.Checked(fixed.settings(), List.of()))
                .orElseGet(() -> form.options().check(useCases.knownDriver().prior()));
    }

    private static List<String> obstacles(Comparison comparison) {
        if (comparison.hasQuestions()) {
            return List.of("There is a question about what was pasted. Answer it under its box, then look again.");
        }
        return comparison.session().laps() == 0
                ? List.of("There are no laps yet. Paste some into both boxes, then press “Did it help?”.")
                : List.of();
    }

    private void say(Context context, CompareForm form, WordFields typed) {
        try {
            LapWord word = typed.toWord(reader.read(form).session());
            List<LapWord> words = new ArrayList<>(form.words());
            words.removeIf(earlier -> earlier.run() == word.run() && earlier.lap() == word.lap());
            words.add(word);
            look(context, form.withWords(words), WordEditor.BLANK, "");
        } catch (IllegalArgumentException wrong) {
            look(context, form, new WordEditor(typed, asSentence(wrong), true), "");
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

    private void show(Context context, ComparePage page) {
        pages.show(context, "compare.jte", page);
    }

    private Shell shell() {
        return pages.shell("Did the change help?", Tab.COMPARE);
    }

    private static Side suggested(Verdict verdict) {
        return verdict.decision() == Decision.SLOWER ? Side.BEFORE : Side.AFTER;
    }

    private List<String> knownCars() {
        try {
            return useCases.showKept().cars().stream().limit(MOST_OFFERED).toList();
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

    private static WordEditor editorFor(String lap) {
        String[] place = lap.split("\\.", 2);
        return new WordEditor(WordFields.about(place[0], place.length > 1 ? place[1] : ""), "", true);
    }

    private static List<LapWord> without(List<LapWord> words, int number) {
        List<LapWord> others = new ArrayList<>(words);
        if (number >= 1 && number <= others.size()) {
            others.remove(number - 1);
        }
        return others;
    }

    private static int number(String text) {
        return text.matches("\\d{1,4}") ? Integer.parseInt(text) : 0;
    }

    private static String asSentence(IllegalArgumentException wrong) {
        String message = String.valueOf(wrong.getMessage());
        return Character.toUpperCase(message.charAt(0)) + message.substring(1) + ".";
    }
}
