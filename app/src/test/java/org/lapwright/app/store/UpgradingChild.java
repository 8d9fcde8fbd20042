package org.lapwright.app.store;

import java.nio.file.Path;
import java.util.List;

/** Opens the garage in a file as a later version would that has two more steps; prints when it begins and when it is done. */
final class UpgradingChild {
    private UpgradingChild() {}

    /** The present steps and two that a later version might have. */
    static SqliteSchema later() {
        return new SqliteSchema(List.of(
                "db/migration/V1__garage.sql",
                "db/vendor/sqlite/V2__what_happened_stays.sql",
                "db/upgrade/V3__colour.sql",
                "db/upgrade/V4__much_to_do.sql"));
    }

    public static void main(String[] arguments) {
        System.out.println("begin");
        SqliteGarage.open(SqliteDatabase.of(Path.of(arguments[0])), later()).close();
        System.out.println("done");
    }
}
