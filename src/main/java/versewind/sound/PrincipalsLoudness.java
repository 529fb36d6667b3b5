package versewind.sound;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Coupler;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.plan.HandsAndFeet;

/**
 * The loudnesses by which an organ's {@link Dynamic} is measured, in the nave as it is filled: of the principals 8 4 of
 * its main division, four parts in the hands, box open; and of all its principals and mixtures with unison couplers,
 * feet and all. Where a principal 8 or 4 is missing a flute stands for it, and where both pitches are missing all that
 * the division has. Computed at the first estimate. Not thread-safe.
 *
 * <p>Checked against: {@code DynamicTest}.
 */
final class PrincipalsLoudness {

    private static final double EIGHT_FT = 1;
    private static final double FOUR_FT = 2;

    private final Instrument organ;
    private final OrganPower power;
    private final Hearing hearing;
    private final Map<Seats, Scale> known = new HashMap<>();
    private final double[] heard = new double[ThirdOctaves.COUNT];
    private double[] principals = {};
    private double[] choruses = {};

    PrincipalsLoudness(Instrument organ, OrganPower power, Hearing hearing) {
        this.organ = organ;
        this.power = power;
        this.hearing = hearing;
    }

    /**
     * Both loudnesses in sone.
     *
     * @param principals of the principals 8 4
     * @param choruses of all principals and mixtures; 0 if there are none
     */
    record Scale(double principals, double choruses) {

        /** The dynamic of a loudness in sone. */
        Dynamic dynamic(double sone) {
            return Dynamic.of(sone / principals, choruses / principals);
        }
    }

    /** The scale in the nave. Overwrites what {@link OrganPower} computed. */
    Scale scale(Seats seats) {
        if (principals.length == 0) {
            principals = drawing(Registration.silent(organ).withStops(stops()), HandsAndFeet.Layout.MANUALS_ONLY);
            choruses = drawing(
                    Registration.silent(organ).withStops(ofChoruses()).withCouplers(unisons()),
                    organ.pedalDivision().isPresent()
                            ? HandsAndFeet.Layout.FOUR_PARTS
                            : HandsAndFeet.Layout.MANUALS_ONLY);
        }
        if (known.size() > OrganSound.MAX_ROOMS) {
            known.clear();
        }
        return known.computeIfAbsent(seats, each -> new Scale(sone(principals, each), sone(choruses, each)));
    }

    private double[] drawing(Registration drawn, HandsAndFeet.Layout layout) {
        power.compute(drawn, HandsAndFeet.on(layout, organ.mainDivision()));
        return power.all().clone();
    }

    private double sone(double[] sound, Seats seats) {
        seats.organInNave().carry(sound, heard);
        return hearing.sone(heard);
    }

    private IndexSet ofChoruses() {
        return IndexSet.of(IntStream.range(0, organ.stops().size()).filter(stop -> {
            Family family = organ.stops().get(stop).stop().family();
            return family == Family.PRINCIPAL || family == Family.MIXTURE;
        }));
    }

    private IndexSet unisons() {
        return IndexSet.of(IntStream.range(0, organ.couplers().size())
                .filter(coupler -> organ.couplers().get(coupler).kind() == Coupler.Kind.UNISON));
    }

    private IndexSet stops() {
        int[] ofMain = ofMain().toArray();
        IndexSet found = IndexSet.EMPTY;
        for (double harmonic : List.of(EIGHT_FT, FOUR_FT)) {
            IndexSet principal = first(ofMain, Family.PRINCIPAL, harmonic);
            found = found.plus(principal.isEmpty() ? first(ofMain, Family.FLUTE, harmonic) : principal);
        }
        return found.isEmpty() ? IndexSet.of(ofMain) : found;
    }

    private IndexSet first(int[] stops, Family family, double harmonic) {
        for (int stop : stops) {
            if (isOf(organ.stops().get(stop).stop(), family, harmonic)) {
                return IndexSet.of(stop);
            }
        }
        return IndexSet.EMPTY;
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
