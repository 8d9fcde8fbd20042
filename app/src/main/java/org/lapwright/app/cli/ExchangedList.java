package org.lapwright.app.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.lapwright.app.files.Problem;
import org.lapwright.app.files.garage.ClassListFile;
import org.lapwright.app.files.garage.LabelListFile;
import org.lapwright.app.files.garage.PieceBoxFile;
import org.lapwright.app.usecase.OwnListStore.ListKind;

/** A list of the owner's on its way out of a garage or into one. */
enum ExchangedList {
    PIECES(
            ListKind.PIECES,
            "pieces.json",
            PieceBoxFile.FORMAT,
            "list of pieces",
            text -> PieceBoxFile.read(text).problems()),
    CLASSES(
            ListKind.CLASSES,
            "classes.json",
            ClassListFile.FORMAT,
            "list of classes",
            text -> ClassListFile.read(text).problems()),
    LABELS(
            ListKind.LABELS,
            "labels.json",
            LabelListFile.FORMAT,
            "list of tags",
            text -> LabelListFile.read(text).problems());

    private final ListKind kind;
    private final String entry;
    private final String format;
    private final String words;
    private final Function<String, List<Problem>> problems;

    ExchangedList(ListKind kind, String entry, String format, String words, Function<String, List<Problem>> problems) {
        this.kind = kind;
        this.entry = entry;
        this.format = format.substring(0, format.indexOf('/') + 1);
        this.words = words;
        this.problems = problems;
    }

    /** The list that a text says it is, of this version or another. */
    static Optional<ExchangedList> of(String text) {
        return Arrays.stream(values())
                .filter(list -> text.contains(list.format))
                .findFirst();
    }

    ListKind kind() {
        return kind;
    }

    /** Its name in the ZIP. */
    String entry() {
        return entry;
    }

    /** What it is, for people. */
    String words() {
        return words;
    }

    /** What is wrong with it. */
    List<Problem> problems(String text) {
        return problems.apply(text);
    }
}
