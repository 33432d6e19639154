package evenfall.report.check;

import java.util.List;

/**
 * Several files looked over.
 *
 * @param files one entry a file that can be used, in the order given
 * @param refusals why the others cannot, each sentence once
 */
public record Checks(List<CheckedFile> files, List<String> refusals) {

    public Checks {
        files = List.copyOf(files);
        refusals = List.copyOf(refusals);
    }
}
