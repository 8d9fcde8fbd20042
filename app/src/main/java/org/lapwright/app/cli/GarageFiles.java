package org.lapwright.app.cli;

import java.io.PrintWriter;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.lapwright.app.files.Problem;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.FileReading;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.core.car.SetUp;
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
     * The track in a track file.
     *
     * @throws BadInput if there is none
     */
    Track track(String file) {
        return read(file, "a track", text -> TrackFile.read(text)).track();
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
