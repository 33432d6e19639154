/**
 * A block of training: sessions counted, their medians compared over weeks and between the feet at equal height, and the
 * height up to which form was held. Entry is {@link evenfall.report.block.BlockAnalysis}; landings come from the log or from
 * a {@link evenfall.report.block.TidyTable}. The session is the unit throughout.
 */
@NullMarked
package evenfall.report.block;

import org.jspecify.annotations.NullMarked;
