package org.lapwright.app.web.view;

import java.util.List;
import org.lapwright.app.usecase.Glossary.Word;

/**
 * One word of the glossary.
 *
 * @param shell around it
 * @param word the word
 * @param see other words that help
 */
public record WordPage(Shell shell, Word word, List<Word> see) {
    /** Copies the list. */
    public WordPage {
        see = List.copyOf(see);
    }
}
