package evenfall.report.chart;

/** Markup that is being written. */
final class Markup {

    private final StringBuilder out = new StringBuilder(4096);

    /** As it is. */
    void raw(String markup) {
        out.append(markup);
    }

    /** One attribute of the element that is open. */
    void attribute(String name, String value) {
        out.append(' ').append(name).append("=\"");
        text(value);
        out.append('"');
    }

    /** Text with what markup keeps for itself written otherwise. */
    void text(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.append(c);
            }
        }
    }

    /** What was written so far. */
    @Override
    public String toString() {
        return out.toString();
    }
}
