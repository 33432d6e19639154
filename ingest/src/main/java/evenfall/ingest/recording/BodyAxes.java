package evenfall.ingest.recording;

/**
 * A known mounting: which sensor axis points forward and which points up on the body.
 *
 * @param forward the sensor axis along the body's x (back to front)
 * @param up the sensor axis along the body's z (foot to head); never on the same sensor axis as {@code forward}
 */
public record BodyAxes(SignedAxis forward, SignedAxis up) {

    public BodyAxes {
        if (forward.axis() == up.axis()) {
            throw new IllegalArgumentException("forward " + forward + " and up " + up + " lie on the same sensor axis");
        }
    }
}
