package evenfall.report.log;

/**
 * One raw file of a session.
 *
 * @param role {@code pelvis}, {@code upper-back} or {@code layout}
 * @param name its name in the folder {@code raw}
 * @param original the name it came under
 * @param bytes its length
 * @param sha256 its checksum, 64 hexadecimal digits
 */
public record RawFile(String role, String name, String original, long bytes, String sha256) {

    public RawFile {
        if (name.isBlank()
                || name.equals(".")
                || name.equals("..")
                || name.indexOf('/') >= 0
                || name.indexOf('\\') >= 0) {
            throw new IllegalArgumentException("'" + name + "' is no plain name of a file");
        }
    }
}
