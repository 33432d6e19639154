package evenfall.report.json;

import evenfall.fusion.landing.Landing;
import evenfall.report.live.ToldComparison;
import evenfall.report.live.ToldDifference;
import evenfall.report.session.ProgramVersion;
import evenfall.report.session.SessionLanding;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes what was told while a session was recorded, and what of it is otherwise by the analysis of the whole. */
public final class ToldDocument {

    private ToldDocument() {}

    /**
     * The document, indented.
     *
     * @param landings as they were told
     * @param falls moments of the falls told, s
     */
    public static String of(List<SessionLanding> landings, List<Double> falls, ToldComparison comparison) {
        ObjectNode root = JsonTree.object();
        root.put("program", ProgramVersion.PROGRAM);
        root.put("version", ProgramVersion.version());
        ArrayNode told = root.putArray("told");
        landings.forEach(landing -> told.add(LandingNode.of(landing)));
        ArrayNode fallen = root.putArray("fallsS");
        falls.forEach(fallen::add);
        ArrayNode differences = root.putArray("differences");
        for (ToldDifference difference : comparison.differences()) {
            ObjectNode node = differences.addObject();
            node.put("landing", difference.landing());
            node.put("measure", difference.measure().name());
            JsonText.put(node, "told", difference.told());
            JsonText.put(node, "is", difference.is());
            JsonText.put(node, "sigma", difference.sigma());
        }
        contacts(root.putArray("goneS"), comparison.gone());
        contacts(root.putArray("untoldS"), comparison.untold());
        return JsonText.pretty(root);
    }

    private static void contacts(ArrayNode array, List<Landing> landings) {
        landings.forEach(landing -> array.add(landing.moments().contactS()));
    }
}
