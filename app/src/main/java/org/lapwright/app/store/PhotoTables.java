package org.lapwright.app.store;

import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Reads and writes photos of the owner's cars, inside a transaction that is open already. */
final class PhotoTables {
    private static final String OF_A_CAR =
            " FROM car_photo p JOIN car ON car.id = p.car_id WHERE car.name_key = :key AND NOT car.example";

    private final Handle handle;

    PhotoTables(Handle handle) {
        this.handle = handle;
    }

    void keep(String car, byte[] jpeg, long at) {
        handle.createUpdate("INSERT INTO car_photo (car_id, jpeg, saved_at) VALUES (:car, :jpeg, :at)"
                        + " ON CONFLICT (car_id) DO UPDATE SET jpeg = excluded.jpeg, saved_at = excluded.saved_at")
                .bind("car", new Names(handle, at).car(car, false).id())
                .bind("jpeg", jpeg)
                .bind("at", at)
                .execute();
    }

    void remove(String car) {
        handle.createUpdate("DELETE FROM car_photo WHERE car_id IN"
                        + " (SELECT id FROM car WHERE name_key = :key AND NOT example)")
                .bind("key", NameKey.of(car))
                .execute();
    }

    boolean has(String car) {
        return handle.createQuery("SELECT EXISTS (SELECT 1" + OF_A_CAR + ")")
                .bind("key", NameKey.of(car))
                .mapTo(Boolean.class)
                .one();
    }

    Optional<byte[]> named(String car) {
        return handle.createQuery("SELECT p.jpeg" + OF_A_CAR)
                .bind("key", NameKey.of(car))
                .map((row, context) -> row.getBytes("jpeg"))
                .findOne();
    }
}
