/**
 * What must be heeded before the next drop, and cannot be switched off: pain and warning signs that are open by the diary, and
 * what a clinician limits. Entry is {@link evenfall.report.heed.Standing}.
 */
@NullMarked
package evenfall.report.heed;

import org.jspecify.annotations.NullMarked;
