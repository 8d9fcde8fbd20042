package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.store.SqliteSchema.Standing;
import org.lapwright.app.usecase.StoreException;

class SqliteSchemaTest {
    private static final Instant AT = Instant.parse("2026-03-01T20:15:30Z");

    @TempDir
    Path folder;

    /** A script that is added to a folder but not to the list would run for some and not for others. */
    @Test
    void everyScriptInTheFoldersIsShipped() throws IOException, URISyntaxException {
        long scripts = 0;
        for (String place : List.of("db/migration", "db/vendor/sqlite")) {
            URL url = Objects.requireNonNull(getClass().getClassLoader().getResource(place));
            try (Stream<Path> files = Files.list(Path.of(url.toURI()))) {
                scripts += files.count();
            }
        }
        assertThat(SqliteSchema.SHIPPED.newest()).isEqualTo((int) scripts);
    }

    /** Both ways: Flyway is content with what the quick look calls current, and the quick look with what Flyway made. */
    @Test
    void theQuickLookAgreesWithFlyway() throws IOException, SQLException {
        Path file = Garages.emptyIn(folder);
        SqliteDatabase database = SqliteDatabase.of(file);
        try (Connection connection = database.reader()) {
            assertThat(SqliteSchema.SHIPPED.standing(connection, "")).isEqualTo(Standing.CURRENT);
        }
        Flyway flyway = Flyway.configure()
                .dataSource(database.writing())
                .locations("classpath:db/migration", "classpath:db/vendor/sqlite")
                .placeholders(Map.of("pk", "INTEGER PRIMARY KEY"))
                .load();
        assertThat(flyway.validateWithResult().validationSuccessful).isTrue();
        assertThat(flyway.info().pending()).isEmpty();
    }

    @Test
    void anEmptyFileAndAHalfMadeDatabaseAreFresh() throws IOException, SQLException {
        Path empty = Files.createFile(folder.resolve("empty.db"));
        SqliteGarage.open(empty).close();
        Path begun = folder.resolve("begun.db");
        Raw.run(
                begun,
                "CREATE TABLE flyway_schema_history (installed_rank INT NOT NULL PRIMARY KEY, version VARCHAR(50),"
                        + " description VARCHAR(200) NOT NULL, type VARCHAR(20) NOT NULL, script VARCHAR(1000) NOT NULL,"
                        + " checksum INT, installed_by VARCHAR(100) NOT NULL, installed_on TEXT NOT NULL DEFAULT"
                        + " (strftime('%Y-%m-%d %H:%M:%f','now')), execution_time INT NOT NULL, success BOOLEAN NOT NULL)");
        try (SqliteGarage store = SqliteGarage.open(begun)) {
            store.keep(Sample.numbered(1), Sample.full(), "key", AT);
        }
        assertThat(folder.resolve("backups")).as("there was nothing to back up").doesNotExist();
    }

    @Test
    void aNewerGarageIsRefusedByName() throws IOException, SQLException {
        Path file = filled();
        Raw.run(
                file,
                "INSERT INTO flyway_schema_history SELECT 97, '97', 'later', type, 'V97__later.sql', 1, installed_by,"
                        + " installed_on, 1, TRUE FROM flyway_schema_history WHERE version = '1'",
                "ALTER TABLE car ADD COLUMN colour TEXT");
        assertRefusedUntouched(
                file,
                file + " was made by a newer Lapwright, version 97; this one knows up to "
                        + SqliteSchema.SHIPPED.newest() + "; your data was not touched.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE flyway_schema_history SET checksum = checksum + 1 WHERE version = '2'",
                "UPDATE flyway_schema_history SET version = '1.5' WHERE version = '2'",
                "UPDATE flyway_schema_history SET version = NULL WHERE version = '2'",
                "UPDATE flyway_schema_history SET success = FALSE WHERE version = '2'",
                "DELETE FROM flyway_schema_history WHERE version = '1'",
            })
    void aHistoryThatIsNotOursIsRefused(String meddling) throws IOException, SQLException {
        Path file = filled();
        Raw.run(file, meddling);
        assertRefusedUntouched(file, "is not a Lapwright garage");
    }

    @Test
    void aDatabaseOfSomethingElseIsRefused() throws IOException, SQLException {
        Path file = folder.resolve("music.db");
        Raw.run(file, "CREATE TABLE album (id INTEGER PRIMARY KEY, title TEXT)", "INSERT INTO album VALUES (1, 'x')");
        assertRefusedUntouched(file, "it holds other tables, such as album");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 15, 99, 100, 5000})
    void aFileThatIsNoDatabaseIsRefused(int size) throws IOException {
        Path file = Files.writeString(
                folder.resolve("notes.db"), "my notes ".repeat(600).substring(0, size));
        assertRefusedUntouched(file, "is not a garage: it is no SQLite database");
    }

    @Test
    void aFolderInPlaceOfTheFileIsRefused() throws IOException {
        Path file = Files.createDirectories(folder.resolve("garage.db"));
        assertThatThrownBy(() -> SqliteGarage.open(file))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("is a folder, not a garage");
    }

    @Test
    void aMissingFolderIsRefused() {
        Path file = folder.resolve("not there").resolve("garage.db");
        assertThatThrownBy(() -> SqliteGarage.open(file))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("could not be opened")
                .hasMessageContaining(folder.resolve("not there").toString());
    }

    private Path filled() throws IOException {
        Path file = Garages.emptyIn(folder);
        try (SqliteGarage store = SqliteGarage.open(file)) {
            store.keep(Sample.numbered(1), Sample.full(), "key", AT);
        }
        return file;
    }

    private void assertRefusedUntouched(Path file, String message) throws IOException {
        byte[] before = Files.readAllBytes(file);
        assertThatThrownBy(() -> SqliteGarage.open(file))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining(message)
                .hasMessageMatching("(?s).*(not touched|Nothing was changed).*");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).as("nothing was left beside it").containsExactly(file);
        }
    }
}
