package org.lapwright.app.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.lapwright.app.store.SqliteFaults.Safe;
import org.lapwright.app.usecase.StoreException;

/**
 * Looking after a garage on disk: copies of it, putting one back, and finding out whether all of it is sound. Any of it may be done while
 * the pages are open.
 */
public final class GarageUpkeep {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss.SSS'Z'").withZone(ZoneOffset.UTC);

    /** What is counted for the racer: the word, and the rows that are his. */
    private static final Map<String, String> COUNTED = counted();

    private static final int MOST_COMPLAINTS = 20;
    private static final int DAYS_KEPT = 7;
    private static final String DAILY = "daily-";

    private final SqliteDatabase database;
    private final SqliteFaults faults;

    /** Looks after the garage in a file. */
    public GarageUpkeep(Path garage) {
        database = SqliteDatabase.of(garage);
        faults = new SqliteFaults(database.file());
    }

    private static Map<String, String> counted() {
        Map<String, String> counted = new LinkedHashMap<>();
        counted.put("comparisons", "comparison");
        counted.put("runs", "run");
        counted.put("laps", "raw_lap");
        counted.put("car files", "car_file");
        counted.put("track files", "track_file");
        counted.put("set-ups logged", "car_step");
        counted.put("passes", "drive_event");
        return counted;
    }

    /**
     * What a check found.
     *
     * @param complaints what is wrong; none when all is sound
     * @param counts how much there is, by word
     */
    public record Findings(List<String> complaints, Map<String, Long> counts) {
        /** Copies both. */
        public Findings {
            complaints = List.copyOf(complaints);
            counts = new LinkedHashMap<>(counts);
        }

        /** Whether all is sound. */
        public boolean isSound() {
            return complaints.isEmpty();
        }
    }

    /** Whether there is a garage at all. */
    public boolean isThere() {
        try {
            return !database.isAbsent();
        } catch (IOException unreadable) {
            return true;
        }
    }

    /** A copy among the backups, named after the time; it is whole and was opened when this returns. */
    public Path backUp(Instant at) {
        requireThere();
        try {
            return SqliteBackup.make(database, "garage-%s.db".formatted(STAMP.format(at)));
        } catch (SQLException e) {
            throw faults.describe(e, Safe.NOTHING_CHANGED);
        } catch (IOException e) {
            throw unwritable(SqliteBackup.folderOf(database.file()), e);
        }
    }

    /**
     * A copy in a place of the racer's own.
     *
     * @throws StoreException if there is something already, or it cannot be written
     */
    public Path backUp(Path to, Instant at) {
        Path made = backUp(at);
        try {
            return Files.copy(made, to.toAbsolutePath().normalize());
        } catch (FileAlreadyExistsException e) {
            throw new StoreException(
                    "%s is there already. The backup was made as %s instead; give another name to have it elsewhere."
                            .formatted(to, made),
                    e);
        } catch (IOException e) {
            throw unwritable(to, e);
        }
    }

    /**
     * A copy for today, unless one was made since yesterday at this time; the newest {@value #DAYS_KEPT} of these are kept, backups that
     * the racer made himself are left alone.
     *
     * @return the copy, if one was made
     */
    public Optional<Path> backUpForToday(Instant at) {
        if (!isThere()) {
            return Optional.empty();
        }
        try {
            List<Path> daily = daily();
            String yesterday = DAILY + STAMP.format(at.minus(Duration.ofDays(1))) + ".db";
            if (!daily.isEmpty() && name(daily.get(daily.size() - 1)).compareTo(yesterday) > 0) {
                return Optional.empty();
            }
            Path made = SqliteBackup.make(database, DAILY + STAMP.format(at) + ".db");
            List<Path> all = daily();
            for (Path old : all.subList(0, Math.max(0, all.size() - DAYS_KEPT))) {
                Files.deleteIfExists(old);
            }
            return Optional.of(made);
        } catch (SQLException e) {
            throw faults.describe(e, Safe.NOTHING_CHANGED);
        } catch (IOException e) {
            throw unwritable(SqliteBackup.folderOf(database.file()), e);
        }
    }

    /** Oldest first: their names are their times. */
    private List<Path> daily() throws IOException {
        Path folder = SqliteBackup.folderOf(database.file());
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(
                            file -> name(file).startsWith(DAILY) && name(file).endsWith(".db"))
                    .sorted(Comparator.comparing(GarageUpkeep::name))
                    .toList();
        }
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    /** Reads every page and every row: what does not hold together, and how much there is. */
    public Findings check() {
        requireThere();
        try (Connection connection = database.reader()) {
            List<String> complaints =
                    new ArrayList<>(rows(connection, "PRAGMA integrity_check(" + MOST_COMPLAINTS + ")", 1));
            complaints.removeIf("ok"::equals);
            for (String orphan : rows(connection, "PRAGMA foreign_key_check", 1)) {
                complaints.add("a row of " + orphan + " belongs to nothing");
            }
            Map<String, Long> counts = new LinkedHashMap<>();
            for (Map.Entry<String, String> each : COUNTED.entrySet()) {
                counts.put(
                        each.getKey(),
                        Long.valueOf(rows(connection, "SELECT COUNT(*) FROM " + each.getValue(), 1)
                                .get(0)));
            }
            return new Findings(complaints, counts);
        } catch (SQLException e) {
            throw faults.describe(e, Safe.NOTHING_CHANGED);
        }
    }

    /**
     * Puts a backup in the place of the garage. The garage of now is backed up first; the database itself copies the pages in one
     * transaction (sqlite.org, "SQLite Backup API"), so that a kill leaves the one or the other whole.
     *
     * @param from the backup
     * @return the backup of what was there before; {@code from} itself when there was nothing
     * @throws StoreException if the backup is not sound or not ours; nothing was changed then
     */
    public Path restore(Path from, Instant at) {
        Path source = from.toAbsolutePath().normalize();
        if (!Files.isRegularFile(source)) {
            throw new StoreException("There is no backup %s. Nothing was changed. Backups lie in %s."
                    .formatted(from, SqliteBackup.folderOf(database.file())));
        }
        Path passing = database.file().resolveSibling("restoring.db");
        try {
            // A copy of it is looked at, upgraded and taken: the backup itself is not touched.
            Files.copy(source, passing, StandardCopyOption.REPLACE_EXISTING);
            SqliteGarage.open(passing).close();
            Findings findings = new GarageUpkeep(passing).check();
            if (!findings.isSound()) {
                throw new StoreException("%s is damaged (%s). Nothing was changed. Take another backup."
                        .formatted(from, findings.complaints().get(0)));
            }
            Path before = isThere() ? backUp(at) : source;
            copyFrom(passing);
            return before;
        } catch (SQLException e) {
            throw faults.describe(e, Safe.NOTHING_CHANGED);
        } catch (IOException e) {
            throw unwritable(passing, e);
        } finally {
            clear(passing);
        }
    }

    private void copyFrom(Path sound) throws SQLException {
        try (Connection connection = database.writer();
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("restore from '" + sound.toString().replace("'", "''") + "'");
        }
    }

    private static void clear(Path passing) {
        for (String ending : List.of("", "-wal", "-shm")) {
            try {
                Files.deleteIfExists(passing.resolveSibling(passing.getFileName() + ending));
            } catch (IOException left) {
                // What is left over is overwritten by the next one.
                passing.toFile().deleteOnExit();
            }
        }
    }

    private static List<String> rows(Connection connection, String query, int column) throws SQLException {
        List<String> found = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(query)) {
            while (rows.next() && found.size() < MOST_COMPLAINTS) {
                found.add(rows.getString(column));
            }
        }
        return found;
    }

    private void requireThere() {
        if (!isThere()) {
            throw new StoreException(
                    "There is no garage in %s yet. Start Lapwright once, or set %s to the folder that has yours."
                            .formatted(database.file().getParent(), DataFolder.OVERRIDE));
        }
    }

    private static StoreException unwritable(Path place, IOException e) {
        return new StoreException(
                "%s could not be written: %s. The garage was not touched. See that the folder is there, can be written and has space."
                        .formatted(place, e.getMessage()),
                e);
    }
}
