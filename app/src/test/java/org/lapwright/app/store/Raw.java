package org.lapwright.app.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** Plain SQL on a garage's file, past the store. */
final class Raw {
    private Raw() {}

    static Connection connect(Path file) throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + file.toUri());
    }

    static void run(Path file, String... statements) throws SQLException {
        try (Connection connection = connect(file);
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
    }

    /** The first column of every row, as text. */
    static List<String> column(Path file, String query) throws SQLException {
        try (Connection connection = connect(file);
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(query)) {
            List<String> column = new ArrayList<>();
            while (rows.next()) {
                column.add(String.valueOf(rows.getString(1)));
            }
            return column;
        }
    }
}
