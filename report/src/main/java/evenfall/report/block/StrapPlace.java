package evenfall.report.block;

import evenfall.ingest.place.Place;

/**
 * A sensor that sat elsewhere in a session than in most sessions of the block.
 *
 * @param place where it is worn
 * @param offDeg by how much it was turned against the usual way it sits, deg
 * @param usualDeg by how much it is turned in half of the sessions, deg
 */
public record StrapPlace(Place place, double offDeg, double usualDeg) {}
