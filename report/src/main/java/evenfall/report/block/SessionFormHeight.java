package evenfall.report.block;

import evenfall.report.log.SessionDate;
import java.util.List;

/**
 * The height up to which form was held in one session alone.
 *
 * @param date the session
 * @param height the height, or why there is none
 */
public record SessionFormHeight(SessionDate date, FormHeight height) {

    /** One a session of a block, in order of time. */
    public static List<SessionFormHeight> of(Block block) {
        return block.sessions().stream().map(session -> of(block, session)).toList();
    }

    /** That of one session of a block. */
    public static SessionFormHeight of(Block block, BlockSession session) {
        return new SessionFormHeight(
                session.date(),
                FormHeightFinder.find(block.landings().stream()
                        .filter(landing -> landing.date().equals(session.date()))
                        .toList()));
    }
}
