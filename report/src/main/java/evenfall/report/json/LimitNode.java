package evenfall.report.json;

import evenfall.report.form.Footing;
import evenfall.report.form.FormStandard;
import evenfall.report.form.Judged;
import evenfall.report.form.Limit;
import evenfall.report.form.OwnUsual;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What form is judged by, as a JSON array: one object a measure, and one a footing where what is usual depends on it. */
final class LimitNode {

    private LimitNode() {}

    static void write(ArrayNode array, FormStandard standard) {
        for (Judged judged : Judged.values()) {
            if (judged == Judged.PEAK) {
                continue;
            }
            List<Footing> footings = judged.hasSide() ? List.of(Footing.values()) : List.of(Footing.NOT_KNOWN);
            boolean alike = footings.stream()
                    .allMatch(footing -> standard.limit(judged, footing).usual() == null);
            for (Footing footing : alike ? footings.subList(0, 1) : footings) {
                ObjectNode node = array.addObject();
                node.put("measure", judged.measure().name());
                node.put("unit", judged.measure().unit());
                JsonText.put(node, "footing", alike || !judged.hasSide() ? null : footing.code());
                limit(node, standard.limit(judged, footing));
            }
        }
    }

    private static void limit(ObjectNode node, Limit limit) {
        JsonText.put(node, "low", limit.low());
        JsonText.put(node, "high", limit.high());
        node.put("source", limit.source().code());
        JsonText.put(node, "starting", limit.starting());
        OwnUsual usual = limit.usual();
        if (usual == null) {
            node.putNull("usual");
        } else {
            ObjectNode own = node.putObject("usual");
            JsonText.put(own, "median", usual.median());
            JsonText.put(own, "spread", usual.spread());
            own.put("landings", usual.landings());
            own.put("sessions", usual.sessions());
        }
    }
}
