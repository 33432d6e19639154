/**
 * Small text files by which a coach sets figures the program else takes from its own list: {@link
 * evenfall.report.setting.SettingList} says what one file may hold, {@link evenfall.report.setting.SettingText} reads and
 * writes it, {@link evenfall.report.setting.Settings} says what holds and where it came from.
 */
@NullMarked
package evenfall.report.setting;

import org.jspecify.annotations.NullMarked;
