package versewind.sound;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;

/**
 * The softest stop and full organ of an instrument, and with them its {@link Dynamic.Scale} in the room as it is
 * filled. Computed at the first estimate. Not thread-safe.
 *
 * <p>Checked against: {@code OrganSoundTest}.
 */
final class DynamicRange {

    private final Instrument organ;
    private final OrganPower power;
    private final Hearing hearing;
    private final Map<Seats, Dynamic.Scale> scales = new HashMap<>();
    private final double[] heard = new double[ThirdOctaves.COUNT];
    private double[] softest = {};
    private double[] full = {};

    DynamicRange(Instrument organ, OrganPower power, Hearing hearing) {
        this.organ = organ;
        this.power = power;
        this.hearing = hearing;
    }

    /**
     * The scale at the seats of the nave. Overwrites what {@link OrganPower} computed.
     *
     * @param seats with the people who are there
     * @param empty the seats of the empty church, where the softest stop is found
     */
    Dynamic.Scale scale(Seats seats, Seats empty) {
        Dynamic.Scale known = scales.get(seats);
        if (known != null) {
            return known;
        }
        if (full.length == 0) {
            softest = softest(empty);
            full = full();
        }
        if (scales.size() > OrganSound.MAX_ROOMS) {
            scales.clear();
        }
        Dynamic.Scale scale = new Dynamic.Scale(sone(seats, softest), sone(seats, full));
        scales.put(seats, scale);
        return scale;
    }

    /** Sound power of the softest stop of the manuals, all four parts, box closed. */
    private double[] softest(Seats seats) {
        double[] found = new double[ThirdOctaves.COUNT];
        double foundSone = Double.POSITIVE_INFINITY;
        List<BoxPosition> closed =
                organ.divisions().stream().map(division -> BoxPosition.CLOSED).toList();
        for (int stop = 0; stop < organ.stops().size(); stop++) {
            int division = organ.stops().get(stop).division();
            if (organ.divisions().get(division).isPedal()) {
                continue;
            }
            Registration alone = new Registration(IndexSet.of(stop), IndexSet.EMPTY, IndexSet.EMPTY, closed);
            power.compute(alone, HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, division));
            double sone = sone(seats, power.all());
            if (sone < foundSone) {
                foundSone = sone;
                found = power.all().clone();
            }
        }
        return found;
    }

    /** Sound power of full organ, both hands on the main division. */
    private double[] full() {
        power.compute(Registration.full(organ), HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, organ.mainDivision()));
        return power.all().clone();
    }

    private double sone(Seats seats, double[] soundPower) {
        seats.organInNave().carry(soundPower, heard);
        return hearing.sone(heard);
    }
}
