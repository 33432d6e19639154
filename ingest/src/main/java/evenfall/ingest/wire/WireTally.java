package evenfall.ingest.wire;

import org.jspecify.annotations.Nullable;

/**
 * Counts what becomes of the bytes of one port, read in one form. What could not be read stays in doubt until something
 * could: only then it is sure that this form was meant at all, and what a rival made of the same bytes is forgotten.
 */
final class WireTally {

    private long good;
    private long damaged;
    private long unreadable;
    private long lost;
    private long unknown;
    private long doubtfulDamaged;
    private long doubtfulUnreadable;
    private long doubtfulLost;
    private boolean spoken;
    private boolean heard;
    private @Nullable WireTally rival;

    /** Sets two readers of the same bytes against each other. */
    static void oppose(WireTally one, WireTally other) {
        one.rival = other;
        other.rival = one;
    }

    void good() {
        good++;
        heard();
    }

    /** Something of a sensor was read whole, be it of use yet or not. */
    void heard() {
        heard = true;
        sure();
    }

    /** Whether anything of a sensor was ever read whole. */
    boolean everHeard() {
        return heard;
    }

    void unknown() {
        unknown++;
        sure();
    }

    void damaged() {
        doubtfulDamaged += mayBeSpoken() ? 1 : 0;
    }

    void unreadable() {
        doubtfulUnreadable += mayBeSpoken() ? 1 : 0;
    }

    void lost(long samples) {
        doubtfulLost += mayBeSpoken() ? samples : 0;
    }

    /** Something was read that only this form can be. */
    void sure() {
        damaged += doubtfulDamaged;
        unreadable += doubtfulUnreadable;
        lost += doubtfulLost;
        forget();
        spoken = true;
        if (rival != null) {
            rival.forget();
            rival.spoken = false;
        }
    }

    /** Whether bytes that cannot be read are to be held against this form: unless the other is spoken. */
    boolean mayBeSpoken() {
        return rival == null || !rival.spoken;
    }

    private void forget() {
        doubtfulDamaged = 0;
        doubtfulUnreadable = 0;
        doubtfulLost = 0;
    }

    /** What is sure or in doubt. */
    WireCounts counts() {
        return new WireCounts(
                good, damaged + doubtfulDamaged, unreadable + doubtfulUnreadable, lost + doubtfulLost, unknown);
    }

    /** What two rivals counted: all that is sure, and what is in doubt in the form that is spoken or, if none is, in one. */
    static WireCounts both(WireTally one, WireTally other) {
        boolean first = one.spoken
                || (!other.spoken && one.counts().bad() > other.counts().bad());
        return first ? one.counts().plus(other.sureCounts()) : other.counts().plus(one.sureCounts());
    }

    private WireCounts sureCounts() {
        return new WireCounts(good, damaged, unreadable, lost, unknown);
    }
}
