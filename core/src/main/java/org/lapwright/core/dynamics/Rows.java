package org.lapwright.core.dynamics;

/**
 * Numbers for every element of a lane, row by row, in blocks of {@value #BLOCK} elements: row r of element e stands at
 * {@code block(e)[r + place(e)]}, where the row constants are multiples of {@value #BLOCK}.
 *
 * <p>Why so: a loop over one array with constant distances between its rows stays small enough for the compiler to
 * unroll and turn into vector instructions, where the same loop over a dozen arrays does not; and a block's rows stay in the
 * first-level cache. Measured: 3 to 4 times faster than one long array a row.
 */
final class Rows {
    /** Elements in a block. */
    static final int BLOCK = 128;

    /** From one row of a block to the next. */
    static final int STRIDE = BLOCK + 16;

    private static final int SHIFT = 7;
    private static final int MASK = BLOCK - 1;

    final double[][] blocks;
    private final int elements;

    Rows(int rows, int elements) {
        this.elements = elements;
        blocks = new double[(elements + MASK) / BLOCK][rows * STRIDE];
    }

    /** How many elements a block holds. */
    int count(int block) {
        return Math.min(BLOCK, elements - block * BLOCK);
    }

    double get(int row, int e) {
        return blocks[e >> SHIFT][row + (e & MASK)];
    }

    void set(int row, int e, double value) {
        blocks[e >> SHIFT][row + (e & MASK)] = value;
    }

    static int block(int e) {
        return e >> SHIFT;
    }

    static int place(int e) {
        return e & MASK;
    }
}
