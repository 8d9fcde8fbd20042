package org.lapwright.app.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.lapwright.app.files.Problem;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.FileReading;
import org.lapwright.app.files.garage.ShelfFile;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.track.Track;

/** Opens car and track files for a command; one that is wrong ends it with everything that is wrong. */
final class GarageFiles {
    private final PrintWriter err;

    GarageFiles(PrintWriter err) {
        this.err = err;
    }

    /**
     * The set-up in a car file.
     *
     * @throws BadInput if there is none
     */
    SetUp car(String file) {
        return read(file, "a car", text -> CarFile.read(text)).setUp();
    }

    /**
     * The car in a car file, with what is adjustable beside its set-up.
     *
     * @throws BadInput if there is none
     */
    Build build(String file) {
        return read(file, "a car", text -> CarFile.read(text)).build();
    }

    /**
     * The track in a track file.
     *
     * @throws BadInput if there is none
     */
    Track track(String file) {
        return read(file, "a track", text -> TrackFile.read(text)).track();
    }

    /**
     * The changes that the parts in a shelf file allow.
     *
     * @throws BadInput if there is none
     */
    List<Change> shelf(String file) {
        return read(file, "a shelf", text -> ShelfFile.read(text));
    }

    private <T> T read(String file, String what, Function<String, FileReading<T>> reader) {
        FileReading<T> reading = reader.apply(InputFile.text(file, what));
        String where = LapSource.named(file);
        T accepted = reading.accepted()
                .orElseThrow(() -> new BadInput(reading.problems().stream()
                        .map(Problem::sentence)
                        .collect(Collectors.joining(System.lineSeparator() + "  ", where + ": ", ""))));
        reading.notes().forEach(note -> err.println(where + ": " + note + "."));
        return accepted;
    }
}
