package evenfall.ingest.recording;

/** The acceleration that one g stands for. */
public final class Gravity {

    /** Standard gravity, m/s²: exact by definition (3rd General Conference on Weights and Measures, 1901; ISO 80000-3). */
    public static final double STANDARD = 9.80665;

    private Gravity() {}
}
