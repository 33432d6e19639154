package evenfall.report.weeks;

/** The exact test of two shares (Fisher 1935, The Design of Experiments, chapter II). */
final class FisherExact {

    private FisherExact() {}

    /**
     * How often chance alone, the sums given, puts so many or more of what is so into the first group.
     *
     * @param so1 of the first group, those for whom it is so
     * @param n1 how many are in the first group
     * @param so2 of the second group, those for whom it is so
     * @param n2 how many are in the second group
     */
    static double atLeast(int so1, int n1, int so2, int n2) {
        int so = so1 + so2;
        double sum = 0;
        for (int k = so1; k <= Math.min(n1, so); k++) {
            if (so - k <= n2) {
                sum += Math.exp(logChoose(n1, k) + logChoose(n2, so - k) - logChoose(n1 + n2, so));
            }
        }
        return Math.min(1, sum);
    }

    private static double logChoose(int n, int k) {
        double sum = 0;
        for (int i = 1; i <= k; i++) {
            sum += Math.log((double) (n - k + i) / i);
        }
        return sum;
    }
}
