package evenfall.report.log;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the coach said at one time of landings of a session: that they are part of the athlete's baseline, or are not any more.
 *
 * @param writtenAt when it was written, ISO 8601 with offset
 * @param source {@code command}, or the name of the table it came from
 * @param approvals for ranges of landings, in the order given; a later one goes before an earlier one
 */
public record ApprovalEntry(String writtenAt, String source, List<Approval> approvals) {

    public ApprovalEntry {
        approvals = List.copyOf(approvals);
    }

    /**
     * For one range of landings.
     *
     * @param first index of the first landing, from 1
     * @param last index of the last one
     * @param approved whether they are part of the baseline
     */
    public record Approval(int first, int last, boolean approved) {

        public Approval {
            RangeNote.requireRange(first, last);
        }
    }

    /** The indices of the landings that are part of the baseline once all entries are laid over one another. */
    public static Set<Integer> approved(List<ApprovalEntry> entries) {
        Set<Integer> approved = new TreeSet<>();
        for (ApprovalEntry entry : entries) {
            for (Approval approval : entry.approvals()) {
                for (int landing = approval.first(); landing <= approval.last(); landing++) {
                    if (approval.approved()) {
                        approved.add(landing);
                    } else {
                        approved.remove(landing);
                    }
                }
            }
        }
        return approved;
    }
}
