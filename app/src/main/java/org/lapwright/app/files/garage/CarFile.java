package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.Build;

/** A car file: the car in it, and everything else that it says. Immutable. */
public final class CarFile {
    /** The format that this version reads and writes. */
    public static final String FORMAT = "lapwright-car/1";

    private final Build build;
    private final ObjectNode json;

    CarFile(Build build, ObjectNode json) {
        this.build = build;
        this.json = json;
    }

    /** A file for a set-up that was in none. */
    public static CarFile of(SetUp setUp) {
        return new CarFile(Build.of(setUp), CarWriter.updated(Document.empty(), setUp));
    }

    /**
     * Reads a file.
     *
     * @param text all of it
     */
    public static FileReading<CarFile> read(String text) {
        return CarReader.read(text);
    }

    /** The set-up. */
    public SetUp setUp() {
        return build.setUp();
    }

    /** The set-up, and what is adjustable beside it. */
    public Build build() {
        return build;
    }

    /** The same file with the car otherwise: what did not change stays as it was written, unknown keys included. */
    public CarFile with(Build changed) {
        ObjectNode updated = with(changed.setUp()).json.deepCopy();
        TrimJson.write(updated, changed.trim());
        return new CarFile(changed, updated);
    }

    /** The same file with another set-up: what did not change stays as it was written, unknown keys included. */
    public CarFile with(SetUp changed) {
        ObjectNode updated = CarWriter.updated(json.deepCopy(), changed);
        if (updated.has(CarRemarks.NOT_MEASURED)) {
            CarRemarks.of(updated).without(setUp(), changed).writeTo(updated);
        }
        return new CarFile(build.with(changed), updated);
    }

    /** What it says beside the numbers. */
    public CarRemarks remarks() {
        return CarRemarks.of(json);
    }

    /** The same file with other remarks. */
    public CarFile with(CarRemarks remarks) {
        ObjectNode updated = json.deepCopy();
        remarks.writeTo(updated);
        return new CarFile(build, updated);
    }

    /** The file's text. */
    public String text() {
        return Document.text(json);
    }
}
