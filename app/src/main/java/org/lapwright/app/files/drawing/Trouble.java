package org.lapwright.app.files.drawing;

import org.lapwright.app.files.Problem;

/** Why a drawing cannot be used at all; ends the reading of it. Its message is a sentence for the racer. */
public final class Trouble extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    Trouble(Problem problem) {
        super(problem.sentence(), null, false, false);
        this.problem = problem;
    }

    /** Something that spoils the whole of a drawing. */
    public static Trouble ofWhole(String what, String remedy) {
        return new Trouble(Problem.ofWhole(what, remedy));
    }

    /** What, where, what would be right. */
    public Problem problem() {
        return problem;
    }
}
