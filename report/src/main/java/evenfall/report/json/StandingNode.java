package evenfall.report.json;

import evenfall.report.heed.OpenPain;
import evenfall.report.heed.OpenSign;
import evenfall.report.heed.Standing;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes what stands first. */
final class StandingNode {

    private StandingNode() {}

    static void write(ObjectNode node, Standing standing) {
        JsonText.putAll(node, "sentences", standing.sentences());
        node.put("stop", standing.stops());
        JsonText.put(node, "clinicianLimit", standing.clinicianLimit());
        ArrayNode pain = node.putArray("openPain");
        for (OpenPain open : standing.pain()) {
            ObjectNode each = pain.addObject();
            each.put("region", open.region());
            each.put("size", open.size());
            each.put("since", open.since().toString());
            each.put("last", open.last().toString());
        }
        ArrayNode signs = node.putArray("openSigns");
        for (OpenSign open : standing.signs()) {
            ObjectNode each = signs.addObject();
            each.put("sign", open.sign());
            each.put("since", open.since().toString());
        }
        node.put("unreadable", standing.unreadable());
    }
}
