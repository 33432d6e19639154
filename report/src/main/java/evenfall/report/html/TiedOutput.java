package evenfall.report.html;

import evenfall.report.words.Ties;
import gg.jte.TemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import org.jspecify.annotations.Nullable;

/** What a template fills in, escaped as ever; in text for people numbers stay with their units. */
final class TiedOutput extends OwaspHtmlTemplateOutput {

    private boolean inAttribute;

    TiedOutput(TemplateOutput out) {
        super(out);
    }

    @Override
    public void setContext(String tagName, @Nullable String attributeName) {
        super.setContext(tagName, attributeName);
        inAttribute = attributeName != null;
    }

    @Override
    public void writeUserContent(String value) {
        super.writeUserContent(value == null || inAttribute ? value : Ties.tied(value));
    }
}
