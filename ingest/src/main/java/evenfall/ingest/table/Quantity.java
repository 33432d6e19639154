package evenfall.ingest.table;

/** What a column of a table measures. */
enum Quantity {
    TIME("time", "s, ms, us or ISO-8601"),
    ACCELERATION("accelerometer", "g or m/s2"),
    TURN_RATE("gyroscope", "deg/s or rad/s"),
    OTHER("something else", "");

    private final String words;
    private final String units;

    Quantity(String words, String units) {
        this.words = words;
        this.units = units;
    }

    /** The name in sentences. */
    String words() {
        return words;
    }

    /** The units a person may write, for sentences. */
    String units() {
        return units;
    }
}
