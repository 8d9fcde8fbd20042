package org.lapwright.app.web;

/**
 * Why a request was not done, as an exception that ends it.
 *
 * <p>Named for what HTTP calls a problem (RFC 9457): pages show it in a sentence, the JSON interface as
 * {@code application/problem+json}.
 */
final class Problem extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int status;
    private final String remedy;

    /**
     * A problem.
     *
     * @param status of HTTP
     * @param what happened, a sentence
     * @param remedy what is safe and what to do, sentences
     */
    Problem(int status, String what, String remedy) {
        super(what, null, false, false);
        this.status = status;
        this.remedy = remedy;
    }

    int status() {
        return status;
    }

    String what() {
        return getMessage() == null ? "" : getMessage();
    }

    String remedy() {
        return remedy;
    }

    static Problem notFound() {
        return new Problem(404, "There is no page here.", "The address may be mistyped. Nothing is lost.");
    }

    static Problem tooLarge() {
        return new Problem(
                413,
                "That is more than fits: at most 10 MB at a time.",
                "Nothing was saved or changed. Go back and paste fewer laps; one comparison takes up to 2000. A car file has a few kB.");
    }

    static Problem photoTooLarge() {
        return new Problem(413, "That photo is too long: at most 15 MB fit.", "Nothing was saved. Send a smaller one.");
    }

    static Problem wrongMethod() {
        return new Problem(405, "This address cannot be used that way.", "Nothing was saved or changed.");
    }

    static Problem wrongType(String right) {
        return new Problem(
                415, "The request is not of the type it has to be.", "Send it as " + right + ". Nothing was changed.");
    }

    /** A form with a file in it that the server could not take apart. */
    static Problem unreadable(Throwable why) {
        for (Throwable cause = why; cause != null; cause = cause.getCause()) {
            if (String.valueOf(cause.getMessage()).contains("max length exceeded")) {
                return tooLarge();
            }
        }
        return new Problem(
                400, "This form cannot be read.", "Nothing was saved or changed. Go back and send the file again.");
    }

    static Problem fault() {
        return new Problem(
                500,
                "Something went wrong in the program.",
                "What was saved before is safe. Go back: your laps are still in the form. The program's log says more.");
    }
}
