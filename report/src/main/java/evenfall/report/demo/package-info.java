/**
 * The demo: the invented block through the same import and pages as real recordings. Entry is {@link
 * evenfall.report.demo.DemoRun}.
 */
@NullMarked
package evenfall.report.demo;

import org.jspecify.annotations.NullMarked;
