package evenfall.report.command;

import evenfall.ingest.finding.Severity;
import evenfall.report.session.Session;
import evenfall.report.table.SessionText;

/** Says what is wrong with a recording where the result itself has no place for it. */
final class FoundWrong {

    private FoundWrong() {}

    /** Says every finding that is an error, a sentence each. */
    static void say(Session session, Console console) {
        session.analysis().findings().stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .forEach(finding -> console.say(SessionText.finding(finding)));
    }
}
