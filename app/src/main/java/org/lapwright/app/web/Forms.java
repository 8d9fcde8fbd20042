package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.FileReading;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.SectionsInWords;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.usecase.run.DriveLive;
import org.lapwright.app.usecase.run.Standing;
import org.lapwright.core.track.Track;
import org.lapwright.core.trial.section.JudgedSection;

/** What the pages with forms about a car have in common. */
final class Forms {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int KEY_BYTES = 16;

    private Forms() {}

    /** Refuses anything but a plain form. */
    static void require(Context context) {
        if (!context.isFormUrlencoded()) {
            throw Problem.wrongType("application/x-www-form-urlencoded");
        }
    }

    /** Whoever asks about no car in particular gets the list of all. */
    static Handler aboutACar(Handler page, Handler list) {
        return about("name", page, list);
    }

    /** Whoever asks about no track in particular gets the list of all. */
    static Handler aboutATrack(Handler page, Handler list) {
        return about("track", page, list);
    }

    /** Whoever asks about no part in particular gets the list of all. */
    static Handler aboutAPart(Handler page, Handler list) {
        return about("id", page, list);
    }

    private static Handler about(String parameter, Handler page, Handler list) {
        return context -> (asked(context, parameter).isBlank() ? list : page).handle(context);
    }

    /** A key that nobody has used. */
    static String freshKey() {
        byte[] bytes = new byte[KEY_BYTES];
        RANDOM.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    /** The key that was sent, or a fresh one. */
    static String key(String sent) {
        return sent.isBlank() ? freshKey() : sent;
    }

    /** What the address says under a name; empty when it says nothing. */
    static String asked(Context context, String name) {
        return Optional.ofNullable(context.queryParam(name)).orElse("");
    }

    /** The one asked for, or else the one at a place of the list, or its last: the page is of use at once. */
    static String chosen(String asked, List<String> names, int place) {
        if (!asked.isBlank()) {
            return asked.strip();
        }
        return names.isEmpty() ? "" : names.get(Math.min(place, names.size() - 1));
    }

    /** A number that the page itself put into the form; empty when it is none. */
    static OptionalLong number(String sent) {
        return sent.matches("\\d{1,18}") ? OptionalLong.of(Long.parseLong(sent)) : OptionalLong.empty();
    }

    /** An error as a sentence. */
    static String sentence(IllegalArgumentException wrong) {
        return sentence(String.valueOf(wrong.getMessage()));
    }

    /** A message as a sentence. */
    static String sentence(String message) {
        String begun = message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1);
        return begun.endsWith(".") ? begun : begun + ".";
    }

    /** The car under a name. */
    static KeptFile car(OwnGarage garage, @Nullable String name) {
        return Optional.ofNullable(name)
                .filter(given -> !given.isBlank())
                .flatMap(garage::car)
                .orElseThrow(() -> new Problem(
                        404,
                        "There is no car of that name on the bench.",
                        "All cars with numbers are under Bench. Nothing is lost."));
    }

    /** The track under a name, if there is one whose file can be read. */
    static Optional<Track> track(OwnGarage garage, String name) {
        return garage.track(name)
                .flatMap(kept -> TrackFile.read(kept.text()).accepted())
                .map(TrackFile::track);
    }

    /** Where on the lap the change of a drive brings or costs time; sections have the names that the track's gates have on file. */
    static SectionsInWords sections(DriveLive driveLive, OwnGarage garage, Standing drive) {
        List<JudgedSection> sections = driveLive.sections(drive);
        if (sections.isEmpty()) {
            return SectionsInWords.NONE;
        }
        List<String> gates = track(garage, drive.fixed().track())
                .map(track -> track.gates().stream().map(gate -> gate.name()).toList())
                .orElse(List.of());
        return SectionsInWords.of(sections, gates);
    }

    /** What its file says. */
    static CarFile readable(KeptFile kept) {
        FileReading<CarFile> reading = CarFile.read(kept.text());
        return reading.accepted()
                .orElseThrow(
                        () -> new Problem(
                                422,
                                "The file of “%s” cannot be read.".formatted(kept.name()),
                                reading.problems().get(0).sentence()
                                        + " Nothing is lost: open its corrected file under Bench, and it takes this one's place."));
    }

    /**
     * A whole number as typed.
     *
     * @param name what it is, within a sentence
     * @throws IllegalArgumentException if it is none, with what would be right
     */
    static int whole(String text, String name) {
        if (!text.strip().matches("\\d{1,6}")) {
            throw new IllegalArgumentException("%s is '%s'; give a whole number".formatted(name, text.strip()));
        }
        return Integer.parseInt(text.strip());
    }
}
