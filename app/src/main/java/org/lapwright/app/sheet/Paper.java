package org.lapwright.app.sheet;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Sizes of paper, upright. */
public enum Paper {
    /** ISO 216. */
    A4("A4", "210mm 297mm"),
    /** ANSI/ASME Y14.1, size A. */
    LETTER("Letter", "8.5in 11in");

    private final String label;
    private final String size;

    Paper(String label, String size) {
        this.label = label;
        this.size = size;
    }

    /** Its name for people. */
    public String label() {
        return label;
    }

    /** Its name in addresses. */
    public String code() {
        return label.toLowerCase(Locale.ROOT);
    }

    /** The paper with this name. */
    public static Optional<Paper> find(String code) {
        return Arrays.stream(values())
                .filter(paper -> paper.code().equals(code))
                .findFirst();
    }

    /** Width and height, as CSS takes them. */
    String size() {
        return size;
    }
}
