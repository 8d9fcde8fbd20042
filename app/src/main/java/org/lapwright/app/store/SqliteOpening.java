package org.lapwright.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import org.flywaydb.core.api.FlywayException;
import org.lapwright.app.store.SqliteFaults.Safe;
import org.lapwright.app.store.SqliteSchema.Standing;
import org.lapwright.app.usecase.StoreException;

/**
 * What happens before a garage is used: is it ours, whole, of a version we know, free to be written, and up to date?
 *
 * <p>It is looked at through a connection that cannot write, so that what is refused is not touched.
 */
final class SqliteOpening {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss.SSS'Z'").withZone(ZoneOffset.UTC);

    private final SqliteDatabase database;
    private final SqliteSchema schema;
    private final SqliteFaults faults;

    SqliteOpening(SqliteDatabase database, SqliteSchema schema) {
        this.database = database;
        this.schema = schema;
        this.faults = new SqliteFaults(database.file());
    }

    /**
     * Leaves a garage of the newest version that can be written.
     *
     * @throws StoreException if that cannot be had, with why
     */
    void prepare() {
        try {
            Standing standing = standing();
            if (standing == Standing.OLDER) {
                SqliteBackup.make(
                        database,
                        "garage-before-version-%d-%s.db".formatted(schema.newest(), STAMP.format(Instant.now())));
            }
            if (standing != Standing.CURRENT) {
                migrate(standing == Standing.FRESH ? Safe.NOTHING_CHANGED : Safe.NOT_UPGRADED);
            }
            requireWritable();
        } catch (SQLException e) {
            throw faults.describe(e, Safe.NOTHING_CHANGED);
        } catch (IOException e) {
            throw new StoreException(
                    "%s could not be prepared: %s. Nothing was changed. See that the folder can be written and has free space."
                            .formatted(database.file(), e.getMessage()),
                    e);
        }
    }

    private Standing standing() throws SQLException, IOException {
        if (Files.isDirectory(database.file())) {
            throw new StoreException(("%s is a folder, not a garage. Nothing was changed. Move it away, or set %s to"
                            + " another folder.")
                    .formatted(database.file(), DataFolder.OVERRIDE));
        }
        if (database.isAbsent()) {
            return Standing.FRESH;
        }
        if (!database.hasHeader()) {
            throw faults.notADatabase();
        }
        try {
            return look();
        } catch (SQLException | StoreException e) {
            // Another program may have opened and closed the file under our eyes: a true fault shows again.
            return look();
        }
    }

    private Standing look() throws SQLException {
        try (Connection connection = database.inspector()) {
            Standing standing = schema.standing(connection, database.file().toString());
            String complaint = SqliteBackup.check(connection, "quick_check");
            if (!complaint.isEmpty()) {
                throw faults.damaged(complaint);
            }
            return standing;
        }
    }

    /** Another Lapwright may do the same at the same time: whoever comes second finds it done. */
    private void migrate(Safe safe) throws SQLException, IOException {
        try {
            schema.migrate(database.writing());
        } catch (FlywayException e) {
            if (standing() != Standing.CURRENT) {
                throw faults.describe(e, safe);
            }
        }
    }

    private void requireWritable() throws SQLException {
        try (Connection connection = database.writer();
                Statement statement = connection.createStatement()) {
            // Beginning to write is not enough: on a read-only file SQLite then quietly begins to read.
            statement.execute("BEGIN IMMEDIATE");
            statement.execute("UPDATE car SET name = name WHERE id IS NULL");
            statement.execute("ROLLBACK");
        }
    }
}
