package evenfall.ingest.place;

import evenfall.ingest.words.Words;

/** Where on the body a sensor is strapped. */
public enum Place {
    /** Over the sacrum. */
    PELVIS("pelvis"),
    /** Between the shoulder blades. */
    UPPER_BACK("upper-back");

    private static final Words WORDS = Words.beside(Place.class);

    private final String code;

    Place(String code) {
        this.code = code;
    }

    /** The name in files and results, such as {@code upper-back}. */
    public String code() {
        return code;
    }

    /** The name in sentences, such as {@code upper back}. */
    public String words() {
        return WORDS.say("place." + code);
    }
}
