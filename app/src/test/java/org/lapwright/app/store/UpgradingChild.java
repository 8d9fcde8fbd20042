package org.lapwright.app.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Opens the garage in a file as a later version would that has two more steps; prints when it begins and when it is done. */
final class UpgradingChild {
    private UpgradingChild() {}

    /** The present steps and two that a later version might have. */
    static SqliteSchema later() {
        List<String> scripts = new ArrayList<>(SqliteSchema.SCRIPTS);
        scripts.add("db/upgrade/V98__colour.sql");
        scripts.add("db/upgrade/V99__much_to_do.sql");
        return new SqliteSchema(scripts);
    }

    public static void main(String[] arguments) {
        System.out.println("begin");
        SqliteGarage.open(SqliteDatabase.of(Path.of(arguments[0])), later()).close();
        System.out.println("done");
    }
}
