package evenfall.ingest.place;

/** Where on the body a sensor is strapped. */
public enum Place {
    /** Over the sacrum. */
    PELVIS("pelvis", "pelvis"),
    /** Between the shoulder blades. */
    UPPER_BACK("upper-back", "upper back");

    private final String code;
    private final String words;

    Place(String code, String words) {
        this.code = code;
        this.words = words;
    }

    /** The name in files and results, such as {@code upper-back}. */
    public String code() {
        return code;
    }

    /** The name in sentences, such as {@code upper back}. */
    public String words() {
        return words;
    }
}
