/**
 * What a coach could say aloud, made from the numbers. Entry is {@link evenfall.report.sentence.SessionSentence}.
 */
@NullMarked
package evenfall.report.sentence;

import org.jspecify.annotations.NullMarked;
