package evenfall.report.rehearsal;

/** Where a rehearsal stands in time. */
public interface Pace {

    /** Time since the beginning, s of the recording. */
    double nowS();

    /** Waits a little, since nothing is due. */
    void rest() throws InterruptedException;

    /** So many times as fast as it was, from now on. */
    static Pace times(double speed) {
        long start = System.nanoTime();
        return new Pace() {
            @Override
            public double nowS() {
                return (System.nanoTime() - start) * 1e-9 * speed;
            }

            @Override
            public void rest() throws InterruptedException {
                Thread.sleep(2);
            }
        };
    }
}
