package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.app.usecase.SavedComparison;

/** What the operating system really refuses: files that may not grow, folders that may not be written. */
@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SqliteLimitTest {
    /** Above the 1.1 MB of SQLite's library, which is unpacked first, and below the 4 MB where the log is written back. */
    private static final List<String> SMALL_FILES =
            List.of("bash", "-c", "trap '' XFSZ; ulimit -f 2000; exec \"$@\"", "limited");

    @TempDir
    Path folder;

    @Test
    void aFileThatMayNotGrowIsSaidAndLosesNothing() throws IOException {
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "needs bash for its file size limit");
        Path file = Garages.emptyIn(folder);
        List<String> lines;
        try (Child child = Child.start(SMALL_FILES, scratch(), KeepingChild.class, file.toString(), "0")) {
            lines = child.rest();
        }
        String last = lines.get(lines.size() - 1);
        assertThat(last).startsWith("failed The disk").contains(file.toString(), "everything saved before it is safe");
        List<String> kept =
                lines.stream().filter(line -> line.startsWith("kept")).toList();
        assertThat(kept).hasSizeGreaterThan(20);
        try (SqliteGarage store = SqliteGarage.open(file)) {
            List<SavedComparison> found = store.comparisons();
            assertThat(found).hasSize(kept.size());
            for (SavedComparison saved : found) {
                int number = (int) saved.savedAt().getEpochSecond();
                assertThat(kept).contains("kept " + number + " " + saved.id());
                assertThat(saved.kept()).isEqualTo(Sample.numbered(number));
            }
            assertThat(KeepingChild.keep(store, kept.size()).id()).isPositive();
        }
    }

    /** The file is there or not; file and folder may be written or not. */
    @ParameterizedTest
    @CsvSource({"true, r--------, rwx------", "true, r--------, r-x------", "false, rw-------, r-x------"})
    void whatMayNotBeWrittenIsSaidAtOnce(boolean there, String ofFile, String ofFolder) throws IOException {
        Path place = Files.createDirectories(folder.resolve("place"));
        Path file = there ? Garages.emptyIn(place) : place.resolve("garage.db");
        if (there) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(ofFile));
        }
        Files.setPosixFilePermissions(place, PosixFilePermissions.fromString(ofFolder));
        try (Child child = Child.start(bound(), scratch(), KeepingChild.class, file.toString(), "0")) {
            assertThat(child.line())
                    .matches("failed \\Q" + file
                            + "\\E (may not be written|could not be opened)\\. Nothing was changed\\..*")
                    .contains("See that the folder " + place + " is there, belongs to you and can be written");
        } finally {
            Files.setPosixFilePermissions(place, PosixFilePermissions.fromString("rwx------"));
        }
    }

    @Test
    void aDataFolderThatCannotBeMadeIsSaidAtOnce() throws IOException {
        Path place = Files.createDirectories(folder.resolve("place"));
        Files.setPosixFilePermissions(place, PosixFilePermissions.fromString("r-x------"));
        for (Path wanted : List.of(place, place.resolve("deep/er"))) {
            try (Child child = Child.start(bound(), scratch(), CreatingChild.class, wanted.toString())) {
                assertThat(child.line())
                        .startsWith("failed The folder " + wanted + " for your data cannot be used: it ")
                        .contains("Nothing was changed.", "set LAPWRIGHT_DATA to another folder");
            }
        }
        Files.setPosixFilePermissions(place, PosixFilePermissions.fromString("rwx------"));
    }

    private Path scratch() throws IOException {
        return Files.createDirectories(folder.resolve("scratch"));
    }

    /** Words before a command that make permissions bind it: they do not bind the superuser. */
    private static List<String> bound() throws IOException {
        if (!Files.getAttribute(Path.of("/proc/self"), "unix:uid").equals(0)) {
            return List.of();
        }
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/setpriv")), "the superuser needs setpriv for this");
        return List.of("setpriv", "--bounding-set", "-dac_override,-dac_read_search");
    }
}
