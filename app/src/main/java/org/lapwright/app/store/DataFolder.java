package org.lapwright.app.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Set;
import org.lapwright.app.usecase.StoreException;

/**
 * The folder that holds the racer's data.
 *
 * <p>{@value #OVERRIDE} if set; else {@code lapwright} in {@code XDG_DATA_HOME}, which is ignored unless absolute; else
 * {@code .local/share/lapwright} in the home folder. Source: freedesktop.org, "XDG Base Directory Specification",
 * version 0.8.
 *
 * @param path the folder, absolute
 */
public record DataFolder(Path path) {
    /** The setting that names the folder outright. */
    public static final String OVERRIDE = "LAPWRIGHT_DATA";

    private static final Set<PosixFilePermission> OWNER_ONLY = PosixFilePermissions.fromString("rwx------");

    /**
     * The folder by these settings; nothing is created yet.
     *
     * @param environment environment variables
     * @param home home folder of the user, as in the system property {@code user.home}
     * @throws StoreException if the settings name no folder
     */
    public static DataFolder of(Map<String, String> environment, String home) {
        String override = environment.getOrDefault(OVERRIDE, "");
        if (!override.isBlank()) {
            return new DataFolder(path(override, OVERRIDE).toAbsolutePath().normalize());
        }
        String xdg = environment.getOrDefault("XDG_DATA_HOME", "");
        if (!xdg.isEmpty() && path(xdg, "XDG_DATA_HOME").isAbsolute()) {
            return new DataFolder(
                    path(xdg, "XDG_DATA_HOME").resolve("lapwright").normalize());
        }
        if (home.isBlank() || !path(home, "the home folder").isAbsolute()) {
            throw new StoreException(
                    "There is no place for your data: the home folder is not known. Nothing was changed. Set %s to a folder."
                            .formatted(OVERRIDE));
        }
        return new DataFolder(path(home, "the home folder").resolve(Path.of(".local", "share", "lapwright")));
    }

    /** The file with the garage. */
    public Path garage() {
        return path.resolve("garage.db");
    }

    /**
     * Makes sure that the folder is there and can be written; what has to be created is for its owner only.
     *
     * @return this
     * @throws StoreException if that cannot be done, with why
     */
    public DataFolder create() {
        createPrivate(path);
        if (!Files.isWritable(path)) {
            throw new StoreException(unusable(path, "it may not be written"));
        }
        return this;
    }

    /** Creates a folder and its parents for the owner only; one that is there is left as it is. */
    static void createPrivate(Path folder) {
        FileAttribute<?>[] attributes = isPosix(folder)
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER_ONLY)}
                : new FileAttribute<?>[0];
        try {
            Files.createDirectories(folder, attributes);
        } catch (FileAlreadyExistsException e) {
            throw new StoreException(unusable(folder, e.getFile() + " is a file, not a folder"), e);
        } catch (IOException e) {
            throw new StoreException(unusable(folder, "it could not be created: " + e.getMessage()), e);
        }
    }

    static boolean isPosix(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    private static String unusable(Path folder, String why) {
        return ("The folder %s for your data cannot be used: %s. Nothing was changed. See that it belongs to you, or set"
                        + " %s to another folder.")
                .formatted(folder, why, OVERRIDE);
    }

    private static Path path(String text, String setting) {
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new StoreException(
                    "%s names no folder: %s. Nothing was changed. Set %s to a folder."
                            .formatted(setting, e.getMessage(), OVERRIDE),
                    e);
        }
    }
}
