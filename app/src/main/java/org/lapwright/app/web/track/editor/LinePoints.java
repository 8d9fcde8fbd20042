package org.lapwright.app.web.track.editor;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.core.track.PlanPoint;
import org.lapwright.core.track.PointLayout;

/**
 * The points of a drawn line as they travel in the form: nobody types them, and nothing of them is lost.
 *
 * @param text {@code x y} in mm, apart by semicolons; empty when the track is made of pieces
 */
public record LinePoints(String text) {
    static final LinePoints NONE = new LinePoints("");
    private static final String FIELD = "line";

    static LinePoints of(PointLayout layout) {
        return of(layout.points());
    }

    private static LinePoints of(List<PlanPoint> points) {
        return new LinePoints(points.stream()
                .map(point -> plain(point.xMm()) + " " + plain(point.yMm()))
                .collect(Collectors.joining(";")));
    }

    private static String plain(double number) {
        return new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
    }

    static LinePoints from(Fields fields) {
        return new LinePoints(fields.text(FIELD));
    }

    void into(Map<String, String> fields) {
        if (isDrawn()) {
            fields.put(FIELD, text);
        }
    }

    /** Whether the track is a drawn line. */
    public boolean isDrawn() {
        return !text.isBlank();
    }

    /** How many points. */
    public int count() {
        return isDrawn() ? text.split(";").length : 0;
    }

    /**
     * The line.
     *
     * @throws IllegalArgumentException if the text is none of ours, or the points make no line
     */
    PointLayout layout() {
        List<PlanPoint> points = new ArrayList<>();
        for (String point : text.split(";")) {
            String[] numbers = point.strip().split(" ");
            if (numbers.length != 2) {
                throw new IllegalArgumentException(
                        "the points of the line did not come back whole; open the track again");
            }
            points.add(new PlanPoint(Double.parseDouble(numbers[0]), Double.parseDouble(numbers[1])));
        }
        return new PointLayout(points);
    }

    /** Driven the other way, from the same point on. */
    LinePoints reversed() {
        List<PlanPoint> points = new ArrayList<>(layout().points());
        Collections.reverse(points);
        Collections.rotate(points, 1);
        return of(points);
    }

    /** Begun so many points later. */
    LinePoints begunLater(int points) {
        List<PlanPoint> turned = new ArrayList<>(layout().points());
        Collections.rotate(turned, -points);
        return of(turned);
    }
}
