package org.lapwright.app.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.function.UnaryOperator;
import javax.sql.DataSource;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * The database file and the ways to connect to it.
 *
 * <p>WAL with {@code synchronous=FULL}: a commit is on disk when it returns. Sources: sqlite.org, "Write-Ahead Logging"
 * and "PRAGMA synchronous".
 *
 * @param file the file, absolute
 * @param busyMillis how long to wait for another program, ms
 * @param wrapper laid around every connection; tests make it fail
 */
record SqliteDatabase(Path file, int busyMillis, UnaryOperator<Connection> wrapper) {
    private static final byte[] HEADER = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
    private static final int DEFAULT_BUSY_MILLIS = 5_000;

    static SqliteDatabase of(Path file) {
        return new SqliteDatabase(file.toAbsolutePath().normalize(), DEFAULT_BUSY_MILLIS, connection -> connection);
    }

    /** Whether there is nothing yet: no file, or an empty one. */
    boolean isAbsent() throws IOException {
        return !Files.exists(file) || Files.isRegularFile(file) && Files.size(file) == 0;
    }

    /** Whether the file begins as every SQLite database does; SQLite itself takes a few stray bytes for an empty one. */
    boolean hasHeader() throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return Arrays.equals(in.readNBytes(HEADER.length), HEADER);
        }
    }

    /** To write with. */
    Connection writer() throws SQLException {
        return writing().getConnection();
    }

    /** Where connections to write with come from. */
    DataSource writing() {
        SQLiteConfig config = config();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        return source(config, "");
    }

    /**
     * To read with, beside the writer: sees what was committed when its transaction began, and alters nothing. It could
     * write, because only such a connection tidies up the log when it is the last to close.
     */
    Connection reader() throws SQLException {
        Connection connection = source(config(), "").getConnection();
        try (Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA query_only = ON");
            return connection;
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
    }

    /**
     * To look at a file of which nothing is known yet. Cannot write; and where nobody else has the file open, which
     * would show by a log beside it, it makes no files of its own either.
     */
    Connection inspector() throws SQLException {
        SQLiteConfig config = config();
        config.setReadOnly(true);
        boolean inUse = Files.exists(beside("-wal")) || Files.exists(beside("-journal"));
        return source(config, inUse ? "" : "?immutable=1").getConnection();
    }

    private Path beside(String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }

    private SQLiteConfig config() {
        SQLiteConfig config = new SQLiteConfig();
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        // Without these, INSERT OR REPLACE would delete past the triggers that forbid deleting.
        config.enableRecursiveTriggers(true);
        config.setBusyTimeout(busyMillis);
        return config;
    }

    /** As a URI, so that no character of a folder's name is taken for a setting. */
    private DataSource source(SQLiteConfig config, String query) {
        SQLiteDataSource source = new SQLiteDataSource(config) {
            @Override
            public Connection getConnection() throws SQLException {
                return wrapper.apply(super.getConnection());
            }
        };
        source.setUrl("jdbc:sqlite:" + file.toUri() + query);
        return source;
    }
}
