package org.lapwright.app.files.drawing;

import java.awt.geom.Path2D;

/** Draws one shape; every number is checked and every stroke counted on its way in. */
final class Pen {
    private final Path2D.Double path = new Path2D.Double();
    private final Budget budget;
    private double x;
    private double y;
    private double startX;
    private double startY;
    private boolean down;

    Pen(Budget budget) {
        this.budget = budget;
    }

    double x() {
        return x;
    }

    double y() {
        return y;
    }

    Path2D path() {
        return path;
    }

    /** Whether nothing but moves was drawn. */
    boolean isEmpty() {
        return !down;
    }

    void move(double toX, double toY) {
        budget.take();
        go(toX, toY);
        startX = x;
        startY = y;
        path.moveTo(x, y);
    }

    void line(double toX, double toY) {
        stroke();
        go(toX, toY);
        path.lineTo(x, y);
    }

    void quadratic(double controlX, double controlY, double toX, double toY) {
        stroke();
        go(toX, toY);
        path.quadTo(Budget.checked(controlX), Budget.checked(controlY), x, y);
    }

    void cubic(double fromX, double fromY, double intoX, double intoY, double toX, double toY) {
        stroke();
        go(toX, toY);
        path.curveTo(Budget.checked(fromX), Budget.checked(fromY), Budget.checked(intoX), Budget.checked(intoY), x, y);
    }

    /** Back to the start of this part; what comes after starts there. */
    void close() {
        stroke();
        path.closePath();
        x = startX;
        y = startY;
    }

    private void stroke() {
        budget.take();
        down = true;
    }

    private void go(double toX, double toY) {
        x = Budget.checked(toX);
        y = Budget.checked(toY);
    }
}
