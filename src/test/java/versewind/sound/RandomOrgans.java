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
final class RandomOrgans {
    private final Random random;

    RandomOrgans(long seed) {
        random = new Random(seed);
    }

    /** A true organ behind an estimated one. */
    OrganSound truth(OrganSound estimated) {
        Parameters unknowns = estimated.unknowns();
        double[] off = new double[unknowns.count()];
        for (int place = 0; place < off.length; place++) {
            off[place] = unknowns.sdDb(place) * random.nextGaussian();
        }
        return estimated.trimmed(unknowns.trims(Trims.of(estimated.organ()), off), unknowns.offsets(off));
    }

    /** Every stop and coupler drawn with even chance, boxes anywhere, both hands on one manual, with or without feet. */
    Registration registration(Instrument organ) {
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

    HandsAndFeet hands(Instrument organ) {
        List<Integer> manuals = organ.manualDivisions();
        HandsAndFeet.Layout layout =
                random.nextBoolean() ? HandsAndFeet.Layout.FOUR_PARTS : HandsAndFeet.Layout.MANUALS_ONLY;
        return HandsAndFeet.on(layout, manuals.get(random.nextInt(manuals.size())));
    }

    double noiseDb() {
        return MeterReading.NOISE_SD_DB * random.nextGaussian();
    }
}
