package org.lapwright.app.web.track.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.track.kit.PieceBox;
import org.lapwright.core.track.kit.PieceKind;

/**
 * The owner's kinds of pieces, as typed.
 *
 * @param kinds in the owner's order
 */
public record KitForm(List<KindFields> kinds) {
    /** Copies the list. */
    public KitForm {
        kinds = List.copyOf(kinds);
    }

    /** A list as it is kept. */
    public static KitForm of(PieceBox box) {
        return new KitForm(box.kinds().stream().map(KindFields::of).toList());
    }

    /** What was sent. */
    public static KitForm from(Fields fields) {
        List<KindFields> kinds = new ArrayList<>();
        for (int i = 1; i <= PieceBox.MOST && !fields.text("kind-" + i).isEmpty(); i++) {
            kinds.add(KindFields.from(fields, i));
        }
        return new KitForm(kinds);
    }

    /** The form after a press, named as {@code drop-3}; one that makes no sense changes nothing. */
    public KitForm pressed(String wish, Supplier<List<PieceKind>> unlisted) {
        String[] words = wish.split("-", 2);
        String what = words.length > 1 ? words[1] : "";
        int number = what.matches("\\d{1,3}") ? Integer.parseInt(what) : 0;
        return switch (words[0]) {
            case "add" -> with(KindFields.fresh(!what.equals("turn")));
            case "take" -> taken(number, unlisted.get());
            case "drop" -> without(number);
            case "up" -> raised(number);
            case "usual" -> of(PieceBox.USUAL);
            default -> this;
        };
    }

    private KitForm taken(int number, List<PieceKind> unlisted) {
        return number >= 1 && number <= unlisted.size() ? with(KindFields.of(unlisted.get(number - 1))) : this;
    }

    private KitForm with(KindFields more) {
        List<KindFields> all = new ArrayList<>(kinds);
        if (all.size() < PieceBox.MOST) {
            all.add(more);
        }
        return new KitForm(all);
    }

    private KitForm without(int number) {
        List<KindFields> all = new ArrayList<>(kinds);
        if (number >= 1 && number <= all.size()) {
            all.remove(number - 1);
        }
        return new KitForm(all);
    }

    private KitForm raised(int number) {
        List<KindFields> all = new ArrayList<>(kinds);
        if (number >= 2 && number <= all.size()) {
            all.add(number - 2, all.remove(number - 1));
        }
        return new KitForm(all);
    }

    /** Those kinds that can be understood, whatever is wrong with the others. */
    public List<PieceKind> understood() {
        return kinds.stream()
                .flatMap(kind -> kind.read(1, new Typed()).stream())
                .toList();
    }

    /** The list, if all of it can be understood. */
    public Optional<PieceBox> read(Typed typed) {
        List<PieceKind> read = new ArrayList<>();
        for (int i = 0; i < kinds.size(); i++) {
            kinds.get(i).read(i + 1, typed).ifPresent(read::add);
        }
        return typed.faults().isEmpty() ? typed.at("").build("", () -> new PieceBox(read)) : Optional.empty();
    }
}
