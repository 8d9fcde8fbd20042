package org.lapwright.app.store;

import java.nio.file.Path;
import java.sql.SQLException;
import org.lapwright.app.usecase.StoreException;
import org.sqlite.SQLiteErrorCode;

/** Turns SQLite's result codes into sentences: what happened, what is safe, what to do. */
final class SqliteFaults {
    private static final int PRIMARY_CODE = 0xff;

    private final Path file;

    SqliteFaults(Path file) {
        this.file = file;
    }

    /** What is safe, by how far things had got. */
    enum Safe {
        /** Opening and reading. */
        NOTHING_CHANGED("Nothing was changed."),
        /** A save that failed before its end. */
        NOT_KEPT("This save was not kept; everything saved before it is safe."),
        /** A save that failed while it was being made durable. */
        NOT_SURE("Whether this save reached the disk is not sure; everything saved before it is safe, and the same save"
                + " sent again is kept only once."),
        /** An upgrade that was rolled back. */
        NOT_UPGRADED("The garage is as it was before the upgrade.");

        private final String sentence;

        Safe(String sentence) {
            this.sentence = sentence;
        }
    }

    /** The failure with its sentence. */
    StoreException describe(Exception failure, Safe safe) {
        SQLException cause = cause(failure);
        int code = cause.getErrorCode() & PRIMARY_CODE;
        return new StoreException("%s %s %s".formatted(happened(code, cause), safe.sentence, remedy(code)), failure);
    }

    /** Something wrong in the file, as found by a check. */
    StoreException damaged(String what) {
        return new StoreException("%s is damaged (%s). %s %s"
                .formatted(file, what, Safe.NOTHING_CHANGED.sentence, remedy(SQLiteErrorCode.SQLITE_CORRUPT.code)));
    }

    /** Rows that are well-formed to the database but make no sense to us. */
    StoreException damaged(RuntimeException nonsense) {
        StoreException damaged = damaged(String.valueOf(nonsense.getMessage()));
        damaged.initCause(nonsense);
        return damaged;
    }

    /** A file that is something else. */
    StoreException notADatabase() {
        SQLException found = new SQLException("", "", SQLiteErrorCode.SQLITE_NOTADB.code);
        return describe(found, Safe.NOTHING_CHANGED);
    }

    private String happened(int code, SQLException cause) {
        return switch (SQLiteErrorCode.getErrorCode(code)) {
            case SQLITE_FULL -> "The disk is full: %s cannot grow.".formatted(file);
            case SQLITE_IOERR -> "The disk reported an error at %s.".formatted(file);
            case SQLITE_READONLY, SQLITE_PERM, SQLITE_AUTH -> "%s may not be written.".formatted(file);
            case SQLITE_CANTOPEN -> "%s could not be opened.".formatted(file);
            case SQLITE_BUSY, SQLITE_LOCKED ->
                "Another program is using %s and did not let go in time.".formatted(file);
            case SQLITE_NOTADB -> "%s is not a garage: it is no SQLite database.".formatted(file);
            case SQLITE_CORRUPT -> "%s is damaged.".formatted(file);
            case SQLITE_NOMEM -> "The memory ran out while using %s.".formatted(file);
            default -> "%s failed: %s.".formatted(file, cause.getMessage());
        };
    }

    private String remedy(int code) {
        return switch (SQLiteErrorCode.getErrorCode(code)) {
            case SQLITE_FULL -> "Free some space, then try again.";
            case SQLITE_IOERR ->
                "Check the disk or card, then try again; if it goes on, move %s to another disk."
                        .formatted(file.getParent());
            case SQLITE_READONLY, SQLITE_PERM, SQLITE_AUTH, SQLITE_CANTOPEN ->
                "See that the folder %s is there, belongs to you and can be written, or set %s to another folder."
                        .formatted(file.getParent(), DataFolder.OVERRIDE);
            case SQLITE_BUSY, SQLITE_LOCKED -> "Close the other program, then try again.";
            case SQLITE_NOTADB -> "Move it away, or set %s to another folder.".formatted(DataFolder.OVERRIDE);
            case SQLITE_CORRUPT ->
                "Put it aside, and put the newest file from %s in its place.".formatted(SqliteBackup.folderOf(file));
            case SQLITE_NOMEM -> "Close other programs, then try again.";
            default ->
                "Try again; if it goes on, keep a copy of the folder %s and report it.".formatted(file.getParent());
        };
    }

    /** The database's own failure under those of the libraries, whose messages quote statements. */
    private static SQLException cause(Exception failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql) {
                return sql;
            }
        }
        return new SQLException(failure.getMessage(), "", SQLiteErrorCode.UNKNOWN_ERROR.code, failure);
    }
}
