package evenfall.report.html;

import evenfall.fusion.landing.Balance;
import evenfall.fusion.landing.Estimate;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Side;
import evenfall.fusion.landing.StepDirection;
import evenfall.ingest.words.Digits;
import evenfall.ingest.words.Words;
import evenfall.report.form.FormStandard;
import evenfall.report.form.FormVerdict;
import evenfall.report.form.Judged;
import evenfall.report.form.StandardWords;
import evenfall.report.glossary.Glossary;
import evenfall.report.html.view.FigureGroup;
import evenfall.report.html.view.FigureView;
import evenfall.report.session.SessionLanding;
import evenfall.report.words.Figures;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The measures of a landing in words, grouped by the four questions of form, each with what is usual beside it. */
final class FigureWords {

    private static final Words WORDS = Words.beside(FigureWords.class);

    /** From here on a figure has a decimal less: two digits mean something. */
    private static final double LARGE = 9.95;

    private final UsualHalf usual;

    private final FormStandard standard;

    private final @Nullable Side side;

    private final @Nullable FormVerdict verdict;

    /**
     * For one landing.
     *
     * @param standard what it was judged by
     */
    FigureWords(UsualHalf usual, FormStandard standard, SessionLanding event) {
        this.usual = usual;
        this.standard = standard;
        side = event.side();
        verdict = event.verdict();
    }

    /** The figures by question; the groups and figures are the same for every landing. */
    List<FigureGroup> groups(@Nullable Measures measures) {
        return FigureList.GROUPS.stream()
                .map(group -> new FigureGroup(
                        WORDS.say(group.question()),
                        Answers.of(group.judged(), verdict, measures),
                        views(group.figures(), measures)))
                .toList();
    }

    /** Figures for the scientist. */
    List<FigureView> science(@Nullable Measures measures) {
        return views(FigureList.SCIENCE, measures);
    }

    private List<FigureView> views(List<Figure> figures, @Nullable Measures measures) {
        return figures.stream().map(figure -> view(figure, measures)).toList();
    }

    private FigureView view(Figure figure, @Nullable Measures m) {
        Double value = m == null ? null : figure.value(m);
        if (m == null || value == null) {
            return view(figure, m, WORDS.say("notMeasured"), "", "");
        }
        String size = Digits.fixed(Math.abs(value), 4);
        if (figure.equals(FigureList.STEPS)) {
            return view(figure, m, steps(m.balance()), "", size);
        }
        Double sigma = figure.sigma(m);
        String words = words(figure, value);
        if (figure.equals(FigureList.PEAK) && m.impact().clipped()) {
            Estimate estimated = m.impact().peakEstimatedG();
            return estimated == null
                    ? view(figure, m, WORDS.say("atLeast", words), "", size)
                    : view(
                            figure,
                            m,
                            WORDS.say("atLeastEstimated", words, words(figure, estimated.value())),
                            error(estimated.sigma(), decimals(figure, estimated.value())),
                            size);
        }
        return view(figure, m, words, error(sigma, decimals(figure, value)), size);
    }

    private FigureView view(Figure figure, @Nullable Measures measures, String value, String error, String size) {
        UsualHalf.Range range = usual.of(figure);
        String beside = range == null ? "" : range(figure, range);
        return new FigureView(
                Glossary.name(figure.term()),
                figure.term().code(),
                value,
                error,
                measures == null ? "" : limit(figure, measures),
                beside,
                size,
                over(figure));
    }

    /** The limit beside a value that was judged by it. */
    private String limit(Figure figure, Measures measures) {
        Double value = figure.value(measures);
        Judged judged = figure.judged();
        return judged == null || value == null || verdict == null
                ? ""
                : StandardWords.limit(standard, judged, value, side);
    }

    private String over(Figure figure) {
        boolean over = verdict != null
                && verdict.reasons().stream()
                        .anyMatch(reason -> reason.over() && reason.measure().equals(figure.measure()));
        return over ? WORDS.say("over") : "";
    }

    /** A value with its side and unit. */
    static String words(Figure figure, double value) {
        int decimals = decimals(figure, value);
        String size = Figures.size(value, decimals);
        String withUnit = WORDS.say(figure.unit(), size);
        String side = value > 0 ? figure.plus() : figure.minus();
        return side == null || size.equals(Figures.size(0.0, decimals)) ? withUnit : WORDS.say(side, withUnit);
    }

    private static String range(Figure figure, UsualHalf.Range range) {
        String low = words(figure, range.low());
        String high = words(figure, range.high());
        if (low.equals(high)) {
            return WORDS.say("usual.one", low);
        }
        if (figure.sided()) {
            return WORDS.say("usual.range", low, high);
        }
        int decimals = decimals(figure, range.high());
        return WORDS.say(
                "usual.range",
                Figures.fixed(range.low(), decimals),
                WORDS.say(figure.unit(), Figures.fixed(range.high(), decimals)));
    }

    private static int decimals(Figure figure, double value) {
        return Math.abs(value) >= LARGE ? Math.max(0, figure.decimals() - 1) : figure.decimals();
    }

    /** One standard deviation with its sign, or nothing where it is not known. */
    static String error(@Nullable Double sigma, int decimals) {
        if (sigma == null || !Double.isFinite(sigma)) {
            return "";
        }
        String size = Figures.fixed(sigma, decimals);
        return sigma > 0 && size.equals(Figures.fixed(0.0, decimals))
                ? WORDS.say("error.under", Figures.fixed(Math.pow(10, -decimals), decimals))
                : WORDS.say("error", size);
    }

    private static String steps(Balance balance) {
        Integer steps = balance.stepsAfter();
        if (steps == null) {
            return WORDS.say("notMeasured");
        }
        if (steps == 0) {
            return WORDS.say("steps.none");
        }
        StepDirection direction = balance.stepDirection();
        return WORDS.say("steps.some", steps, WORDS.say("steps." + (direction == null ? "unknown" : direction.code())));
    }
}
