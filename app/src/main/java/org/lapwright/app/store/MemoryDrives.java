package org.lapwright.app.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.lapwright.app.usecase.DriveStore.Drive;
import org.lapwright.app.usecase.DriveStore.DriveEvent;
import org.lapwright.app.usecase.DriveStore.DriveEvent.Passed;
import org.lapwright.app.usecase.DriveStore.DriveEvent.Pressed;
import org.lapwright.app.usecase.DriveStore.Mark;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.DriveStore.Written;

/** The drives of a {@link MemoryGarage}. */
final class MemoryDrives {
    private final List<Drive> drives = new ArrayList<>();
    private final Map<String, Long> requests = new HashMap<>();
    private final Set<Object> taken = new HashSet<>();

    private record Sent(long drive, String source, String boot, long sequence) {}

    Drive begin(NewDrive drive, String request, Instant at) {
        Long already = requests.get(request);
        if (already != null) {
            return numbered(already).orElseThrow();
        }
        Drive begun = new Drive(drives.size() + 1L, drive, at, List.of());
        drives.add(begun);
        requests.put(request, begun.id());
        return begun;
    }

    Optional<Drive> open() {
        return drives.isEmpty()
                ? Optional.empty()
                : Optional.of(drives.get(drives.size() - 1)).filter(drive -> !drive.isOver());
    }

    Optional<Drive> numbered(long id) {
        return id < 1 || id > drives.size() ? Optional.empty() : Optional.of(drives.get((int) id - 1));
    }

    Mark mark() {
        return new Mark(drives.size(), taken.size());
    }

    Written add(Drive drive, List<DriveEvent> events) {
        Mark before = mark();
        List<DriveEvent> fresh = new ArrayList<>();
        for (DriveEvent event : events) {
            if (taken.add(key(drive.id(), event))) {
                fresh.add(event);
            }
        }
        List<DriveEvent> all = new ArrayList<>(drive.events());
        all.addAll(fresh);
        drives.set((int) drive.id() - 1, new Drive(drive.id(), drive.fixed(), drive.startedAt(), all));
        return new Written(before, fresh, mark());
    }

    private static Object key(long drive, DriveEvent event) {
        return event instanceof Passed passed
                ? new Sent(
                        drive,
                        passed.pass().source(),
                        passed.pass().boot(),
                        passed.pass().sequence())
                : ((Pressed) event).requestKey();
    }
}
