package org.lapwright.app.files.drawing;

import org.lapwright.app.files.Problem;

/**
 * One group of a DXF entity.
 *
 * @param line where it stands, from 1
 * @param code what it is
 * @param value as it stands
 */
record DxfGroup(int line, int code, String value) {
    /** Names, layers and colours do not matter here. */
    static boolean isGeometry(int code) {
        return code >= 10 && code <= 79 || code >= 210 && code <= 239;
    }

    double number() {
        NumberScanner in = new NumberScanner(value);
        try {
            double number = in.number();
            if (in.atEnd()) {
                return Budget.checked(number);
            }
        } catch (NumberScanner.NoNumber none) {
            // Said below.
        }
        throw new Trouble(new Problem(line + 1, value, "is not a number", "A decimal point may stand in it, no comma"));
    }
}
