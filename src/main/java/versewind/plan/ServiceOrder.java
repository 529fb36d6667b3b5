package versewind.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The verses of a plan one after another, as they are played; hymns without verses are passed over. */
public final class ServiceOrder {

    private ServiceOrder() {}

    public static List<VersePlace> places(Plan plan) {
        List<VersePlace> places = new ArrayList<>();
        for (int hymn = 0; hymn < plan.hymns().size(); hymn++) {
            for (int verse = 0; verse < plan.hymns().get(hymn).verses().size(); verse++) {
                places.add(new VersePlace(hymn, verse));
            }
        }
        return places;
    }

    /** The verse so many further on, if there is one. */
    public static Optional<VersePlace> further(Plan plan, VersePlace from, int step) {
        List<VersePlace> places = places(plan);
        int at = places.indexOf(from) + step;
        return at >= 0 && at < places.size() ? Optional.of(places.get(at)) : Optional.empty();
    }

    /** The nearest verse that there is: the one here, or else the next, or else the last. */
    public static Optional<VersePlace> nearest(Plan plan, VersePlace place) {
        List<VersePlace> places = places(plan);
        return places.stream()
                .filter(each ->
                        each.hymn() > place.hymn() || (each.hymn() == place.hymn() && each.verse() >= place.verse()))
                .findFirst()
                .or(() -> places.isEmpty() ? Optional.empty() : Optional.of(places.get(places.size() - 1)));
    }

    public static Verse verse(Plan plan, VersePlace place) {
        return plan.hymns().get(place.hymn()).verses().get(place.verse());
    }
}
