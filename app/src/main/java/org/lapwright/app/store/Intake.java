package org.lapwright.app.store;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.DriveStore.Drive;
import org.lapwright.app.usecase.DriveStore.DriveEvent;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.HistoryStore.NewStep;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.OwnListStore;
import org.lapwright.app.usecase.PhotoStore;
import org.lapwright.app.usecase.ShelfStore.NewPart;
import org.lapwright.core.car.shelf.PartEvent;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.TrialSettings;

/**
 * What every store asks before it takes a comparison, so that whatever is taken comes back unchanged.
 *
 * <p>Control characters and halves of surrogate pairs are refused by name and place: databases lose them.
 */
final class Intake {
    private static final int KEY_LENGTH = 80;

    private Intake() {}

    /**
     * The comparison as it will come back: no text that a database loses, no negative zero.
     *
     * @throws IllegalArgumentException that says which text holds what, and where
     */
    static KeptComparison checked(KeptComparison comparison) {
        requireName(comparison.car(), "name of the car");
        requireName(comparison.track(), "name of the track");
        requireName(comparison.lane(), "name of the lane");
        requireName(comparison.driver(), "name of the driver");
        requireNote(comparison.change(), "note on the change");
        List<DrivenRun> runs = comparison.session().runs();
        for (int i = 0; i < runs.size(); i++) {
            for (Overrule word : runs.get(i).run().overrules()) {
                requireNote(word.reason(), "reason for lap %d of run %d".formatted(word.lap(), i + 1));
            }
        }
        return new KeptComparison(
                comparison.car(),
                comparison.track(),
                comparison.lane(),
                comparison.driver(),
                comparison.conditions(),
                comparison.change(),
                comparison.stays(),
                comparison.session(),
                withoutNegativeZero(comparison.settings()),
                comparison.example());
    }

    /** A file as it will come back. */
    static KeptFile checked(KeptFile file) {
        requireName(file.name(), "name of the file");
        requireNote(file.text(), "text of the file");
        return file;
    }

    /** A step as it will come back. */
    static NewStep checked(NewStep step) {
        requireName(step.car(), "name of the car");
        requireNote(step.words(), "what was done");
        requireNote(step.change(), "what was given for the change");
        requireNote(step.base(), "text of the file");
        requireNote(step.file(), "text of the file");
        return step;
    }

    /** What is fixed before a drive, as it will come back. */
    static NewDrive checked(NewDrive drive) {
        requireName(drive.car(), "name of the car");
        requireName(drive.track(), "name of the track");
        requireName(drive.lane(), "name of the lane");
        requireName(drive.driver(), "name of the driver");
        requireNote(drive.change(), "note on the change");
        requireNote(drive.conditions(), "note on the conditions");
        return drive;
    }

    /** What happened, as it will come back. */
    static DriveEvent checked(DriveEvent event) {
        if (event instanceof DriveEvent.Passed passed) {
            requireName(passed.pass().source(), "source");
            requireName(passed.pass().boot(), "boot");
        } else if (event instanceof DriveEvent.Pressed pressed) {
            requestKey(pressed.requestKey());
        }
        return event;
    }

    /** A part as it will come back. */
    static NewPart checked(NewPart part) {
        requireName(part.kind().label(), "kind of the part");
        requireName(part.name(), "name of the part");
        requireNote(part.note(), "note on the part");
        return part;
    }

    /** What happened to a part, as it will come back. */
    static PartEvent checked(PartEvent event) {
        if (event instanceof PartEvent.Fitted fitted) {
            requireName(fitted.car(), "name of the car");
        } else if (event instanceof PartEvent.Reminder reminder) {
            requireName(reminder.service(), "what is to be done");
        } else if (event instanceof PartEvent.Serviced serviced) {
            requireName(serviced.service(), "what was done");
        }
        return event;
    }

    /** A photo that can be kept, with the name of its car. */
    static byte[] photo(String car, byte[] jpeg) {
        requireName(car, "name of the car");
        if (jpeg.length < 1 || jpeg.length > PhotoStore.LONGEST_PHOTO) {
            throw new IllegalArgumentException(
                    "the photo has %d bytes; it must have 1 to %d".formatted(jpeg.length, PhotoStore.LONGEST_PHOTO));
        }
        return jpeg.clone();
    }

    /** A list that can be kept. */
    static String list(String text) {
        if (text.isEmpty() || text.length() > OwnListStore.LONGEST_LIST) {
            throw new IllegalArgumentException("the list has %d characters; it must have 1 to %d"
                    .formatted(text.length(), OwnListStore.LONGEST_LIST));
        }
        return text;
    }

    /** Only to a part that is there can anything happen. */
    static void requirePart(long part, boolean there) {
        if (!there) {
            throw new IllegalArgumentException("there is no part number " + part + " on the shelf");
        }
    }

    /** Only a drive that is there and not over takes more; what ended it may come again. */
    static Drive requireGoesOn(long id, Optional<Drive> drive, List<DriveEvent> events) {
        Drive there = drive.orElseThrow(() -> new IllegalArgumentException("there is no drive number " + id));
        if (there.isOver() && !there.events().containsAll(events)) {
            throw new IllegalArgumentException("drive number " + id + " is over; start another one");
        }
        return there;
    }

    /** The comparison under the names that were kept first: "dunlin" is filed under "Dunlin". */
    static KeptComparison named(KeptComparison comparison, String car, String track, String lane, String driver) {
        return new KeptComparison(
                car,
                track,
                lane,
                driver,
                comparison.conditions(),
                comparison.change(),
                comparison.stays(),
                comparison.session(),
                comparison.settings(),
                comparison.example());
    }

    /** A request key that can be kept. */
    static String requestKey(String key) {
        requireName(key, "request key");
        if (key.isEmpty() || key.length() > KEY_LENGTH) {
            throw new IllegalArgumentException(
                    "request key has %d characters; it must have 1 to %d".formatted(key.length(), KEY_LENGTH));
        }
        return key;
    }

    /** Microseconds since 1970, as times are kept. */
    static long micros(Instant at) {
        try {
            return ChronoUnit.MICROS.between(Instant.EPOCH, at);
        } catch (ArithmeticException | DateTimeException e) {
            throw new IllegalArgumentException("time is " + at + "; it must be within 290,000 years of 1970", e);
        }
    }

    /** The time that was kept as microseconds since 1970. */
    static Instant instant(long micros) {
        return Instant.EPOCH.plus(micros, ChronoUnit.MICROS);
    }

    /** For a number that no comparison has. */
    static IllegalArgumentException noComparison(long id) {
        return new IllegalArgumentException("there is no comparison number " + id + " in this garage");
    }

    private static TrialSettings withoutNegativeZero(TrialSettings settings) {
        NoisePrior prior = settings.prior();
        return new TrialSettings(
                settings.alpha(),
                settings.levelMargin() + 0.0,
                settings.handTimed(),
                settings.plan(),
                new NoisePrior(
                        prior.autocorrelation() + 0.0,
                        prior.autocorrelationLaps() + 0.0,
                        prior.runShare() + 0.0,
                        prior.sessions()));
    }

    private static void requireName(String text, String name) {
        requireKeepable(text, name, "");
    }

    /** Notes may have several lines. */
    private static void requireNote(String text, String name) {
        requireKeepable(text, name, "\n\r\t");
    }

    private static void requireKeepable(String text, String name, String allowedControls) {
        for (int i = 0; i < text.length(); i++) {
            char unit = text.charAt(i);
            if (Character.isISOControl(unit) && allowedControls.indexOf(unit) < 0) {
                throw unkeepable(name, i, "the control character", unit);
            }
            boolean pair = Character.isHighSurrogate(unit)
                    && i + 1 < text.length()
                    && Character.isLowSurrogate(text.charAt(i + 1));
            if (pair) {
                i++;
            } else if (Character.isSurrogate(unit)) {
                throw unkeepable(name, i, "half of the character pair", unit);
            }
        }
    }

    private static IllegalArgumentException unkeepable(String name, int place, String what, char unit) {
        return new IllegalArgumentException(
                "%s holds %s U+%04X as its character %d; leave it out".formatted(name, what, (int) unit, place + 1));
    }
}
