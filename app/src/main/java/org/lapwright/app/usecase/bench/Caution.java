package org.lapwright.app.usecase.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.lapwright.core.car.change.CautionTopic;
import org.lapwright.core.car.change.ChangeKind;

/**
 * What to warn of before work that can hurt, in the words of the pages and of the sheet's back. Sources: {@code docs/checks.md}.
 */
public enum Caution {
    /** Lead ballast. */
    LEAD(
            CautionTopic.LEAD,
            "Lead",
            "No amount of lead is safe to take in. Never sand, file or melt it, wash your hands after touching it, keep it from children"
                    + " and food. Tungsten or brass weigh enough and spare you the worry."),
    /** Small magnets. */
    MAGNETS(
            CautionTopic.MAGNETS,
            "Small strong magnets",
            "Two swallowed magnets can pinch the gut: that is an emergency, go to hospital at once. Count them before and after, keep"
                    + " them in a closed box away from children, and from pacemakers and cards."),
    /** Truing, files, rotary tools. */
    CUTTING(
            CautionTopic.CUTTING,
            "Truing, files and rotary tools",
            "Wear eye protection and a dust mask, clamp the work, keep hair and sleeves away from what turns. Rubber dust does not belong"
                    + " in lungs."),
    /** Soldering. */
    FUME(
            CautionTopic.FUME,
            "Soldering",
            "Fume from flux harms the lungs: work by an open window or with extraction, and wash your hands after leaded solder."),
    /** Power. */
    POWER(
            CautionTopic.POWER,
            "Power and hot motors",
            "Use an approved supply made for toys, never open it, never work on mains. A battery needs a fuse at its pole. A motor run hard"
                    + " or held still gets hot enough to burn: seconds only, then let it cool."),
    /** Solvents. */
    SOLVENTS(
            CautionTopic.SOLVENTS,
            "Oil and solvents",
            "Brushes spark: let solvent dry and the air clear before the motor runs, no open flame, gloves and fresh air.");

    private static final String DEFERENCE =
            "The maker's instructions, your club's rules and local codes go before anything said here. Advice from the model is a guess to"
                    + " be tested, not safety advice.";

    private final CautionTopic topic;
    private final String title;
    private final String words;

    Caution(CautionTopic topic, String title, String words) {
        this.topic = topic;
        this.title = title;
        this.words = words;
    }

    /** Its name for people. */
    public String title() {
        return title;
    }

    /** The words. */
    public String words() {
        return words;
    }

    /** What stands under all of them. */
    public static String deference() {
        return DEFERENCE;
    }

    /** The caution about a topic. */
    public static Caution about(CautionTopic topic) {
        return Arrays.stream(values())
                .filter(caution -> caution.topic == topic)
                .findFirst()
                .orElseThrow();
    }

    /**
     * What to warn of before a change of a kind: once a topic, before the first such change in the garage.
     *
     * @param kind of the change
     * @param logged kinds that were logged in this garage before, by their code
     */
    public static List<Caution> before(ChangeKind kind, Set<String> logged) {
        return kind.caution().stream()
                .filter(topic -> Arrays.stream(ChangeKind.values())
                        .filter(other -> other.caution().filter(topic::equals).isPresent())
                        .noneMatch(other -> logged.contains(other.code())))
                .map(Caution::about)
                .toList();
    }
}
