package org.lapwright.app.web;

import io.javalin.http.Context;
import java.util.Optional;
import org.lapwright.app.usecase.Glossary;
import org.lapwright.app.usecase.Glossary.Word;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.app.web.view.WordPage;
import org.lapwright.app.web.view.WordsPage;

/** The glossary. */
final class WordRoutes {
    private final Glossary glossary;
    private final Pages pages;

    WordRoutes(Glossary glossary, Pages pages) {
        this.glossary = glossary;
        this.pages = pages;
    }

    void all(Context context) {
        pages.show(context, "words.jte", new WordsPage(pages.shell("Words", Tab.WORDS), glossary.words()));
    }

    void one(Context context) {
        Word word = glossary.find(context.pathParam("word")).orElseThrow(() -> notThere(context.pathParam("word")));
        pages.show(
                context,
                "word.jte",
                new WordPage(
                        pages.shell(word.term(), Tab.WORDS),
                        word,
                        word.see().stream()
                                .flatMap(other -> glossary.find(other).stream())
                                .toList()));
    }

    private Problem notThere(String asked) {
        Optional<Word> near = glossary.nearest(asked);
        return new Problem(
                404,
                "That word is not among ours.",
                near.map(word -> "Did you mean “%s”? ".formatted(word.term())).orElse("")
                        + "All of them are under Words.");
    }
}
