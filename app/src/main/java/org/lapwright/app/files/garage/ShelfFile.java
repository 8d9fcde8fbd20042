package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.lapwright.app.files.Problem;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.change.ChangeKind;
import org.lapwright.core.car.change.Values;

/**
 * A shelf file, {@code lapwright-shelf/1}: {@code parts}, each with the {@code kind} of change that fits it ({@code tyres-fitted},
 * {@code guide-fitted}, {@code gears-fitted}, {@code motor-fitted}, {@code magnet-fitted}, {@code braid-fitted}) and the numbers
 * that the change asks for.
 */
public final class ShelfFile {
    /** The format that this version reads. */
    public static final String FORMAT = "lapwright-shelf/1";

    private static final Set<ChangeKind> FITTING = Set.of(
            ChangeKind.TYRES_FITTED,
            ChangeKind.GUIDE_FITTED,
            ChangeKind.GEARS_FITTED,
            ChangeKind.MOTOR_FITTED,
            ChangeKind.MAGNET_FITTED,
            ChangeKind.BRAID_FITTED);
    private static final String KIND = "kind";

    private ShelfFile() {}

    /** Reads a shelf: the changes that its parts allow. */
    public static FileReading<List<Change>> read(String text) {
        Document.Read document = Document.read(text, FORMAT);
        if (document.problem().isPresent()) {
            return FileReading.refused(document.problem().get());
        }
        JsonNode parts = document.object().orElseThrow().path("parts");
        if (!parts.isArray()) {
            return FileReading.refused(
                    Problem.ofWhole("parts is " + JsonSection.shown(parts), "It must be a list in brackets"));
        }
        List<Change> changes = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            try {
                changes.add(part(parts.get(i)));
            } catch (IllegalArgumentException wrong) {
                problems.add(Problem.ofWhole(
                        "parts[%d]: %s".formatted(i, wrong.getMessage()), "Nothing was taken from this file"));
            }
        }
        return new FileReading<>(
                problems.isEmpty() ? Optional.of(List.copyOf(changes)) : Optional.empty(), problems, List.of());
    }

    private static Change part(JsonNode node) {
        if (!(node instanceof ObjectNode part)) {
            throw new IllegalArgumentException(JsonSection.shown(node) + " is no object in braces");
        }
        ChangeKind kind = ChangeKind.find(part.path(KIND).asText())
                .filter(FITTING::contains)
                .orElseThrow(() -> new IllegalArgumentException("kind is %s; it must be one of %s"
                        .formatted(
                                JsonSection.shown(part.path(KIND)),
                                FITTING.stream().map(ChangeKind::code).sorted().toList())));
        ObjectNode given = part.deepCopy();
        given.remove(KIND);
        Values values = ChangeJson.values(given);
        return kind.of(values);
    }
}
