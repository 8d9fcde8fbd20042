package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.lapwright.app.files.garage.GateFile;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.capture.SoundWatch;
import org.lapwright.app.usecase.run.DriveLive;
import org.lapwright.app.usecase.run.GateChoice;
import org.lapwright.app.usecase.run.GateChoice.Kind;
import org.lapwright.app.usecase.run.ListenHere;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.run.GatePage;
import org.lapwright.app.web.run.GatePage.Now;
import org.lapwright.app.web.run.GatePage.Typed;
import org.lapwright.app.web.run.RunStream;
import org.lapwright.app.web.run.RunStream.Shown;
import org.lapwright.app.web.view.Shell.Tab;

/** A gate on this computer: choose it, see what it hears, say how loud a pass is. */
final class GateRoutes implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(GateRoutes.class.getName());
    private static final double PERCENT = 100;

    private final ListenHere listenHere;
    private final DriveLive driveLive;
    private final OwnList kept;
    private final Pages pages;
    private final RunStream stream;

    /** No state of an earlier start of the program has the name of one of this. */
    private final String start = Forms.freshKey();

    private final AtomicLong changes = new AtomicLong();

    GateRoutes(UseCases useCases, Pages pages) {
        this.listenHere = useCases.run().listenHere();
        this.driveLive = useCases.run().driveLive();
        this.kept = useCases.run().ownGate();
        this.pages = pages;
        this.stream = new RunStream(this::shown);
        listenHere.watch(this::changed);
    }

    /** Tells pages how the gate is doing. */
    RunStream stream() {
        return stream;
    }

    /** Listens to the gate that was listened to when the program ended, if it is still there. */
    void resume() {
        GateFile file = file();
        if (file.listening()) {
            try {
                listenHere.begin(choice(file));
            } catch (IOException notThere) {
                LOG.log(Level.WARNING, "The gate is not listened to: {0}.", notThere.getMessage());
            }
        }
    }

    @Override
    public void close() {
        stream.close();
        listenHere.close();
    }

    void show(Context context) {
        show(context, typed(file()), "");
    }

    void press(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        Typed typed = new Typed(fields.text("kind"), fields.text("port"), fields.text("level"));
        try {
            switch (fields.text("do")) {
                case "begin" -> begin(typed);
                case "need" -> need(level(typed));
                case "end" -> end();
                default ->
                    throw new Problem(422, "There is no such button.", "Open the gate again. Nothing was changed.");
            }
            context.redirect("/run/gate", HttpStatus.SEE_OTHER);
        } catch (StoreException failed) {
            context.status(503);
            show(context, typed, "Not saved. " + failed.getMessage());
        } catch (IllegalArgumentException wrong) {
            context.status(422);
            show(context, typed, Forms.sentence(wrong));
        } catch (IOException notThere) {
            context.status(422);
            show(context, typed, Forms.sentence(String.valueOf(notThere.getMessage())));
        }
    }

    private void begin(Typed typed) throws IOException {
        boolean serial = typed.kind().equals("serial");
        if (serial && typed.port().isBlank()) {
            throw new IllegalArgumentException("the serial line needs its port, such as /dev/ttyUSB0 or COM3");
        }
        GateFile file = new GateFile(serial ? typed.port().strip() : "", level(typed), true);
        listenHere.begin(choice(file));
        kept.keep(file.text());
    }

    private void need(double percent) {
        GateFile before = file();
        kept.keep(new GateFile(before.port(), percent, before.listening()).text());
        listenHere.need(percent / PERCENT);
    }

    private void end() {
        GateFile before = file();
        listenHere.end();
        kept.keep(new GateFile(before.port(), before.leastLevelPercent(), false).text());
    }

    private static double level(Typed typed) {
        String text = typed.level().strip().replace(',', '.');
        if (!text.matches("\\d{1,3}(\\.\\d{1,3})?")) {
            throw new IllegalArgumentException("the least height of a pass is '%s'; give a number from 0 to 100"
                    .formatted(typed.level().strip()));
        }
        return Double.parseDouble(text);
    }

    private static GateChoice choice(GateFile file) {
        Kind kind = file.port().isEmpty() ? Kind.SOUND : Kind.SERIAL;
        return new GateChoice(kind, file.port(), file.leastLevelPercent() / PERCENT);
    }

    private static Typed typed(GateFile file) {
        return new Typed(
                file.port().isEmpty() ? "sound" : "serial",
                file.port(),
                Figures.significant(file.leastLevelPercent(), 4));
    }

    /** What was kept last; what cannot be read counts as nothing. */
    private GateFile file() {
        return kept.text()
                .flatMap(text -> GateFile.read(text).accepted())
                .orElse(new GateFile("", SoundWatch.USUAL_LEAST_LEVEL * PERCENT, false));
    }

    private void changed() {
        changes.incrementAndGet();
        stream.changed();
    }

    private Now now() {
        return Now.of(start + changes.get(), listenHere.state());
    }

    private Shown shown() {
        Now now = now();
        return new Shown(now.seen(), pages.text("run/gatenow.jte", now));
    }

    private void show(Context context, Typed typed, String problem) {
        Optional<String> lane =
                driveLive.open().map(drive -> Figures.count(drive.fixed().laneNumber()));
        pages.show(
                context,
                "run/gate.jte",
                new GatePage(pages.shell("Gate on this computer", Tab.RUN), now(), typed, problem, lane.orElse("")));
    }
}
