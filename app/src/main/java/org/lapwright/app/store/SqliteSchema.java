package org.lapwright.app.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.lapwright.app.usecase.StoreException;

/**
 * The tables that this version knows, and where a database stands against them.
 *
 * <p>Flyway migrates; but loading it costs more than all the rest of opening a garage, so its history is read here first
 * and Flyway is left alone when nothing is pending. The history is held against the shipped scripts in the same way as
 * Flyway does: by version and by the CRC-32 of the script's lines.
 */
final class SqliteSchema {
    private static final Pattern SCRIPT = Pattern.compile("(.*)/V(\\d+)__\\w+\\.sql");

    /** What this version ships, in order. */
    static final List<String> SCRIPTS = List.of(
            "db/migration/V1__garage.sql",
            "db/vendor/sqlite/V2__what_happened_stays.sql",
            "db/migration/V3__car_and_track_files.sql",
            "db/vendor/sqlite/V4__files_stay.sql",
            "db/migration/V5__car_steps.sql",
            "db/vendor/sqlite/V6__steps_stay.sql",
            "db/migration/V7__drives.sql",
            "db/vendor/sqlite/V8__passes_stay.sql",
            "db/migration/V9__shelf.sql",
            "db/vendor/sqlite/V10__parts_stay.sql",
            "db/vendor/sqlite/V11__photos.sql",
            "db/vendor/sqlite/V12__own_lists.sql",
            "db/vendor/sqlite/V13__pauses_and_conditions.sql");

    /** The schema that this version ships. */
    static final SqliteSchema SHIPPED = new SqliteSchema(SCRIPTS);

    // Held, because the logging system forgets levels of loggers that nobody holds.
    private static final Logger FLYWAY_LOG = Logger.getLogger("org.flywaydb");

    private final List<Script> scripts;

    /** Where a database stands. */
    enum Standing {
        /** Nothing in it yet. */
        FRESH,
        /** Made by an older version: to be upgraded. */
        OLDER,
        /** As this version wants it. */
        CURRENT
    }

    private record Script(int version, String folder, int checksum) {}

    private record Applied(String version, int checksum, boolean success) {}

    /** The schema that these resources make, in order of their versions. */
    SqliteSchema(List<String> resources) {
        this.scripts = resources.stream().map(SqliteSchema::script).toList();
    }

    /** The newest version known. */
    int newest() {
        return scripts.get(scripts.size() - 1).version();
    }

    /**
     * Where a database stands.
     *
     * @param connection to the database; it is only read
     * @param file its name for messages
     * @throws StoreException if it is not ours, or of a newer version
     */
    Standing standing(Connection connection, String file) throws SQLException {
        List<String> tables = tables(connection);
        boolean ours = tables.contains("flyway_schema_history");
        if (!ours && !tables.isEmpty()) {
            throw foreign(file, "it holds other tables, such as " + tables.get(0));
        }
        List<Applied> history = ours ? history(connection) : List.of();
        if (history.isEmpty()) {
            return Standing.FRESH;
        }
        for (int i = 0; i < history.size(); i++) {
            requireShipped(history.get(i), i, file);
        }
        return history.size() == scripts.size() ? Standing.CURRENT : Standing.OLDER;
    }

    /** Brings a database to the newest version, all pending steps in one transaction. */
    void migrate(DataSource database) {
        FLYWAY_LOG.setLevel(Level.WARNING);
        Flyway.configure()
                .dataSource(database)
                .locations(scripts.stream()
                        .map(script -> "classpath:" + script.folder())
                        .distinct()
                        .toArray(String[]::new))
                .placeholders(Map.of("pk", "INTEGER PRIMARY KEY"))
                .failOnMissingLocations(true)
                .cleanDisabled(true)
                .group(true)
                .load()
                .migrate();
    }

    private void requireShipped(Applied applied, int place, String file) {
        int version = versionOf(applied, file);
        if (version > newest()) {
            throw new StoreException(
                    ("%s was made by a newer Lapwright, version %d; this one knows up to %d; your data was"
                                    + " not touched. Use the newer Lapwright, or set %s to another folder.")
                            .formatted(file, version, newest(), DataFolder.OVERRIDE));
        }
        if (!applied.success()) {
            throw foreign(file, "its upgrade to version " + version + " is marked as failed");
        }
        boolean same = place < scripts.size()
                && scripts.get(place).version() == version
                && scripts.get(place).checksum() == applied.checksum();
        if (!same) {
            throw foreign(file, "its tables of version " + version + " are not those that Lapwright makes");
        }
    }

    private static int versionOf(Applied applied, String file) {
        try {
            return Integer.parseInt(applied.version());
        } catch (NumberFormatException e) {
            throw foreign(file, "its version '" + applied.version() + "' is none of Lapwright's");
        }
    }

    private static StoreException foreign(String file, String why) {
        return new StoreException(
                "%s is not a Lapwright garage: %s. It was not touched. Move it away, or set %s to another folder."
                        .formatted(file, why, DataFolder.OVERRIDE));
    }

    private static List<String> tables(Connection connection) throws SQLException {
        List<String> tables = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("SELECT name FROM sqlite_master WHERE type IN ('table', 'view')"
                        + " AND name NOT LIKE 'sqlite~_%' ESCAPE '~' ORDER BY name")) {
            while (rows.next()) {
                tables.add(rows.getString(1));
            }
        }
        return tables;
    }

    /** Every row: with the newest versions last, so that a newer one is seen even if its older ones differ. */
    private static List<Applied> history(Connection connection) throws SQLException {
        List<Applied> history = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(
                        "SELECT version, checksum, success FROM flyway_schema_history ORDER BY installed_rank")) {
            while (rows.next()) {
                history.add(new Applied(String.valueOf(rows.getString(1)), rows.getInt(2), rows.getBoolean(3)));
            }
        }
        return history;
    }

    private static Script script(String resource) {
        Matcher name = SCRIPT.matcher(resource);
        if (!name.matches()) {
            throw new IllegalArgumentException("'" + resource + "' is not named like db/migration/V1__name.sql");
        }
        return new Script(Integer.parseInt(name.group(2)), name.group(1), checksum(resource));
    }

    /** As Flyway reckons it: CRC-32 of the lines without their ends, as UTF-8. */
    private static int checksum(String resource) {
        CRC32 crc = new CRC32();
        try (InputStream in = SqliteSchema.class.getClassLoader().getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalArgumentException("'" + resource + "' is not on the class path");
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                crc.update(line.getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("'" + resource + "' could not be read", e);
        }
        return (int) crc.getValue();
    }
}
