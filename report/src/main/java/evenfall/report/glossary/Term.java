package evenfall.report.glossary;

import java.util.Locale;

/** Everything a page explains, in the order it is explained. */
public enum Term {
    PEAK,
    BRAKING,
    DEPTH,
    TIME,
    TURNED,
    LEVEL,
    LEAN,
    TWIST,
    BESIDE,
    BEHIND,
    STEPS,
    TILT,
    FOLDED,
    COLLAPSE,
    TRUNK,
    HEIGHT,
    SPEED,
    FLIGHT,
    UPPER_BACK,
    RISE,
    LOADING,
    LATERAL,
    FORE_AFT,
    FORM,
    FORM_HEIGHT;

    /** Its key in the bundle, and the end of its id on a page. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
