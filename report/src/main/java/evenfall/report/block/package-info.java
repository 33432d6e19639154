/**
 * A block of training: sessions counted and their medians compared over weeks. Entry is {@link
 * evenfall.report.block.BlockAnalysis}; landings come from the log or from a {@link evenfall.report.block.TidyTable}.
 *
 * <p>What this version does not work out is null with a reason in words: comparing sides, comparing at equal height,
 * and the height up to which form is held.
 */
@NullMarked
package evenfall.report.block;

import org.jspecify.annotations.NullMarked;
