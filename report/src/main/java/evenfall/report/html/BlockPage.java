package evenfall.report.html;

import evenfall.report.block.Block;
import evenfall.report.deciding.Outlook;
import evenfall.report.html.view.BlockView;
import evenfall.report.log.DiaryEntry;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;

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
        write(block, diary, null, out);
    }

    /**
     * The same with what stands first, and the next session.
     *
     * @param outlook what stands beside the measures, or null where nothing is known of it
     */
    public static void write(
            Block block, SortedMap<LocalDate, List<DiaryEntry>> diary, @Nullable Outlook outlook, Appendable out)
            throws IOException {
        out.append(Pages.render("block.jte", view(block, diary, outlook), "page.js"));
    }

    /** What the page shows, in words and pictures. */
    public static BlockView view(Block block, SortedMap<LocalDate, List<DiaryEntry>> diary, @Nullable Outlook outlook) {
        return new BlockViews(block, diary, outlook).view();
    }
}
