package versewind.stoplist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import versewind.stoplist.PrintedOrgan.KnownDivision;
import versewind.stoplist.PrintedOrgan.KnownStop;

/**
 * How much of a known organ came out of its printed list.
 *
 * @param stops how many it has
 * @param right how many of them have name, pitch, keyboard and family right
 * @param invented how many stops were read that it has not
 * @param couplers whether all its couplers were read, and no others
 * @param silent whether something is wrong, and nothing is said to need a second look
 * @param wrong the stops that are not right, as they should be, and those invented
 */
record ReadingScore(int stops, int right, int invented, boolean couplers, boolean silent, List<String> wrong) {

    static ReadingScore of(PrintedOrgan organ, StopList list) {
        Map<Integer, ReadDivision> places = places(organ, list);
        List<ReadStop> left = new ArrayList<>(list.stops().toList());
        List<String> wrong = new ArrayList<>();
        List<KnownStop> missed = new ArrayList<>();
        int stops = 0;
        for (int i = 0; i < organ.divisions().size(); i++) {
            for (KnownStop stop : organ.divisions().get(i).stops()) {
                stops++;
                ReadDivision read = places.get(i);
                ReadStop found = read == null
                        ? null
                        : read.stops().stream()
                                .filter(left::contains)
                                .filter(each -> isSame(each, stop))
                                .findFirst()
                                .orElse(null);
                if (found == null) {
                    missed.add(stop);
                    wrong.add("- " + i + " " + stop);
                } else {
                    left.remove(found);
                }
            }
        }
        List<ReadStop> invented = new ArrayList<>(left);
        for (KnownStop stop : missed) {
            invented.stream()
                    .filter(each -> Spelling.spelled(each.name()).startsWith(Spelling.spelled(stop.name())))
                    .findFirst()
                    .ifPresent(invented::remove);
        }
        left.forEach(each -> wrong.add((invented.contains(each) ? "+ " : "~ ") + each.line() + " " + each.name() + " "
                + each.feet() + (each.supposed() ? "?" : "") + " " + each.ranks() + " " + each.family()));
        boolean couplers = couplers(organ, places)
                .equals(list.couplers().stream()
                        .map(each -> each.source() + ">" + each.keyboard() + each.kind())
                        .sorted()
                        .distinct()
                        .toList());
        if (!couplers) {
            wrong.add("couplers " + list.couplers());
        }
        boolean silent = !wrong.isEmpty() && !list.wantsAttention();
        return new ReadingScore(stops, stops - missed.size(), invented.size(), couplers, silent, wrong);
    }

    private static boolean isSame(ReadStop read, KnownStop stop) {
        boolean pitch = read.supposed() || stop.feet().isEmpty() || Objects.equals(read.footage(), stop.feet());
        return Spelling.spelled(read.name()).equals(Spelling.spelled(stop.name()))
                && pitch
                && read.family() == stop.family()
                && (stop.ranks() == 1 || read.ranks() == stop.ranks());
    }

    /** Which read division is which known one: the one with most of its stops, among manuals or pedals. */
    private static Map<Integer, ReadDivision> places(PrintedOrgan organ, StopList list) {
        Map<Integer, ReadDivision> places = new HashMap<>();
        List<ReadDivision> free = new ArrayList<>(list.divisions());
        for (int i = 0; i < organ.divisions().size(); i++) {
            KnownDivision known = organ.divisions().get(i);
            ReadDivision best = null;
            long most = 0;
            for (ReadDivision each : free) {
                long same = known.stops().stream()
                        .filter(stop -> each.stops().stream().anyMatch(read -> isSame(read, stop)))
                        .count();
                if (same > most && each.isPedal() == known.isPedal()) {
                    most = same;
                    best = each;
                }
            }
            if (best != null) {
                places.put(i, best);
                free.remove(best);
            }
        }
        return places;
    }

    private static List<String> couplers(PrintedOrgan organ, Map<Integer, ReadDivision> places) {
        return organ.couplers().stream()
                .map(each -> name(places, each.source()) + ">" + name(places, each.keyboard()) + each.kind())
                .sorted()
                .collect(Collectors.toList());
    }

    private static String name(Map<Integer, ReadDivision> places, int division) {
        return places.containsKey(division) ? places.get(division).name() : "?" + division;
    }
}
