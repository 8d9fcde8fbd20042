package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.TrackChoice;
import org.lapwright.app.web.track.Typed.Fault;
import org.lapwright.app.web.track.rails.RailForm;
import org.lapwright.app.web.track.rails.RailPage;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Track;
import org.lapwright.core.track.rails.RailTest;

/** Measuring the rails of a track. */
final class RailRoutes {
    private final OwnGarage garage;
    private final Pages pages;

    RailRoutes(OwnGarage garage, Pages pages) {
        this.garage = garage;
        this.pages = pages;
    }

    private record Asked(KeptFile kept, TrackFile file) {}

    void open(Context context) {
        Asked asked = asked(Optional.ofNullable(context.queryParam("track")).orElse(""));
        show(context, asked, RailForm.empty(), List.of(), Optional.empty());
    }

    void press(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        Asked asked = asked(fields.text("track"));
        RailForm form = RailForm.from(fields);
        RailForm.Reading reading = form.read(asked.file().track());
        boolean keep = fields.text("do").equals("keep") && !asked.kept().example();
        if (reading.result().isEmpty() || !keep) {
            context.status(reading.result().isEmpty() ? 422 : 200);
            show(context, asked, form, reading.faults(), reading.result());
            return;
        }
        try {
            Track measured = with(asked.file().track(), reading.result().orElseThrow());
            KeptFile kept = garage.keepTrack(
                    measured.name(), asked.file().with(measured).text());
            context.redirect(TrackChoice.page(kept.name()) + "&saved", HttpStatus.SEE_OTHER);
        } catch (StoreException failed) {
            context.status(503);
            show(context, asked, form, List.of(new Fault("", "Not saved. " + failed.getMessage())), reading.result());
        }
    }

    private void show(
            Context context, Asked asked, RailForm form, List<Fault> faults, Optional<RailTest.Result> result) {
        pages.show(
                context,
                "rails.jte",
                RailPage.of(
                        pages.shell("Measure the rails", Tab.TRACK),
                        asked.file().track(),
                        !asked.kept().example(),
                        form,
                        faults,
                        result));
    }

    /** To a tenth of a milliohm: no meter at home tells more. */
    private static Track with(Track track, RailTest.Result result) {
        Power power = track.power();
        return new Track(
                track.name(),
                track.surface(),
                track.lanes(),
                new Power(
                        power.supplyV(),
                        rounded(result.sourceOhm().value()),
                        rounded(result.railOhmPerM().value()),
                        power.tapsAt(),
                        power.brakeOhm()),
                track.layout(),
                track.gates());
    }

    private static double rounded(double ohm) {
        return Math.round(1e4 * ohm) / 1e4;
    }

    private Asked asked(String name) {
        KeptFile kept = garage.track(name)
                .orElseThrow(() -> new Problem(
                        404, "There is no track of that name.", "All of them are under Track. Nothing is lost."));
        return TrackFile.read(kept.text())
                .accepted()
                .map(file -> new Asked(kept, file))
                .orElseThrow(() -> new Problem(
                        422,
                        "The track cannot be read.",
                        "The Track page says what is wrong in it. Nothing was changed."));
    }
}
