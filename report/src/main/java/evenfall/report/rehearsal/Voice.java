package evenfall.report.rehearsal;

/** How one sensor puts its samples into bytes. */
interface Voice {

    /** The bytes of sample {@code i} of its stream; called once a sample, in order. */
    byte[] sample(int i);

    /** What it says of itself, at a moment of its stream, s; nothing in a form that has no such thing. */
    byte[] hello(double timeS);
}
