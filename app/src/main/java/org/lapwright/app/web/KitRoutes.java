package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.lapwright.app.files.garage.PieceBoxFile;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.app.web.track.Typed.Fault;
import org.lapwright.app.web.track.kit.KitForm;
import org.lapwright.app.web.track.kit.KitPage;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.kit.PieceBox;
import org.lapwright.core.track.kit.PieceKind;

/** Which kinds of track pieces the owner has. */
final class KitRoutes {
    private static final int MOST_UNLISTED = 24;

    private final OwnGarage garage;
    private final OwnList pieces;
    private final Pages pages;

    KitRoutes(PhysicsCases cases, Pages pages) {
        this.garage = cases.garage();
        this.pieces = cases.pieces();
        this.pages = pages;
    }

    void open(Context context) {
        boolean saved = context.queryParamMap().containsKey("saved");
        show(context, KitForm.of(box(pieces)), List.of(), saved ? "Saved. The editor offers these pieces." : "");
    }

    void press(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        KitForm form = KitForm.from(fields);
        String wish = fields.text("do", "keep");
        if (wish.equals("keep")) {
            keep(context, form);
        } else {
            show(context, form.pressed(wish, () -> unlisted(form)), List.of(), "");
        }
    }

    private void keep(Context context, KitForm form) {
        Typed typed = new Typed();
        Optional<PieceBox> box = form.read(typed);
        if (box.isEmpty()) {
            context.status(422);
            show(context, form, typed.faults(), "Not saved yet.");
            return;
        }
        try {
            pieces.keep(new PieceBoxFile(box.get()).text());
            context.redirect("/track/pieces?saved", HttpStatus.SEE_OTHER);
        } catch (StoreException failed) {
            context.status(503);
            show(context, form, List.of(new Fault("", "Not saved. " + failed.getMessage())), "Not saved.");
        }
    }

    private void show(Context context, KitForm form, List<Fault> faults, String said) {
        List<String> unlisted =
                unlisted(form).stream().map(kind -> kind.inWords()).toList();
        pages.show(
                context,
                "trackkit.jte",
                new KitPage(pages.shell("My pieces", Tab.TRACK), form, unlisted, faults, said));
    }

    /** Sizes that lie in the owner's tracks and that the list lacks. */
    private List<PieceKind> unlisted(KitForm form) {
        List<PieceKind> known = new ArrayList<>(form.understood());
        List<PieceKind> unlisted = new ArrayList<>();
        garage.tracks().stream()
                .filter(file -> !file.example())
                .flatMap(file -> TrackFile.read(file.text()).accepted().stream())
                .filter(file -> file.track().layout() instanceof PieceLayout)
                .flatMap(file -> ((PieceLayout) file.track().layout()).pieces().stream())
                .filter(piece -> known.stream().noneMatch(kind -> kind.holds(piece)))
                .forEach(piece -> {
                    PieceKind kind = new PieceKind("", piece, OptionalInt.empty());
                    known.add(kind);
                    unlisted.add(kind);
                });
        return unlisted.stream().limit(MOST_UNLISTED).toList();
    }

    /** The owner's list; the usual one until there is one. A list that cannot be read counts as none. */
    static PieceBox box(OwnList pieces) {
        return pieces.text()
                .flatMap(text -> PieceBoxFile.read(text).accepted())
                .map(PieceBoxFile::box)
                .orElse(PieceBox.USUAL);
    }
}
