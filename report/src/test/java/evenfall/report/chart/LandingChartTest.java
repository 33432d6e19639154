package evenfall.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.landing.LandingTrace;
import evenfall.fusion.landing.Moments;
import evenfall.fusion.landing.Side;
import evenfall.report.form.Form;
import evenfall.report.session.InventedSessions;
import evenfall.report.session.SessionLanding;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class LandingChartTest {

    private final SessionLanding landing = InventedSessions.of(3, 7).landings().get(2);
    private final LandingTrace trace = Objects.requireNonNull(landing.trace());
    private final LandingScale scale = LandingScale.over(List.of(trace));

    @Test
    void sameNumbers_giveTheSameBytes() {
        Moments moments = landing.landing().moments();

        assertThat(new LandingChart(scale)
                        .svg("a", 3, trace, moments, Map.of(), List.of("frame"))
                        .markup())
                .isEqualTo(new LandingChart(scale)
                        .svg("a", 3, trace, moments, Map.of(), List.of("frame"))
                        .markup());
    }

    @Test
    void drawing_isWellFormed_small_andNamesItsLinesAndMoments() throws Exception {
        String markup = new LandingChart(scale)
                .svg("a", 3, trace, landing.landing().moments(), Map.of(), List.of("frame"))
                .markup();

        assertThat(markup).hasSizeLessThan(30_000);
        assertThat(texts(parse(markup)))
                .contains("take-off", "contact", "peak", "lowest", "settled")
                .contains("pelvis", "upper back", "trunk", "twist");
        assertThat(texts(parse(new LandingChart(scale).frame("frame").markup())))
                .contains("left 10", "right 10", "seconds from contact", "Speed of the pelvis, m/s");
    }

    @Test
    void ids_beginWithTheDrawings() throws Exception {
        NodeList all = parse(new LandingChart(scale)
                        .svg("landing-3-chart", 3, trace, landing.landing().moments(), Map.of(), List.of("frame"))
                        .markup())
                .getElementsByTagName("*");
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            if (((Element) all.item(i)).hasAttribute("id")) {
                ids.add(((Element) all.item(i)).getAttribute("id"));
            }
        }

        assertThat(ids).isNotEmpty().doesNotHaveDuplicates().allMatch(id -> id.startsWith("landing-3-chart"));
    }

    @Test
    void withoutUpperBack_onlyThePelvisIsDrawn() throws Exception {
        LandingTrace pelvisOnly = new LandingTrace(
                trace.timeS(),
                trace.pelvisG(),
                null,
                trace.heightM(),
                trace.verticalSpeedMS(),
                trace.pelvicTilt(),
                trace.pelvicObliquity(),
                trace.pelvicRotation(),
                null,
                null,
                null);
        String markup = new LandingChart(LandingScale.over(List.of(pelvisOnly)))
                .svg("a", 1, pelvisOnly, landing.landing().moments(), Map.of(), List.of("frame"))
                .markup();

        assertThat(texts(parse(markup))).contains("pelvis").doesNotContain("upper back", "trunk", "twist");
    }

    @Test
    void unknownMoments_areNotMarked() throws Exception {
        Moments few = new Moments(null, 10, 10.03, null, null);

        assertThat(texts(parse(new LandingChart(scale)
                        .svg("a", 1, trace, few, Map.of(), List.of("frame"))
                        .markup())))
                .contains("contact", "peak")
                .doesNotContain("take-off", "lowest", "settled");
    }

    @Test
    void marks_tellFootByShapeAndFormByFill() {
        List<String> all = new ArrayList<>();
        for (Side side : Side.values()) {
            for (Form form : Form.values()) {
                all.add(new Mark(side, form).inline().markup());
            }
        }
        all.add(new Mark(null, null).inline().markup());

        assertThat(all).doesNotHaveDuplicates();
    }

    @Test
    void emptySession_hasAStripWithoutMarks() throws Exception {
        String markup = new StripChart(400).svg("strip", 0, List.of()).markup();

        assertThat(parse(markup).getElementsByTagName("a").getLength()).isZero();
        assertThat(markup).contains("drop height, m");
    }

    private static Document parse(String markup) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(markup)));
    }

    private static List<String> texts(Document document) {
        NodeList texts = document.getElementsByTagName("text");
        List<String> found = new ArrayList<>();
        for (int i = 0; i < texts.getLength(); i++) {
            found.add(texts.item(i).getTextContent());
        }
        return found;
    }
}
