package org.lapwright.app.usecase.run;

import java.util.List;
import org.lapwright.app.usecase.DriveStore.Drive;
import org.lapwright.app.usecase.DriveStore.DriveEvent;
import org.lapwright.app.usecase.DriveStore.DriveEvent.Pressed;
import org.lapwright.app.usecase.DriveStore.Mark;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.DriveStore.Press;

/**
 * A drive followed event by event, so that a pass costs the same in the tenth hour as in the first minute. It keeps laps, not
 * passes.
 */
final class Following {
    private final long id;
    private final NewDrive fixed;
    private final Reckoning reckoning;
    private Mark mark;
    private boolean over;

    /** Follows {@code drive}, all of whose events up to {@code mark} are in it. */
    Following(Drive drive, Mark mark) {
        this.id = drive.id();
        this.fixed = drive.fixed();
        this.reckoning = new Reckoning(fixed);
        this.mark = mark;
        take(drive.events(), mark);
    }

    long id() {
        return id;
    }

    Mark mark() {
        return mark;
    }

    void take(List<DriveEvent> events, Mark now) {
        for (DriveEvent event : events) {
            reckoning.take(event);
            over |= event instanceof Pressed pressed && ends(pressed.press());
        }
        mark = now;
    }

    private static boolean ends(Press press) {
        return press == Press.KEPT || press == Press.DROPPED;
    }

    Standing standing() {
        return new Standing(id, fixed, over, reckoning.progress());
    }
}
