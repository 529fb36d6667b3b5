package versewind.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Trims;
import versewind.plan.HandsAndFeet;

/** Organs that differ from what is estimated as much as the estimate says they may, and registrations drawn blindly. */
public final class RandomOrgans {
    private static final double CERTAIN_DB = 0.1;

    private final Random random;

    public RandomOrgans(long seed) {
        random = new Random(seed);
    }

    /** A true organ behind an estimated one. */
    public OrganSound truth(OrganSound estimated) {
        Parameters parameters = estimated.parameters();
        double[] off = new double[parameters.count()];
        for (int place = 0; place < off.length; place++) {
            off[place] = parameters.sdDb(place) * random.nextGaussian();
        }
        for (int stop = 0; stop < estimated.organ().stops().size(); stop++) {
            boolean isBorrowed =
                    estimated.organ().stops().get(stop).stop().borrowed().isPresent();
            off[parameters.rank(stop)] = isBorrowed ? 0 : off[parameters.rank(stop)];
        }
        return estimated.with(parameters.trims(Trims.of(estimated.organ()), off), parameters.offsets(off));
    }

    /** An organ that is exactly as estimated, so that nothing is in doubt but what lies at an edge. */
    public static OrganSound certain(OrganSound estimated) {
        Covariance covariance = estimated.covariance();
        for (int index = 0; index < estimated.parameters().count(); index++) {
            double[] alone = new double[estimated.parameters().count()];
            alone[index] = 1;
            covariance = covariance.after(alone, CERTAIN_DB);
        }
        return estimated.with(covariance);
    }

    /** Every stop and coupler drawn with even chance, boxes anywhere. */
    public Registration registration(Instrument organ) {
        IndexSet stops = some(organ.stops().size());
        IndexSet couplers = some(organ.couplers().size());
        BoxPosition[] positions = BoxPosition.values();
        List<BoxPosition> boxes = new ArrayList<>();
        organ.divisions()
                .forEach(division -> boxes.add(
                        division.isEnclosed() ? positions[random.nextInt(positions.length)] : BoxPosition.OPEN));
        return new Registration(stops, couplers, IndexSet.EMPTY, boxes);
    }

    private IndexSet some(int count) {
        IndexSet some = IndexSet.EMPTY;
        for (int index = 0; index < count; index++) {
            if (random.nextBoolean()) {
                some = some.with(index);
            }
        }
        return some;
    }

    public HandsAndFeet hands(Instrument organ) {
        List<Integer> manuals = organ.manualDivisions();
        HandsAndFeet.Layout layout =
                random.nextBoolean() ? HandsAndFeet.Layout.FOUR_PARTS : HandsAndFeet.Layout.MANUALS_ONLY;
        return HandsAndFeet.on(layout, manuals.get(random.nextInt(manuals.size())));
    }

    public double gaussian() {
        return random.nextGaussian();
    }
}
