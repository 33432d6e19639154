package evenfall.report.deciding;

import java.util.Locale;

/** The ways on, in the order they are weighed: what is urgent first. */
public enum Choice {
    STOP,
    GO_LOWER,
    STAY,
    CHANGE_ONE,
    SAME_PLAN;

    /** The name in documents, such as {@code go-lower}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
