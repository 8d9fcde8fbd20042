package org.lapwright.app.store;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.lapwright.app.usecase.GarageStore;

class SqliteGarageTest extends GarageStoreContract {
    @TempDir
    Path folder;

    @Override
    GarageStore open() throws IOException {
        return SqliteGarage.open(Garages.emptyIn(folder));
    }
}
