package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.garage.FileReading;
import org.lapwright.app.files.garage.PartFile;
import org.lapwright.app.usecase.ShelfStore.NewPart;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.bench.KeepShelf;
import org.lapwright.app.usecase.bench.ShowWear;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.shelf.PartPage;
import org.lapwright.app.web.shelf.ShelfPage;
import org.lapwright.app.web.shelf.WearView;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.car.shelf.Part;
import org.lapwright.core.car.shelf.PartEvent;
import org.lapwright.core.car.shelf.PartKind;
import org.lapwright.core.car.shelf.PartState;

/** The shelf: parts, what happens to them, and part files in and out. */
final class ShelfRoutes {
    private final KeepShelf keepShelf;
    private final ShowWear showWear;
    private final Pages pages;

    ShelfRoutes(UseCases useCases, Pages pages) {
        this.keepShelf = useCases.bench().keepShelf();
        this.showWear = useCases.bench().showWear();
        this.pages = pages;
    }

    void list(Context context) {
        show(context, new ShelfPage.Form("", "", "", "", Forms.freshKey()), List.of());
    }

    void part(Context context) {
        show(context, state(context.queryParam("id")), Forms.freshKey(), List.of());
    }

    void download(Context context) {
        PartFile file = PartFile.of(state(context.queryParam("id")));
        context.header("Content-Disposition", "attachment; filename=\"part.json\"");
        context.contentType("application/json").result(file.text().getBytes(StandardCharsets.UTF_8));
    }

    /** A new part, typed or as a file. */
    void add(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        ShelfPage.Form form = new ShelfPage.Form(
                fields.text("kind"),
                fields.text("name"),
                fields.text("note"),
                fields.text("text"),
                Forms.key(fields.text("key")));
        try {
            Part part = form.text().isBlank()
                    ? keepShelf.add(new NewPart(new PartKind(form.kind()), form.name(), form.note()), form.key())
                    : addFile(form);
            context.redirect(ShelfPage.address(part.id()), HttpStatus.SEE_OTHER);
        } catch (IllegalArgumentException wrong) {
            context.status(422);
            show(context, form, List.of(Forms.sentence(wrong)));
        } catch (StoreException failed) {
            context.status(503);
            show(context, form, List.of("Not saved. " + failed.getMessage()));
        }
    }

    /** Sent again after a failure half-way it goes on where it was: each of its steps has a key of its own. */
    private Part addFile(ShelfPage.Form form) {
        FileReading<PartFile> reading = PartFile.read(form.text());
        PartFile file = reading.accepted()
                .orElseThrow(() ->
                        new IllegalArgumentException(reading.problems().get(0).sentence()));
        Part part = keepShelf.add(new NewPart(file.kind(), file.name(), ""), form.key());
        if (file.laps() > 0) {
            keepShelf.happened(part.id(), new PartEvent.LapsAdded(file.laps()), form.key() + "-laps");
        }
        for (int i = 0; i < file.services().size(); i++) {
            keepShelf.happened(part.id(), file.services().get(i), form.key() + "-" + i);
        }
        return part;
    }

    /** Something happened to a part. */
    void press(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        PartState state = state(fields.text("id"));
        String key = Forms.key(fields.text("key"));
        try {
            keepShelf.happened(state.part().id(), event(fields), key + "-" + fields.text("do"));
            context.redirect(ShelfPage.address(state.part().id()), HttpStatus.SEE_OTHER);
        } catch (IllegalArgumentException wrong) {
            context.status(422);
            show(context, state, key, List.of("Nothing was saved. " + Forms.sentence(wrong)));
        } catch (StoreException failed) {
            context.status(503);
            show(context, state, key, List.of("Not saved. " + failed.getMessage()));
        }
    }

    private static PartEvent event(Fields fields) {
        return switch (fields.text("do")) {
            case "fit" -> new PartEvent.Fitted(fields.text("car"));
            case "off" -> new PartEvent.TakenOff();
            case "laps" -> new PartEvent.LapsAdded(whole(fields, "laps", "laps to add"));
            case "remind" ->
                new PartEvent.Reminder(fields.text("service"), whole(fields, "every", "laps between two services"));
            case "forget" -> new PartEvent.Reminder(fields.text("service"), 0);
            case "done" -> new PartEvent.Serviced(fields.text("service"));
            case "away" -> new PartEvent.PutAway();
            case "back" -> new PartEvent.BroughtBack();
            default ->
                throw new IllegalArgumentException("this page has no button for “%s”".formatted(fields.text("do")));
        };
    }

    private static int whole(Fields fields, String field, String name) {
        String typed = fields.text(field).strip();
        if (!typed.matches("[+-]?\\d{1,6}")) {
            throw new IllegalArgumentException("%s is “%s”; it must be a whole number, as 300".formatted(name, typed));
        }
        return Integer.parseInt(typed);
    }

    private PartState state(@Nullable String id) {
        OptionalLong number = Forms.number(Optional.ofNullable(id).orElse(""));
        return number.isEmpty()
                ? missing()
                : keepShelf.shelf().find(number.getAsLong()).orElseGet(ShelfRoutes::missing);
    }

    private static PartState missing() {
        throw new Problem(404, "There is no such part on the shelf.", "All parts are under Shelf. Nothing is lost.");
    }

    private void show(Context context, ShelfPage.Form form, List<String> problems) {
        pages.show(
                context,
                "shelf/list.jte",
                ShelfPage.of(pages.shell("Shelf", Tab.SHELF), keepShelf.shelf(), form, problems));
    }

    private void show(Context context, PartState state, String key, List<String> problems) {
        pages.show(
                context,
                "shelf/part.jte",
                new PartPage(
                        pages.shell(state.part().name(), Tab.SHELF),
                        state,
                        WearView.of(showWear.wear(state.part().id())),
                        keepShelf.cars(),
                        key,
                        problems));
    }
}
