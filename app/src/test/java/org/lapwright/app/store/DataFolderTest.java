package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapwright.app.usecase.StoreException;

/** Freedesktop.org, "XDG Base Directory Specification", version 0.8, sections 2 and 3. */
class DataFolderTest {
    private static final String HOME = "/home/racer";

    @TempDir
    Path folder;

    private static String of(Map<String, String> environment) {
        return DataFolder.of(environment, HOME).path().toString();
    }

    @Test
    void withoutSettingsItIsUnderTheHomeFolder() {
        assertThat(of(Map.of())).isEqualTo("/home/racer/.local/share/lapwright");
        assertThat(of(Map.of("XDG_DATA_HOME", "")))
                .as("empty is as unset")
                .isEqualTo("/home/racer/.local/share/lapwright");
    }

    @Test
    void xdgDataHomeIsFollowedIfAbsolute() {
        assertThat(of(Map.of("XDG_DATA_HOME", "/data"))).isEqualTo("/data/lapwright");
        assertThat(of(Map.of("XDG_DATA_HOME", "data")))
                .as("a relative path is invalid and to be ignored")
                .isEqualTo("/home/racer/.local/share/lapwright");
    }

    @Test
    void theOverrideComesFirstAndIsTheFolderItself() {
        assertThat(of(Map.of("XDG_DATA_HOME", "/data", DataFolder.OVERRIDE, "/elsewhere/my laps")))
                .isEqualTo("/elsewhere/my laps");
        assertThat(of(Map.of(DataFolder.OVERRIDE, "laps")))
                .isEqualTo(Path.of("laps").toAbsolutePath().toString());
        assertThat(of(Map.of(DataFolder.OVERRIDE, "  "))).isEqualTo("/home/racer/.local/share/lapwright");
    }

    @Test
    void withoutAnyPlaceItSaysWhatToSet() {
        for (String home : new String[] {"", " ", "?"}) {
            assertThatThrownBy(() -> DataFolder.of(Map.of(), home))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("Set LAPWRIGHT_DATA to a folder");
        }
        assertThatThrownBy(() -> DataFolder.of(Map.of(DataFolder.OVERRIDE, "a\0b"), HOME))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("LAPWRIGHT_DATA names no folder");
    }

    /** "... an attempt should be made to create it with permission 0700. If the destination directory exists already the
     * permissions should not be changed." */
    @Test
    void whatIsCreatedIsForTheOwnerOnly() throws IOException {
        DataFolder data = new DataFolder(folder.resolve("share/lapwright"));
        assertThat(data.create()).isEqualTo(data);
        for (Path made : new Path[] {folder.resolve("share"), data.path()}) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(made)))
                    .isEqualTo("rwx------");
        }
        Files.setPosixFilePermissions(data.path(), PosixFilePermissions.fromString("rwxr-x---"));
        data.create();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(data.path())))
                .isEqualTo("rwxr-x---");
        assertThat(data.garage()).isEqualTo(data.path().resolve("garage.db"));
    }

    @Test
    void aLinkToAFolderIsAFolder() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), Files.createDirectories(folder.resolve("real")));
        new DataFolder(link).create();
        assertThat(link).isSymbolicLink();
    }

    @Test
    void aFileInTheWayIsNamed() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));
        assertThatThrownBy(() -> new DataFolder(file).create())
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("The folder " + file + " for your data cannot be used: ")
                .hasMessageContaining("is a file, not a folder");
        assertThatThrownBy(() -> new DataFolder(file.resolve("deeper")).create())
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("cannot be used")
                .hasMessageContaining(file.toString());
    }
}
