package evenfall.ingest.table;

import evenfall.ingest.words.Words;

/** What a column of a table measures. */
enum Quantity {
    TIME("time"),
    ACCELERATION("accelerometer"),
    TURN_RATE("gyroscope"),
    OTHER("other");

    private static final Words WORDS = Words.beside(Quantity.class);

    private final String key;

    Quantity(String key) {
        this.key = key;
    }

    /** The name in sentences. */
    String words() {
        return WORDS.say("quantity." + key);
    }

    /** The units a person may write, for sentences. */
    String units() {
        return WORDS.say("units." + key);
    }
}
