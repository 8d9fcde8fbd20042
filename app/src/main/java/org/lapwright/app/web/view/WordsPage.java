package org.lapwright.app.web.view;

import java.util.List;
import org.lapwright.app.usecase.Glossary.Word;

/**
 * The glossary.
 *
 * @param shell around it
 * @param words all words, in the order of the alphabet
 */
public record WordsPage(Shell shell, List<Word> words) {
    /** Copies the list. */
    public WordsPage {
        words = List.copyOf(words);
    }
}
