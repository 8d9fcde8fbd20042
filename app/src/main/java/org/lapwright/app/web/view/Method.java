package org.lapwright.app.web.view;

import java.util.List;

/**
 * One step of the method, with where it is published.
 *
 * @param step what it is for
 * @param text how it is done
 * @param source where it is published
 */
public record Method(String step, String text, String source) {
    /** All steps, in the order in which they are taken. */
    public static final List<Method> ALL = List.of(
            new Method(
                    "Which laps count",
                    "Each lap is held against the middle of the laps up to seven to either side, blind to which set-up drove "
                            + "it. A clean lap is at most 5 scatters over that, never less than 6 % and never more than "
                            + "14 %. From 12 % over it came off; near 2, 3 or 4 times the pace the gate missed; two rows "
                            + "that make one lap, the shorter under 0.6 of it, are one pass seen twice.",
                    "Davies and Gather, Journal of the American Statistical Association 88 (1993), for holding against a "
                            + "robust middle; the bounds are common practice"),
            new Method(
                    "Pace",
                    "The middle value of the averages of all pairs of clean laps.",
                    "Hodges and Lehmann, Annals of Mathematical Statistics 34 (1963)"),
            new Method(
                    "Spread",
                    "Q_n: a low quartile of the distances between all pairs of clean laps, scaled to a standard deviation.",
                    "Rousseeuw and Croux, Journal of the American Statistical Association 88 (1993)"),
            new Method(
                    "After against before",
                    "A straight-line fit of the logarithm of the clean laps on level, drift through the session, warm-up in "
                            + "the run, and the change. Far-out laps are pulled in. Laps next to each other are allowed "
                            + "to be alike (φ), and so are laps of one run (γ).",
                    "Huber and Ronchetti, Robust Statistics (2009), section 7.10; Marriott and Pope, Biometrika 41 (1954), "
                            + "for the bias of φ"),
            new Method(
                    "Looking after every lap",
                    "The bar is very high early and comes down as the planned laps come in; beyond the plan it follows a line "
                            + "that the evidence seldom crosses by chance. The promise rests on the driver's noise being "
                            + "much as assumed; laps that hang together far more than that break it.",
                    "O'Brien and Fleming, Biometrics 35 (1979); Lan and DeMets, Biometrika 70 (1983); Jennison and Turnbull, "
                            + "Group Sequential Methods (2000), chapter 9; Siegmund, Sequential Analysis (1985), chapter 3"),
            new Method(
                    "Steadier or wilder",
                    "The same bar on the square roots of how far laps lie off their run's middle; the ratio of spreads with an "
                            + "interval by drawing runs and laps again.",
                    "Brown and Forsythe, Journal of the American Statistical Association 69 (1974); Efron and Tibshirani, An "
                            + "Introduction to the Bootstrap (1993)"),
            new Method(
                    "Offs",
                    "Counts before and after, whether chance alone could part them so far, and Wilson's interval of each rate.",
                    "Fisher's exact test; Brown, Cai and DasGupta, Statistical Science 16 (2001)"));
}
