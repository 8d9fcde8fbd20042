package org.lapwright.app.cli;

/** Input that a command cannot use; the message says what, where, and what would be right. */
final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BadInput(String message) {
        super(message);
    }
}
