package org.lapwright.app.usecase.run;

import org.lapwright.app.usecase.DriveStore.NewDrive;

/**
 * Where a drive stands.
 *
 * @param id its number
 * @param fixed what was fixed before it
 * @param over whether it was kept or dropped
 * @param progress how far it has come
 */
public record Standing(long id, NewDrive fixed, boolean over, Progress progress) {
    /**
     * This state by a name, the same after a restart. Two states with one name look the same and mean the same: passes of other
     * lanes make no new one.
     */
    public String name() {
        return "%d-%d-%d-%d-%d-%d"
                .formatted(
                        id,
                        progress.presses(),
                        progress.run(),
                        progress.warmUpLeft(),
                        progress.lapsLeft(),
                        progress.lapOpen() ? 1 : 0);
    }
}
