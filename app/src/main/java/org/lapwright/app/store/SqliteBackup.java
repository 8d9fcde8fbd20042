package org.lapwright.app.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.lapwright.app.usecase.StoreException;

/**
 * A copy of the database, made by the database itself and opened to see that it is good.
 *
 * <p>Copying the live file by hand would miss what still stands in the write-ahead log. Source: sqlite.org, "How To
 * Corrupt An SQLite Database File", section 1.2, and "VACUUM INTO".
 */
final class SqliteBackup {
    private SqliteBackup() {}

    /** Where the backups of a garage lie. */
    static Path folderOf(Path database) {
        return database.resolveSibling("backups");
    }

    /**
     * Makes a backup: under a passing name first, so that a file with the final name is always whole.
     *
     * @param database what to copy
     * @param name name of the backup's file
     * @return the backup
     * @throws StoreException if the copy is not good
     */
    static Path make(SqliteDatabase database, String name) throws SQLException, IOException {
        Path folder = folderOf(database.file());
        DataFolder.createPrivate(folder);
        Path made = folder.resolve(name);
        Path passing = folder.resolve(name + ".part");
        Files.deleteIfExists(passing);
        try (Connection connection = database.inspector();
                PreparedStatement vacuum = connection.prepareStatement("VACUUM INTO ?")) {
            vacuum.setString(1, passing.toString());
            vacuum.execute();
        }
        verify(SqliteDatabase.of(passing));
        sync(passing);
        Files.move(passing, made, StandardCopyOption.ATOMIC_MOVE);
        sync(folder);
        return made;
    }

    private static void verify(SqliteDatabase copy) throws SQLException {
        try (Connection connection = copy.reader()) {
            String complaint = check(connection, "integrity_check");
            if (!complaint.isEmpty()) {
                throw new StoreException(("The backup %s is not good (%s). The garage was not touched."
                                + " Free some space or check the disk, then try again.")
                        .formatted(copy.file(), complaint));
            }
        }
    }

    /**
     * The first thing that SQLite finds wrong with a database.
     *
     * @param pragma {@code integrity_check}, or {@code quick_check} without the indexes
     * @return the complaint, empty if all is well
     */
    static String check(Connection connection, String pragma) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("PRAGMA " + pragma + "(1)")) {
            String answer = rows.next() ? rows.getString(1) : "no answer";
            return "ok".equals(answer) ? "" : answer;
        }
    }

    /** Folders have a name to make durable too, but not every system opens them. */
    private static void sync(Path path) throws IOException {
        if (Files.isDirectory(path) && !DataFolder.isPosix(path)) {
            return;
        }
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }
}
