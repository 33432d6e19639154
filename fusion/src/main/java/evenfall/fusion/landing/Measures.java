package evenfall.fusion.landing;

/** Everything measured of one landing. */
public record Measures(Fall fall, Impact impact, Braking braking, Posture posture, Balance balance, Sigma sigma) {}
