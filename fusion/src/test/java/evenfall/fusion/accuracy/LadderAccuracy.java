package evenfall.fusion.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Prints the errors on rungs of the ladder, for the one who changes the analysis. */
final class LadderAccuracy {

    private LadderAccuracy() {}

    /** How many motions, how many landings in each, then beginnings of rungs' names; all rungs without. */
    public static void main(String[] args) {
        LadderRun run = new LadderRun(Integer.parseInt(args[0]), Integer.parseInt(args[1]));
        List<String> wanted = List.of(args).subList(2, args.length);
        List<Rung> rungs = new ArrayList<>(Ladder.rungs());
        rungs.addAll(Ladder.shares());
        for (Rung rung : rungs) {
            if (wanted.isEmpty() || wanted.stream().anyMatch(rung.name()::startsWith)) {
                LandingErrors errors = run.errors(rung);
                System.out.println(rung.name());
                for (Figure figure : Figure.values()) {
                    ErrorSummary s = errors.summary(figure);
                    System.out.println(String.format(
                            Locale.ROOT,
                            "  %-20s %10.5f bias %10.5f largest %10.5f n %4d missing %4d in %4.0f %4.0f",
                            figure.code(),
                            s.rms(),
                            s.bias(),
                            s.largest(),
                            s.count(),
                            s.missing(),
                            s.withinOne(),
                            s.withinTwo()));
                }
            }
        }
    }
}
