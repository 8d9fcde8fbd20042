package org.lapwright.app.web.track;

import java.util.List;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.web.view.ExampleView;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;

/**
 * All tracks.
 *
 * @param shell around it
 * @param rows the tracks by name
 * @param garage what there is of the example garage
 */
public record TrackListPage(Shell shell, List<Row> rows, ExampleView garage) {
    /** Copies the list. */
    public TrackListPage {
        rows = List.copyOf(rows);
    }

    /**
     * One track.
     *
     * @param name what it is called
     * @param detail lanes and length
     * @param link its page
     * @param example whether it belongs to the example garage
     */
    public record Row(String name, String detail, String link, boolean example) {
        /** The row of a kept track. */
        public static Row of(KeptFile file) {
            String detail = TrackFile.read(file.text())
                    .accepted()
                    .map(read -> detail(read.track()))
                    .orElse("its file cannot be used as it is");
            return new Row(file.name(), detail, TrackChoice.page(file.name()), file.example());
        }

        private static String detail(Track track) {
            Lane first = track.lanes().get(0);
            int count = track.lanes().size();
            return "%d %s, %s m on lane %s"
                    .formatted(
                            count, count == 1 ? "lane" : "lanes", Figures.fixed(track.lengthM(first), 2), first.name());
        }
    }
}
