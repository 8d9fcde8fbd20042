package org.lapwright.app.store;

import java.util.Locale;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.lapwright.app.usecase.OwnListStore.ListKind;

/** Reads and writes the owner's lists, inside a transaction that is open already. */
final class ListTables {
    private final Handle handle;

    ListTables(Handle handle) {
        this.handle = handle;
    }

    void keep(ListKind kind, String text, long at) {
        if (newest(kind).filter(text::equals).isEmpty()) {
            handle.createUpdate("INSERT INTO own_list (kind, content, saved_at) VALUES (:kind, :content, :at)")
                    .bind("kind", code(kind))
                    .bind("content", text)
                    .bind("at", at)
                    .execute();
        }
    }

    Optional<String> newest(ListKind kind) {
        return handle.createQuery("SELECT content FROM own_list WHERE kind = :kind ORDER BY id DESC LIMIT 1")
                .bind("kind", code(kind))
                .mapTo(String.class)
                .findOne();
    }

    private static String code(ListKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }
}
