package evenfall.fusion.accuracy;

import evenfall.fixtures.sensor.SensorModel;
import evenfall.ingest.place.Place;
import java.util.List;
import java.util.Set;

/**
 * One step of the ladder: how sensors that are perfect otherwise are spoilt.
 *
 * @param fault what is changed
 * @param level how far, in words
 * @param opening how the session is opened
 * @param ways each records the motions once; more than one where a fault has no size but kinds
 * @param known what the program is told
 */
record Rung(String fault, String level, LadderMotion.Opening opening, List<Way> ways, Set<Known> known) {

    /** What the program is told instead of having to find it. */
    enum Known {
        /** For sensors whose axes lie along the body's: the layout's {@code axes}. */
        MOUNTING,
        CLOCK
    }

    /** Spoils a sensor. */
    interface Way {

        /** The sensor worn there instead of a perfect one, for a motion. */
        SensorModel spoil(SensorModel perfect, Place place, LadderMotion motion);
    }

    Rung {
        ways = List.copyOf(ways);
        known = Set.copyOf(known);
    }

    static Rung of(String fault, String level, Way way) {
        return new Rung(fault, level, LadderMotion.Opening.FULL, List.of(way), Set.of());
    }

    /** Its name in the table of bounds. */
    String name() {
        return fault + " " + level;
    }
}
