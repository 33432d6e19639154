package evenfall.report.html.view;

/**
 * What every page carries with it.
 *
 * @param regular the typeface, base64 of a TrueType file
 * @param bold its bold
 * @param style the style sheet
 * @param script the page's few lines of script
 */
public record PageParts(String regular, String bold, String style, String script) {}
