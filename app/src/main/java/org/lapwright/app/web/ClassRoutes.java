package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.garage.ClassListFile;
import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.bench.BenchPage;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.rules.ClassForm;
import org.lapwright.app.web.rules.ClassesPage;
import org.lapwright.app.web.track.Typed;
import org.lapwright.app.web.track.Typed.Fault;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.car.rules.RaceClasses;

/** Which classes there are, what they allow, and which car is run in which. */
final class ClassRoutes {
    private final OwnList classes;
    private final OwnGarage garage;
    private final Pages pages;

    ClassRoutes(UseCases useCases, Pages pages) {
        this.classes = useCases.bench().ownClasses();
        this.garage = useCases.physics().garage();
        this.pages = pages;
    }

    void open(Context context) {
        boolean saved = context.queryParamMap().containsKey("saved");
        show(context, ClassForm.of(kept(classes)), List.of(), saved ? "Saved." : "");
    }

    void press(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        ClassForm form = ClassForm.from(fields);
        String wish = fields.text("do", "keep");
        if (wish.equals("keep")) {
            keep(context, form);
        } else {
            show(context, form.pressed(wish), List.of(), "");
        }
    }

    private void keep(Context context, ClassForm form) {
        Typed typed = new Typed();
        Optional<RaceClasses> read = form.read(typed, kept(classes));
        if (read.isEmpty()) {
            context.status(422);
            show(context, form, typed.faults(), "Not saved yet.");
            return;
        }
        try {
            classes.keep(new ClassListFile(read.get()).text());
            context.redirect("/bench/classes?saved", HttpStatus.SEE_OTHER);
        } catch (StoreException failed) {
            context.status(503);
            show(context, form, List.of(new Fault("", "Not saved. " + failed.getMessage())), "Not saved.");
        }
    }

    /** A car is run in another class from now on. */
    void choose(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        String car = Forms.car(garage, fields.text("name")).name();
        try {
            classes.keep(new ClassListFile(kept(classes).with(car, fields.text("class"))).text());
        } catch (StoreException failed) {
            throw new Problem(503, "Not saved.", String.valueOf(failed.getMessage()));
        } catch (IllegalArgumentException unknown) {
            throw new Problem(422, "Nothing was changed.", Forms.sentence(unknown));
        }
        context.redirect(BenchPage.address(car) + "#class", HttpStatus.SEE_OTHER);
    }

    private void show(Context context, ClassForm form, List<Fault> faults, String said) {
        pages.show(
                context,
                "bench/classes.jte",
                new ClassesPage(pages.shell("Classes", Tab.BENCH), form, kept(classes), faults, said));
    }

    /** The owner's classes. A list that cannot be read counts as none. */
    static RaceClasses kept(OwnList classes) {
        return classes.text()
                .flatMap(text -> ClassListFile.read(text).accepted())
                .map(ClassListFile::classes)
                .orElse(RaceClasses.NONE);
    }
}
