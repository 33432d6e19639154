package evenfall.report.html;

import evenfall.ingest.words.Words;
import evenfall.report.chart.Typeface;
import evenfall.report.html.view.PageParts;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;

/** Renders templates that were compiled with the program. */
final class Pages {

    private static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(
            null, ContentType.Html, Pages.class.getClassLoader(), "evenfall.report.html.templates");

    private Pages() {}

    /** The page of that template, with these scripts. */
    static String render(String template, Object view, String... scripts) throws IOException {
        StringBuilder script = new StringBuilder();
        for (String file : scripts) {
            script.append(text(file));
        }
        PageParts parts =
                new PageParts(base64(Typeface.REGULAR), base64(Typeface.BOLD), text("page.css"), script.toString());
        StringOutput out = new StringOutput(1 << 18);
        ENGINE.render(
                template,
                Map.of("view", view, "parts", parts, "words", Words.beside(Pages.class)),
                new TiedOutput(out));
        return out.toString();
    }

    private static String base64(Typeface typeface) {
        return Base64.getEncoder().encodeToString(typeface.bytes());
    }

    private static String text(String file) throws IOException {
        try (InputStream in = Pages.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IOException("the program's own file " + file + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
