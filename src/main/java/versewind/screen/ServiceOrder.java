package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.plan.Place;
import versewind.plan.Plan;
import versewind.plan.Verse;

/** The verses of a plan one after another, as they are played; hymns without verses are passed over. */
final class ServiceOrder {

    private ServiceOrder() {}

    static List<Place> places(Plan plan) {
        List<Place> places = new ArrayList<>();
        for (int hymn = 0; hymn < plan.hymns().size(); hymn++) {
            for (int verse = 0; verse < plan.hymns().get(hymn).verses().size(); verse++) {
                places.add(new Place(hymn, verse));
            }
        }
        return places;
    }

    /** The verse so many further on, if there is one. */
    static Optional<Place> further(Plan plan, Place from, int step) {
        List<Place> places = places(plan);
        int at = places.indexOf(from) + step;
        return at >= 0 && at < places.size() ? Optional.of(places.get(at)) : Optional.empty();
    }

    /** The nearest verse that there is: the one here, or else the next, or else the last. */
    static Optional<Place> nearest(Plan plan, Place place) {
        List<Place> places = places(plan);
        return places.stream()
                .filter(each ->
                        each.hymn() > place.hymn() || (each.hymn() == place.hymn() && each.verse() >= place.verse()))
                .findFirst()
                .or(() -> places.isEmpty() ? Optional.empty() : Optional.of(places.get(places.size() - 1)));
    }

    static Verse verse(Plan plan, Place place) {
        return plan.hymns().get(place.hymn()).verses().get(place.verse());
    }
}
