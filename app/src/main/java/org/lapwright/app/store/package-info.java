/**
 * Where the garage is kept: on disk in one SQLite file, or in memory.
 *
 * <p>Start at {@link org.lapwright.app.store.SqliteGarage} and {@link org.lapwright.app.store.DataFolder}; both stores
 * pass one contract test. SQL that any database runs is in {@code ComparisonWriter}, {@code ComparisonReader} and
 * {@code db/migration}; what is SQLite's own is in the classes named after it and {@code db/vendor/sqlite}. Tables and
 * promises: docs/model/store.md.
 */
package org.lapwright.app.store;
