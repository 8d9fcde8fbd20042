package org.lapwright.app.store;

import org.lapwright.app.usecase.GarageStore;

class MemoryGarageTest extends GarageStoreContract {
    @Override
    GarageStore open() {
        return new MemoryGarage();
    }
}
