package evenfall.report.table;

import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Impact;
import evenfall.fusion.landing.OverFeet;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Measures as cells for a person: units, sides in words, a dash for what is missing. */
final class Cells {

    static final String MISSING = "-";

    private Cells() {}

    static String metres(@Nullable Double value) {
        return value == null ? MISSING : String.format(Locale.ROOT, "%.2f m", value);
    }

    static String g(@Nullable Double value) {
        return value == null ? MISSING : String.format(Locale.ROOT, "%.1f g", value);
    }

    static String peak(Impact impact) {
        return (impact.clipped() ? "at least " : "") + g(impact.peakG());
    }

    static String sided(@Nullable Excursion angle, String plus, String minus) {
        if (angle == null) {
            return MISSING;
        }
        double change = angle.change();
        String size = String.format(Locale.ROOT, "%.1f°", Math.abs(change));
        String sigma = angle.sigma() < 0.05 ? " ± <0.1" : String.format(Locale.ROOT, " ± %.1f", angle.sigma());
        return ("0.0°".equals(size) ? size : (change > 0 ? plus : minus) + " " + size) + sigma;
    }

    static String overFeet(@Nullable OverFeet feet) {
        if (feet == null) {
            return MISSING;
        }
        Double foreAft = feet.foreAftLowest();
        Double lateral = feet.lateralLowest();
        if (foreAft == null || lateral == null) {
            return MISSING;
        }
        return sided(foreAft, " before", " behind") + ", " + sided(lateral, " left", " right");
    }

    private static String sided(double metres, String plus, String minus) {
        String size = metres(Math.abs(metres));
        return "0.00 m".equals(size) ? size : size + (metres > 0 ? plus : minus);
    }
}
