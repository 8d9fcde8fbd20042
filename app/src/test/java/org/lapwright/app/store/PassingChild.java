package org.lapwright.app.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.lapwright.app.usecase.DriveStore.Drive;
import org.lapwright.app.usecase.DriveStore.DriveEvent.Passed;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.laps.pass.PassClock;
import org.lapwright.core.laps.pass.PassStamp;
import org.lapwright.core.trial.session.RunPlan;

/**
 * Opens the garage in a file and takes passes for its drive until it is killed or the storage fails.
 *
 * <p>Prints {@code try N} before it takes pass N and {@code taken N} once that is acknowledged.
 */
final class PassingChild {
    private PassingChild() {}

    public static void main(String[] arguments) {
        try (SqliteGarage store = SqliteGarage.open(Path.of(arguments[0]))) {
            NewDrive fixed = new NewDrive("Dunlin", "", "Shed", "", 1, "", "", RunPlan.parse("AB x 10"), 0);
            Drive drive = store.begin(fixed, "begin", Instant.EPOCH);
            for (long number = Long.parseLong(arguments[1]); ; number++) {
                System.out.println("try " + number);
                store.happened(drive.id(), List.of(new Passed(pass(number))), Instant.EPOCH);
                System.out.println("taken " + number);
            }
        } catch (StoreException e) {
            System.out.println("failed " + e.getMessage());
        }
    }

    static Pass pass(long number) {
        return new Pass("gate", "boot", number, 1, 0, new PassStamp(PassClock.DEVICE, 6_000_000_000L * number, 0, 0));
    }
}
