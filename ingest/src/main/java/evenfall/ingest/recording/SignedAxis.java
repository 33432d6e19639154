package evenfall.ingest.recording;

import java.util.Locale;
import java.util.Optional;

/** One of a sensor's six axis directions, written {@code +x} to {@code -z}. */
public enum SignedAxis {
    PLUS_X(0, 1),
    MINUS_X(0, -1),
    PLUS_Y(1, 1),
    MINUS_Y(1, -1),
    PLUS_Z(2, 1),
    MINUS_Z(2, -1);

    private final int axis;
    private final int sign;

    SignedAxis(int axis, int sign) {
        this.axis = axis;
        this.sign = sign;
    }

    /** 0 for x, 1 for y, 2 for z. */
    public int axis() {
        return axis;
    }

    /** 1 or -1. */
    public int sign() {
        return sign;
    }

    /** Reads {@code +z}, {@code z} or {@code -y}, in either case; empty for anything else. */
    public static Optional<SignedAxis> parse(String text) {
        String trimmed = text.strip().toLowerCase(Locale.ROOT);
        String signed = trimmed.length() == 1 ? "+" + trimmed : trimmed;
        for (SignedAxis value : values()) {
            if (value.toString().equals(signed)) {
                return Optional.of(value);
            }
        }
        return Optional.empty();
    }

    @Override
    public String toString() {
        return (sign > 0 ? "+" : "-") + "xyz".charAt(axis);
    }
}
