/**
 * Sentences spoken aloud by a program the system has for it, if it has one. Enter by
 * {@link evenfall.report.speech.SpeechProgram#find}; {@link evenfall.report.speech.Speaker} speaks. Nothing here is ever a
 * reason to fail.
 */
@NullMarked
package evenfall.report.speech;

import org.jspecify.annotations.NullMarked;
