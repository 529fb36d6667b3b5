package versewind.sound;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.plan.HandsAndFeet;

/**
 * The loudness by which an organ's {@link Dynamic} is measured: that of the principals 8 4 of its main division, four
 * parts in the hands, box open, in the room as it is filled. Where a principal is missing a flute stands for it, and
 * where both pitches are missing all that the division has. Computed at the first estimate. Not thread-safe.
 *
 * <p>Checked against: {@code DynamicTest}.
 */
final class PrincipalsLoudness {

    private static final double EIGHT_FT = 1;
    private static final double FOUR_FT = 2;

    private final Instrument organ;
    private final OrganPower power;
    private final Hearing hearing;
    private final Map<Seats, Double> known = new HashMap<>();
    private final double[] heard = new double[ThirdOctaves.COUNT];
    private double[] principals = {};

    PrincipalsLoudness(Instrument organ, OrganPower power, Hearing hearing) {
        this.organ = organ;
        this.power = power;
        this.hearing = hearing;
    }

    /** The loudness in sone in the nave. Overwrites what {@link OrganPower} computed. */
    double sone(Seats seats) {
        if (principals.length == 0) {
            power.compute(
                    Registration.silent(organ).withStops(stops()),
                    HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, organ.mainDivision()));
            principals = power.all().clone();
        }
        if (known.size() > OrganSound.MAX_ROOMS) {
            known.clear();
        }
        return known.computeIfAbsent(seats, each -> {
            each.organInNave().carry(principals, heard);
            return hearing.sone(heard);
        });
    }

    private IndexSet stops() {
        IndexSet found = IndexSet.of(DoubleStream.of(EIGHT_FT, FOUR_FT).boxed().flatMapToInt(harmonic -> Stream.of(
                        Family.PRINCIPAL, Family.FLUTE)
                .flatMapToInt(family -> ofMain().filter(
                                stop -> isOf(organ.stops().get(stop).stop(), family, harmonic))
                        .limit(1))
                .limit(1)));
        return found.isEmpty() ? IndexSet.of(ofMain()) : found;
    }

    private IntStream ofMain() {
        return IntStream.range(0, organ.stops().size())
                .filter(stop -> organ.stops().get(stop).division() == organ.mainDivision());
    }

    private static boolean isOf(Stop stop, Family family, double harmonic) {
        return stop.family() == family
                && stop.footage().filter(feet -> feet.harmonic() == harmonic).isPresent();
    }
}
