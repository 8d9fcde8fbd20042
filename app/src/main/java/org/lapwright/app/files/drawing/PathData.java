package org.lapwright.app.files.drawing;

/** Draws the {@code d} of a path: the grammar of SVG 1.1, §8.3.9, with the rules for arcs of its appendix F.6. */
final class PathData {
    private static final String COMMANDS = "MLHVCSQTAZ";

    private final NumberScanner in;
    private final Pen pen;
    private char last;
    private double controlX;
    private double controlY;

    private PathData(String text, Pen pen) {
        this.in = new NumberScanner(text);
        this.pen = pen;
    }

    /**
     * Draws as much as can be understood, as the standard asks for (appendix F.2).
     *
     * @return where understanding ended, counted from 0; -1 if it did not
     */
    static int draw(String text, Pen pen) {
        PathData data = new PathData(text, pen);
        try {
            return data.all() ? -1 : data.in.place();
        } catch (NumberScanner.NoNumber broken) {
            return data.in.place();
        }
    }

    private boolean all() {
        in.skipBlanks();
        while (!in.atEnd()) {
            char command = in.here();
            boolean known = COMMANDS.indexOf(Character.toUpperCase(command)) >= 0;
            if (!known || (last == 0 && Character.toUpperCase(command) != 'M')) {
                return false;
            }
            in.next();
            in.skipBlanks();
            commands(command);
            in.skipBlanks();
        }
        return true;
    }

    private void commands(char command) {
        if (Character.toUpperCase(command) == 'Z') {
            pen.close();
            last = 'Z';
            return;
        }
        char now = command;
        do {
            one(Character.toUpperCase(now), Character.isLowerCase(now));
            now = now == 'M' ? 'L' : now == 'm' ? 'l' : now;
        } while (in.hasMore());
    }

    private void one(char command, boolean relative) {
        double[] a = command == 'A' ? arcNumbers() : numbers(count(command));
        double x = pen.x();
        double y = pen.y();
        if (relative) {
            shift(command, a, x, y);
        }
        if (last == 'Z' && command != 'M') {
            pen.move(x, y);
        }
        switch (command) {
            case 'M' -> pen.move(a[0], a[1]);
            case 'L' -> pen.line(a[0], a[1]);
            case 'H' -> pen.line(a[0], y);
            case 'V' -> pen.line(x, a[0]);
            case 'C' -> cubic(a[0], a[1], a[2], a[3], a[4], a[5]);
            case 'S' -> cubic(mirrored(x, controlX, "CS"), mirrored(y, controlY, "CS"), a[0], a[1], a[2], a[3]);
            case 'Q' -> quadratic(a[0], a[1], a[2], a[3]);
            case 'T' -> quadratic(mirrored(x, controlX, "QT"), mirrored(y, controlY, "QT"), a[0], a[1]);
            default -> arc(a);
        }
        last = command;
    }

    private static int count(char command) {
        return switch (command) {
            case 'H', 'V' -> 1;
            case 'C' -> 6;
            case 'S', 'Q' -> 4;
            default -> 2;
        };
    }

    private double[] numbers(int count) {
        double[] numbers = new double[count];
        for (int i = 0; i < count; i++) {
            if (i > 0) {
                in.skipSeparator();
            }
            numbers[i] = in.number();
        }
        return numbers;
    }

    private double[] arcNumbers() {
        double[] numbers = new double[7];
        for (int i = 0; i < 7; i++) {
            if (i > 0) {
                in.skipSeparator();
            }
            numbers[i] = i == 3 || i == 4 ? (in.flag() ? 1 : 0) : in.number();
        }
        return numbers;
    }

    private static void shift(char command, double[] a, double x, double y) {
        switch (command) {
            case 'H' -> a[0] += x;
            case 'V' -> a[0] += y;
            case 'A' -> {
                a[5] += x;
                a[6] += y;
            }
            default -> {
                for (int i = 0; i < a.length; i += 2) {
                    a[i] += x;
                    a[i + 1] += y;
                }
            }
        }
    }

    /** The last control point seen from the other side; the place itself if the last command was of another kind. */
    private double mirrored(double place, double control, String kinds) {
        return kinds.indexOf(last) >= 0 ? 2 * place - control : place;
    }

    private void cubic(double fromX, double fromY, double intoX, double intoY, double toX, double toY) {
        pen.cubic(fromX, fromY, intoX, intoY, toX, toY);
        controlX = intoX;
        controlY = intoY;
    }

    private void quadratic(double overX, double overY, double toX, double toY) {
        pen.quadratic(overX, overY, toX, toY);
        controlX = overX;
        controlY = overY;
    }

    private void arc(double[] a) {
        double x = pen.x();
        double y = pen.y();
        for (double number : a) {
            Budget.checked(number);
        }
        if (x == a[5] && y == a[6]) {
            return;
        }
        boolean flat = Math.abs(a[0]) < 1e-9 || Math.abs(a[1]) < 1e-9;
        if (flat || Math.hypot(x - a[5], y - a[6]) < 1e-12) {
            pen.line(a[5], a[6]);
            return;
        }
        EllipseArc.between(pen, new double[] {a[0], a[1]}, Math.toRadians(a[2]), a[3] == 1, a[4] == 1, a[5], a[6])
                .draw(pen, a[5], a[6]);
    }
}
