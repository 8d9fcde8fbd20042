package org.lapwright.app.usecase;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The words of the trade and of this tool, each in 25 words or fewer. */
public final class Glossary {
    private static final List<Word> WORDS = sorted(List.of(
            word(
                    "guide",
                    "The blade under the nose that runs in the slot, steers the car and carries the braid.",
                    "braid"),
            word(
                    "braid",
                    "Two soft strips of woven copper on the guide that brush the rails and bring in the current.",
                    "guide"),
            word("shim", "A thin washer that sets a height or takes up play, on the guide post or an axle.", "guide"),
            word("trued", "Said of a tyre ground round while turning on its own axle, so that it no longer hops."),
            word(
                    "ballast",
                    "Weight added on purpose, a few grams at a place you can name, to change loads or calm a car.",
                    "load"),
            word("deslot", "The guide leaves the slot and the car flies off, mostly in or right after a curve.", "off"),
            word(
                    "lane",
                    "One slot of the track. Lanes differ in length and curve, so compare laps of the same lane only."),
            word("pinion", "The small gear on the motor shaft that drives the larger gear on the axle.", "gear mesh"),
            word(
                    "gear mesh",
                    "How deep two gears sit in each other. Too tight eats power, too loose eats teeth.",
                    "pinion"),
            word(
                    "body float",
                    "A little free play of the body on the chassis, so that shakes of one do not reach the other."),
            word(
                    "downforce",
                    "Push towards the track. On small cars it comes from a magnet above steel rails, hardly from air."),
            word(
                    "load",
                    "The share of the weight that rests on the guide or on an axle, in grams of force.",
                    "ballast"),
            word(
                    "tip",
                    "The car rolls over its outer wheels instead of sliding. A lower centre of gravity or wider track delays it."),
            word("run", "Laps of one set-up on one lane, driven in one go with hands off the car.", "lap"),
            word("lap", "The time between two passes of the gate, with a kind that says whether it counts.", "pass"),
            word(
                    "pass",
                    "One time the gate saw a car. Kept for ever as it came in; laps are worked out from it.",
                    "lap"),
            word(
                    "pace",
                    "The lap you hold: a middle value of the clean laps that a few odd ones cannot move.",
                    "spread"),
            word("spread", "How far your clean laps scatter about the pace. Smaller is steadier.", "pace"),
            word(
                    "clean",
                    "A lap like its neighbours, without an off or a gate fault. Only clean laps count for pace and spread.",
                    "lap"),
            word(
                    "off",
                    "A lap that lost time because the car came off or stopped. Kept and shown, left out of the pace.",
                    "deslot"),
            word(
                    "missed gate",
                    "The gate did not see one pass, so two laps look like one of twice the time.",
                    "double trigger"),
            word("double trigger", "The gate saw one pass twice, so one lap looks like two short ones.", "missed gate"),
            word(
                    "verdict",
                    "Did the change help? Faster, slower, level, or more laps needed, always with the interval it rests on.",
                    "interval"),
            word(
                    "interval",
                    "The range in which the true difference lies, as far as the laps can tell. More laps narrow it.",
                    "verdict"),
            word(
                    "level",
                    "The whole interval lies inside your margin: whatever difference there is does not matter to you.",
                    "margin"),
            word(
                    "margin",
                    "The difference too small to care about, which you set yourself. Three in a thousand unless you say otherwise.",
                    "level"),
            word(
                    "plan",
                    "The runs you mean to drive, such as A B B A, stated before the first look so that looking stays honest.",
                    "run"),
            word(
                    "drift",
                    "Laps slowly getting faster or slower through an evening, by warming, dust or learning. The verdict allows for it."),
            word(
                    "ladder",
                    "The cars on one track ranked by pace. Cars that the laps cannot tell apart share a place.",
                    "pace"),
            word("shelf", "The parts you own that are on no car at present.", "set-up"),
            word("sheet", "One set-up on one printed page, for the box or the wall.", "set-up"),
            word(
                    "set-up",
                    "Everything adjustable about a car at one time. Never edited: a change makes the next one.",
                    "change"),
            word(
                    "change",
                    "One step from a set-up to the next, of a known kind: ballast, tyre, shims, gears, motor and so on.",
                    "set-up"),
            word(
                    "baseline",
                    "The set-up you go back to, so that every change is measured from the same place.",
                    "set-up"),
            word(
                    "run-in",
                    "Turning a fresh motor or gears gently for a while, until parts that rub have bedded down.")));

    /** All words, in the order of the alphabet. */
    public List<Word> words() {
        return WORDS;
    }

    /** The word as written, in any case, with blanks or hyphens. */
    public Optional<Word> find(String term) {
        String slug = slug(term);
        return WORDS.stream().filter(word -> word.slug().equals(slug)).findFirst();
    }

    /** The word spelled most like this one, if any is at all like it. */
    public Optional<Word> nearest(String term) {
        String slug = slug(term.length() > 60 ? term.substring(0, 60) : term);
        int atMost = Math.max(1, slug.length() / 3);
        return WORDS.stream()
                .filter(word -> distance(slug, word.slug()) <= atMost)
                .min(Comparator.comparingInt(word -> distance(slug, word.slug())));
    }

    private static Word word(String term, String text, String... see) {
        return new Word(term, slug(term), text, List.of(see));
    }

    private static List<Word> sorted(List<Word> words) {
        List<Word> sorted = new ArrayList<>(words);
        sorted.sort(Comparator.comparing(Word::term));
        return List.copyOf(sorted);
    }

    private static String slug(String term) {
        return term.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
    }

    /** Edit distance: single letters put in, left out or exchanged (Levenshtein 1966). */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        Arrays.setAll(row, i -> i);
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int exchanged = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(exchanged, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }

    /**
     * One word.
     *
     * @param term as written in running text
     * @param slug as written in an address
     * @param text what it means, 25 words at most
     * @param see other words that help
     */
    public record Word(String term, String slug, String text, List<String> see) {
        /** Copies the list. */
        public Word {
            see = List.copyOf(see);
        }
    }
}
