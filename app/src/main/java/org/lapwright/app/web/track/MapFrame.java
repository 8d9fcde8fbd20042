package org.lapwright.app.web.track;

import org.lapwright.app.web.chart.Scale;
import org.lapwright.core.track.PlanBounds;
import org.lapwright.core.track.PlanPose;

/**
 * The part of the plan that a drawing shows, in millimetres to the right and down. Shapes are drawn in millimetres and grow with
 * the screen; words and marks are placed in percent of the drawing and do not.
 *
 * @param leftM left edge on the plan, m
 * @param topM upper edge on the plan, m
 * @param widthM width, m
 * @param heightM height, m
 */
record MapFrame(double leftM, double topM, double widthM, double heightM) {
    private static final double MARGIN_ALONG = 0.05;
    private static final double MARGIN_UP = 0.09;
    private static final double FLATTEST = 0.3;
    private static final double STEEPEST = 1.05;

    /** A frame with room for the labels around the lanes, neither a ribbon nor a tower. */
    static MapFrame around(PlanBounds bounds) {
        double size = Math.max(Math.max(bounds.widthM(), bounds.heightM()), 0.1);
        double width = bounds.widthM() + 2 * MARGIN_ALONG * size;
        double height = bounds.heightM() + 2 * MARGIN_UP * size;
        double framedWidth = Math.max(width, height / STEEPEST);
        double framedHeight = Math.max(height, framedWidth * FLATTEST);
        return new MapFrame(
                bounds.lowXM() - MARGIN_ALONG * size - (framedWidth - width) / 2,
                bounds.highYM() + MARGIN_UP * size + (framedHeight - height) / 2,
                framedWidth,
                framedHeight);
    }

    String viewBox() {
        return "0 0 %d %d".formatted(Math.round(1000 * widthM), Math.round(1000 * heightM));
    }

    /** A place in the drawing, mm. */
    String point(double xM, double yM) {
        return Math.round(1000 * (xM - leftM)) + " " + Math.round(1000 * (topM - yM));
    }

    String point(PlanPose pose) {
        return point(pose.xM(), pose.yM());
    }

    double shareX(PlanPose pose) {
        return (pose.xM() - leftM) / widthM;
    }

    double shareY(PlanPose pose) {
        return (topM - pose.yM()) / heightM;
    }

    String percentX(PlanPose pose) {
        return Scale.percent(100 * shareX(pose));
    }

    String percentY(PlanPose pose) {
        return Scale.percent(100 * shareY(pose));
    }
}
