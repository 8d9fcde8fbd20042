package org.lapwright.app.web.view;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.SectionsInWords;
import org.lapwright.app.web.compare.Fixed;
import org.lapwright.core.trial.session.Side;

/**
 * One kept comparison.
 *
 * @param shell around it
 * @param id its number
 * @param facts what was kept, by name
 * @param kept what was kept
 * @param notice whether it has just been "saved", or is "removed" from the lists; else empty
 * @param verdict its verdict
 * @param sections where on the lap the change brought or cost time, where it was kept from a drive with section gates
 * @param example what there is of the example garage
 */
public record KeptPage(
        Shell shell,
        long id,
        List<Fact> facts,
        KeptComparison kept,
        String notice,
        VerdictView verdict,
        SectionsInWords sections,
        ExampleView example) {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.ENGLISH);

    /** Copies the list. */
    public KeptPage {
        facts = List.copyOf(facts);
    }

    /** What was kept, by name. */
    public static List<Fact> facts(SavedComparison saved, ZoneId zone) {
        KeptComparison kept = saved.kept();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Car", kept.car()));
        facts.add(new Fact("Track", kept.track()));
        add(facts, "Lane", kept.lane());
        add(facts, "Driver", kept.driver());
        add(facts, "Conditions", kept.conditions());
        add(facts, "Changed", kept.change());
        facts.add(new Fact("Stays on the car", kept.stays() == Side.AFTER ? "the set-up after" : "the set-up before"));
        kept.settings().plan().ifPresent(plan -> facts.add(new Fact("Plan", Fixed.inWords(plan))));
        facts.add(new Fact(
                "Laps",
                Figures.count(kept.session().laps()) + " in "
                        + kept.session().runs().size() + " runs"));
        facts.add(new Fact("Saved", when(saved, zone)));
        return facts;
    }

    /** The track's name as part of an address. */
    public String ladderQuery() {
        return URLEncoder.encode(kept.track(), StandardCharsets.UTF_8);
    }

    /** When it was saved. */
    public static String when(SavedComparison saved, ZoneId zone) {
        return WHEN.format(saved.savedAt().atZone(zone));
    }

    private static void add(List<Fact> facts, String name, String value) {
        if (!value.isEmpty()) {
            facts.add(new Fact(name, value));
        }
    }

    /**
     * A fact.
     *
     * @param name what it is
     * @param value the fact
     */
    public record Fact(String name, String value) {}
}
