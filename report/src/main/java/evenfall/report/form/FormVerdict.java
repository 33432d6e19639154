package evenfall.report.form;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The verdict on one landing.
 *
 * @param form the verdict, or null where no question could be judged
 * @param reasons what speaks against it, worst first; empty when all is well within limits
 * @param partial whether some measure that form is judged by is missing
 */
public record FormVerdict(@Nullable Form form, List<Reason> reasons, boolean partial) {

    public FormVerdict {
        reasons = List.copyOf(reasons);
    }
}
