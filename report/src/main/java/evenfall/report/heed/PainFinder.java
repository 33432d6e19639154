package evenfall.report.heed;

import evenfall.report.log.DiaryEntry;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;

/** Goes through a diary from its first day to its last and keeps what is open. */
final class PainFinder {

    private static final String HEAD_IMPACT = "head-impact";

    private final Map<String, OpenPain> pain = new LinkedHashMap<>();
    private final Map<String, Set<String>> sidesOver = new HashMap<>();
    private final Map<String, SignNoted> signs = new LinkedHashMap<>();

    private PainFinder() {}

    /** What hurt on the day of a sign: when all of that is over, so is the sign. */
    private record SignNoted(LocalDate since, Set<String> regions) {}

    static PainFinder through(SortedMap<LocalDate, List<DiaryEntry>> diary) {
        PainFinder finder = new PainFinder();
        diary.forEach(finder::day);
        return finder;
    }

    List<OpenPain> pain() {
        return List.copyOf(pain.values());
    }

    List<OpenSign> signs() {
        List<OpenSign> open = new ArrayList<>();
        signs.forEach((sign, noted) -> {
            boolean over = !sign.equals(HEAD_IMPACT)
                    && !noted.regions().isEmpty()
                    && noted.regions().stream().noneMatch(pain::containsKey);
            if (!over) {
                open.add(new OpenSign(sign, noted.since()));
            }
        });
        return open;
    }

    private void day(LocalDate day, List<DiaryEntry> entries) {
        Set<String> hurting = new HashSet<>();
        for (DiaryEntry entry : entries) {
            entry.hurting().keySet().forEach(region -> hurting.add(BodyRegion.key(region)));
        }
        for (DiaryEntry entry : entries) {
            entry.pain().forEach((region, size) -> pain(BodyRegion.key(region), size, day));
            for (String sign : entry.signs()) {
                if (sign.equals(DiaryEntry.NO_SIGN)) {
                    signs.clear();
                } else {
                    signs.put(sign, new SignNoted(day, hurting));
                }
            }
        }
    }

    private void pain(String region, int size, LocalDate day) {
        if (size > 0) {
            OpenPain before = pain.get(region);
            pain.put(region, new OpenPain(region, size, before == null ? day : before.since(), day));
            sidesOver.remove(region);
            return;
        }
        if (region.equals(BodyRegion.WHOLE)) {
            pain.clear();
            return;
        }
        pain.remove(region);
        if (BodyRegion.lacksSide(region)) {
            pain.remove("left " + region);
            pain.remove("right " + region);
            return;
        }
        int blank = region.indexOf(' ');
        String whole = blank < 0 ? "" : region.substring(blank + 1);
        if (pain.containsKey(whole) && BodyRegion.lacksSide(whole)) {
            Set<String> over = sidesOver.computeIfAbsent(whole, key -> new HashSet<>());
            over.add(region);
            if (over.size() == 2) {
                pain.remove(whole);
            }
        }
    }
}
