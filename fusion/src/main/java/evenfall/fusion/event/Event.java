package evenfall.fusion.event;

/**
 * One found event, with its moments to within some tens of milliseconds; the landing package refines them.
 *
 * @param kind what it is
 * @param count contacts in a run of steps, 1 for other kinds
 * @param startS where the way down (or the first step) begins: about take-off, s on the pelvis's clock
 * @param contactS about first contact, s
 * @param peakS the pelvis resultant's peak (the largest of a run), s
 * @param endS where downward speed has been stopped (or the last contact of a run ends), s
 */
public record Event(EventKind kind, int count, double startS, double contactS, double peakS, double endS) {}
