package evenfall.report.form;

/** Which way a measure is a fault. */
public enum Way {
    /** The more the worse. */
    MORE,
    /** The further below zero the worse. */
    LESS,
    /** The further from zero the worse, to either side. */
    EITHER;

    /** How large a value is in the direction that is a fault. */
    public double size(double value) {
        return switch (this) {
            case MORE -> value;
            case LESS -> -value;
            case EITHER -> Math.abs(value);
        };
    }
}
