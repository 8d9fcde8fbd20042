package org.lapwright.app.store;

import java.util.Map;
import org.lapwright.app.usecase.StoreException;

/** Creates the data folder that it is given and prints what came of it. */
final class CreatingChild {
    private CreatingChild() {}

    public static void main(String[] arguments) {
        try {
            System.out.println("created "
                    + DataFolder.of(Map.of(DataFolder.OVERRIDE, arguments[0]), "")
                            .create());
        } catch (StoreException e) {
            System.out.println("failed " + e.getMessage());
        }
    }
}
