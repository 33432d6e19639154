package evenfall.report.html;

import evenfall.report.form.Reason;
import evenfall.report.session.SessionLanding;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which limits a landing passed, and which landing passed most: the one most worth talking about. */
final class MostPassed {

    private MostPassed() {}

    /** The first of those that passed most limits, even if none passed any; empty where no landing counts. */
    static Optional<SessionLanding> of(List<SessionLanding> landings) {
        return landings.stream()
                .filter(event -> !event.note().leftOut())
                .max(Comparator.comparingInt(
                                (SessionLanding event) -> limits(event).size())
                        .thenComparing(event -> -event.landing().index()));
    }

    /** What a landing passed, a clause each. */
    static List<String> limits(SessionLanding event) {
        return event.verdict() == null
                ? List.of()
                : event.verdict().reasons().stream()
                        .filter(Reason::over)
                        .map(Reason::text)
                        .toList();
    }
}
