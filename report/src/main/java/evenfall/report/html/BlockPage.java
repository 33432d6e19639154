package evenfall.report.html;

import evenfall.report.block.Block;
import evenfall.report.log.DiaryEntry;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.SortedMap;

/** The block page: weeks of training on one axis of days, in one HTML file that stands alone. */
public final class BlockPage {

    private BlockPage() {}

    /**
     * Writes the page of a block; to be kept as UTF-8.
     *
     * @param diary the athlete's diary by day; days outside the block are left out
     * @throws IOException if {@code out} fails
     */
    public static void write(Block block, SortedMap<LocalDate, List<DiaryEntry>> diary, Appendable out)
            throws IOException {
        out.append(Pages.render("block.jte", new BlockViews(block, diary).view()));
    }
}
