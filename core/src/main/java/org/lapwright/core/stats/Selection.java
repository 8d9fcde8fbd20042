package org.lapwright.core.stats;

/** Order statistics by partial sorting in place (Hoare's FIND with the median of three as pivot). */
public final class Selection {
    private Selection() {}

    /**
     * The k-th smallest of the first {@code n} values, which are rearranged.
     *
     * @param values at least {@code n} values, none NaN
     * @param n how many to look at
     * @param k rank from 0 to {@code n - 1}
     * @return the k-th smallest; afterwards no earlier element is greater and no later one smaller
     */
    public static double kth(double[] values, int n, int k) {
        int low = 0;
        int high = n - 1;
        while (low < high) {
            double pivot = medianOfThree(values[low], values[(low + high) >>> 1], values[high]);
            int i = low;
            int j = high;
            while (i <= j) {
                while (values[i] < pivot) {
                    i++;
                }
                while (values[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    double swap = values[i];
                    values[i++] = values[j];
                    values[j--] = swap;
                }
            }
            if (k <= j) {
                high = j;
            } else if (k >= i) {
                low = i;
            } else {
                return values[k];
            }
        }
        return values[k];
    }

    /**
     * The median of the first {@code n} values, which are rearranged. Allocates nothing.
     *
     * @param values at least {@code n} values, none NaN
     * @param n how many to look at, at least 1
     * @return the middle value, or the mean of the two middle ones
     */
    public static double median(double[] values, int n) {
        double upper = kth(values, n, n / 2);
        if (n % 2 == 1) {
            return upper;
        }
        double lower = values[0];
        for (int i = 1; i < n / 2; i++) {
            lower = Math.max(lower, values[i]);
        }
        return (lower + upper) / 2;
    }

    private static double medianOfThree(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
