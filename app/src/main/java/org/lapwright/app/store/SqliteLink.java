package org.lapwright.app.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.lapwright.app.store.SqliteFaults.Safe;
import org.lapwright.app.usecase.StoreException;

/**
 * One long-lived connection, used by one thread at a time.
 *
 * <p>After any failure of the storage the connection is dropped and the next call opens a new one from disk: what a
 * database believes of itself after a failed write or sync is not to be trusted.
 */
final class SqliteLink implements AutoCloseable {
    private final Source source;
    private final String begin;
    private final SqliteFaults faults;
    private final Safe safeBefore;
    private final Safe safeAtCommit;
    private final ReentrantLock lock = new ReentrantLock();
    private Optional<Connection> connection = Optional.empty();
    private long opened;
    private boolean closed;

    /** Where a connection comes from. */
    @FunctionalInterface
    interface Source {
        Connection connect() throws SQLException;
    }

    private SqliteLink(Source source, String begin, SqliteFaults faults, Safe safeBefore, Safe safeAtCommit) {
        this.source = source;
        this.begin = begin;
        this.faults = faults;
        this.safeBefore = safeBefore;
        this.safeAtCommit = safeAtCommit;
    }

    /** To read with: what was committed when the transaction began. */
    static SqliteLink forReading(Source source, SqliteFaults faults) {
        return new SqliteLink(source, "BEGIN", faults, Safe.NOTHING_CHANGED, Safe.NOTHING_CHANGED);
    }

    /** To write with: waits for other writers at the beginning, so that it never fails half-way for want of the lock. */
    static SqliteLink forWriting(Source source, SqliteFaults faults) {
        return new SqliteLink(source, "BEGIN IMMEDIATE", faults, Safe.NOT_KEPT, Safe.NOT_SURE);
    }

    /**
     * Does the work in one transaction: wholly, or not at all.
     *
     * <p>The transaction is opened and closed in SQL. Through JDBC, a roll-back that failed would be followed by going
     * back to automatic commits, and that commits what half a save has written.
     *
     * @throws StoreException if the storage failed, with what is safe now
     */
    <T> T inTransaction(HandleCallback<T, RuntimeException> work) {
        lock.lock();
        Safe safe = safeBefore;
        try (Handle handle = Jdbi.create(connection()).open()) {
            execute(handle, begin);
            T result = work.withHandle(handle);
            safe = safeAtCommit;
            execute(handle, "COMMIT");
            return result;
        } catch (JdbiException | SQLException e) {
            drop();
            throw faults.describe(e, safe);
        } catch (RuntimeException | Error e) {
            drop();
            throw e;
        } finally {
            lock.unlock();
        }
    }

    /** How many connections there have been; for whoever is in a transaction of this link. */
    long opened() {
        return opened;
    }

    private static void execute(Handle handle, String sql) throws SQLException {
        try (Statement statement = handle.getConnection().createStatement()) {
            statement.execute(sql);
        }
    }

    /** Drops the connection for good; harmless when repeated. */
    @Override
    public void close() {
        lock.lock();
        try {
            closed = true;
            drop();
        } finally {
            lock.unlock();
        }
    }

    private Connection connection() throws SQLException {
        if (closed) {
            throw new StoreException("The garage is closed. Nothing was changed. Start Lapwright again.");
        }
        if (connection.isEmpty()) {
            connection = Optional.of(source.connect());
            opened++;
        }
        return connection.get();
    }

    /** Closing rolls back whatever was open. */
    private void drop() {
        Optional<Connection> dropped = connection;
        connection = Optional.empty();
        dropped.ifPresent(SqliteLink::closeQuietly);
    }

    /** A connection that failed may fail to close as well; the first failure is the one to tell. */
    @SuppressWarnings("EmptyCatch")
    private static void closeQuietly(Connection dropped) {
        try {
            dropped.close();
        } catch (SQLException alreadyFailed) {
            // Told by the failure that led here.
        }
    }
}
