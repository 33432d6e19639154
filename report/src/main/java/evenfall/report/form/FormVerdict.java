package evenfall.report.form;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The verdict on one landing.
 *
 * @param form the verdict, or null where no question could be judged
 * @param reasons what speaks against it, worst first, those within their limit last; empty when all is well within limits
 * @param partial whether some measure that form is judged by is missing
 * @param peak how the peak compares with what is usual at the height, or null where that is not known
 */
public record FormVerdict(
        @Nullable Form form,
        List<Reason> reasons,
        boolean partial,
        @Nullable PeakForHeight peak) {

    /** No verdict: what was measured cannot be trusted. */
    public static final FormVerdict NONE = new FormVerdict(null, List.of(), true);

    /** A verdict where it is not known how hard the athlete usually lands. */
    public FormVerdict(@Nullable Form form, List<Reason> reasons, boolean partial) {
        this(form, reasons, partial, null);
    }

    public FormVerdict {
        reasons = List.copyOf(reasons);
    }
}
