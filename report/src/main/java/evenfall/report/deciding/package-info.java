/**
 * What speaks for and against each of five ways on with the next session: by the data, the diary and the coach's own rules. The
 * program argues; the coach decides. Entry is {@link evenfall.report.deciding.NextSession}.
 */
@NullMarked
package evenfall.report.deciding;

import org.jspecify.annotations.NullMarked;
