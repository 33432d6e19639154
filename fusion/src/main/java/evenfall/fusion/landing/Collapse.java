package evenfall.fusion.landing;

/**
 * How fast the spine folds after contact.
 *
 * @param degPerS largest rate of spine flexion, deg/s
 * @param fastDegPerS how much larger it would be with what moves faster than most bodies fold: a stiff spine's jerk or the
 *     straps' rocking, which cannot be told apart, deg/s, not below 0
 */
record Collapse(double degPerS, double fastDegPerS) {}
