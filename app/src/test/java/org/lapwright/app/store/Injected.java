package org.lapwright.app.store;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;

/** Connections with something laid between the program and the database, at every statement and every commit. */
final class Injected {
    private Injected() {}

    /** What happens around one step. */
    interface Around {
        Object step(String what, Step database) throws SQLException;
    }

    /** The step itself. */
    interface Step {
        Object go() throws SQLException;
    }

    static Connection around(Connection connection, Around around) {
        return proxy(Connection.class, connection, (proxy, method, arguments) -> switch (method.getName()) {
            case "prepareStatement" -> {
                PreparedStatement statement = (PreparedStatement) call(method, connection, arguments);
                yield statement(PreparedStatement.class, statement, String.valueOf(arguments[0]), around);
            }
            case "createStatement" -> {
                Statement statement = (Statement) call(method, connection, arguments);
                yield statement(Statement.class, statement, "", around);
            }
            case "commit", "rollback", "close" ->
                around.step(method.getName(), () -> call(method, connection, arguments));
            default -> call(method, connection, arguments);
        });
    }

    private static <T extends Statement> T statement(Class<T> type, T statement, String sql, Around around) {
        return proxy(type, statement, (proxy, method, arguments) -> {
            if (!method.getName().startsWith("execute")) {
                return call(method, statement, arguments);
            }
            String what = arguments != null && arguments.length > 0 ? String.valueOf(arguments[0]) : sql;
            return around.step(what, () -> call(method, statement, arguments));
        });
    }

    private static <T> T proxy(Class<T> type, T target, InvocationHandler handler) {
        return type.cast(Proxy.newProxyInstance(
                Injected.class.getClassLoader(),
                new Class<?>[] {type},
                (proxy, method, arguments) -> method.getDeclaringClass() == Object.class
                        ? call(method, target, arguments)
                        : handler.invoke(proxy, method, arguments)));
    }

    private static Object call(Method method, Object target, Object[] arguments) throws SQLException {
        try {
            return method.invoke(target, arguments);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof SQLException sql) {
                throw sql;
            }
            throw new IllegalStateException(method.getName(), e.getCause());
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }
}
