package evenfall.ingest.serial;

import java.util.Locale;

/**
 * A port of this machine and what is known of the device behind it, by which it is known again under another name.
 *
 * @param path such as {@code /dev/ttyACM0} or {@code COM3}
 * @param description what the device calls itself; empty if it says nothing
 * @param serialNumber the device's own number; empty if it has none
 * @param vendor number of its maker on USB, -1 if it has none
 * @param product number of its kind on USB, -1 if it has none
 */
public record PortIdentity(String path, String description, String serialNumber, int vendor, int product) {

    /** What the serial library says where nothing is known. */
    private static final String UNKNOWN = "unknown";

    public PortIdentity {
        description = known(description);
        serialNumber = known(serialNumber);
    }

    /** Whether nothing but the path tells this port from others. */
    public boolean nameless() {
        return serialNumber.isEmpty() && vendor < 0;
    }

    /** Whether {@code other} is the same device, or one that cannot be told from it, whatever its path. */
    public boolean sameDevice(PortIdentity other) {
        if (nameless() || other.nameless()) {
            return path.equals(other.path);
        }
        return vendor == other.vendor
                && product == other.product
                && serialNumber.equals(other.serialNumber)
                && description.equals(other.description);
    }

    private static String known(String text) {
        String plain = text.strip();
        return plain.toLowerCase(Locale.ROOT).equals(UNKNOWN) ? "" : plain;
    }
}
