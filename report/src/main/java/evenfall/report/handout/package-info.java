/**
 * What is handed out on paper: a session and a block as the coach looks at them, and the athlete's own sheet. The words and
 * pictures are those of the pages.
 */
@NullMarked
package evenfall.report.handout;

import org.jspecify.annotations.NullMarked;
