package evenfall.report.json;

import evenfall.ingest.finding.Finding;
import evenfall.report.check.CheckedFile;
import evenfall.report.session.ProgramVersion;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes what a check of files found. */
public final class CheckDocument {

    private CheckDocument() {}

    /** The whole document, indented. */
    public static String of(List<CheckedFile> files) {
        ObjectNode root = JsonTree.object();
        root.put("program", ProgramVersion.PROGRAM);
        root.put("version", ProgramVersion.version());
        ArrayNode array = root.putArray("files");
        for (CheckedFile file : files) {
            ObjectNode node = array.addObject();
            node.put("file", file.file());
            JsonText.put(node, "rateHz", file.rateHz());
            JsonText.put(node, "durationS", file.durationS());
            node.put("samples", file.samples());
            ArrayNode findings = node.putArray("findings");
            for (Finding finding : file.findings()) {
                LandingsDocument.finding(findings.addObject(), finding);
            }
        }
        return JsonText.pretty(root);
    }
}
