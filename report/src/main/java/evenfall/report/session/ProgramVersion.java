package evenfall.report.session;

import org.jspecify.annotations.Nullable;

/** Which program made a result. */
public final class ProgramVersion {

    /** The program's name in results. */
    public static final String PROGRAM = "evenfall";

    private ProgramVersion() {}

    /** The version the jar states, or {@code unreleased} where classes run outside a jar. */
    public static String version() {
        @Nullable String stated = ProgramVersion.class.getPackage().getImplementationVersion();
        return stated == null ? "unreleased" : stated;
    }
}
