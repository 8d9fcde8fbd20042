package org.lapwright.app.usecase;

/** The storage failed; the message says what happened, what is safe and what to do. */
public final class StoreException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** A failure with the sentence for the racer. */
    public StoreException(String message, Throwable cause) {
        super(message, cause);
    }

    /** A failure of the store's own. */
    public StoreException(String message) {
        super(message);
    }
}
