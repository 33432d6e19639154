/**
 * What each measure is, in plain words: what it says, how it is measured, what is usual and what it cannot say. Entry is
 * {@link evenfall.report.glossary.Glossary}; the words lie beside it, so that pages and documents explain alike.
 */
@NullMarked
package evenfall.report.glossary;

import org.jspecify.annotations.NullMarked;
