package org.lapwright.app.files.drawing;

/** Takes numbers off a text as SVG 1.1 writes them in paths, points and transforms (§8.3.9): no mark is needed between them. */
final class NumberScanner {
    private final String text;
    private int at;

    NumberScanner(String text) {
        this.text = text;
    }

    /** Something else stands where a number should. */
    static final class NoNumber extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private NoNumber() {
            super(null, null, false, false);
        }
    }

    int place() {
        return at;
    }

    boolean atEnd() {
        return at >= text.length();
    }

    /** The character here, or 0 at the end. */
    char here() {
        return atEnd() ? 0 : text.charAt(at);
    }

    char next() {
        return text.charAt(at++);
    }

    void skipBlanks() {
        while (!atEnd() && isBlank(here())) {
            at++;
        }
    }

    /** Blanks with at most one comma. */
    void skipSeparator() {
        skipBlanks();
        if (here() == ',') {
            at++;
            skipBlanks();
        }
    }

    /** Whether a number comes next; if so, what separates it has been skipped, and else nothing but blanks. */
    boolean hasMore() {
        skipBlanks();
        int before = at;
        skipSeparator();
        if (startsNumber()) {
            return true;
        }
        at = before;
        return false;
    }

    /**
     * A number, which may be infinite when it is too large.
     *
     * @throws NoNumber if none stands here
     */
    double number() {
        int from = at;
        if (here() == '+' || here() == '-') {
            at++;
        }
        int digits = digits();
        if (here() == '.') {
            at++;
            digits += digits();
        }
        if (digits == 0) {
            at = from;
            throw new NoNumber();
        }
        exponent();
        return Double.parseDouble(text.substring(from, at));
    }

    /** A flag: 0 or 1, which may stand against what follows. */
    boolean flag() {
        if (here() != '0' && here() != '1') {
            throw new NoNumber();
        }
        return next() == '1';
    }

    private boolean startsNumber() {
        char c = here();
        return isDigit(c) || c == '.' || c == '+' || c == '-';
    }

    private int digits() {
        int from = at;
        while (isDigit(here())) {
            at++;
        }
        return at - from;
    }

    /** Only if digits follow: else the letter is part of a unit. */
    private void exponent() {
        if (here() != 'e' && here() != 'E') {
            return;
        }
        int before = at;
        at++;
        if (here() == '+' || here() == '-') {
            at++;
        }
        if (digits() == 0) {
            at = before;
        }
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isBlank(char c) {
        return c == ' ' || c == '\t' || c == '\r' || c == '\n' || c == '\f';
    }
}
