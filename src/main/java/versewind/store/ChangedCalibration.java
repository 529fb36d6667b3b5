package versewind.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.calibration.Calibration;
import versewind.calibration.Experience;
import versewind.calibration.HeardRegistration;
import versewind.organ.Coupler;
import versewind.organ.Division;
import versewind.organ.FormerNames;
import versewind.organ.FormerNames.Now;
import versewind.organ.Instrument;
import versewind.organ.Pistons;
import versewind.organ.Stop;
import versewind.organ.StopName;
import versewind.organ.Trims;
import versewind.schema.CalibrationFields;
import versewind.schema.HeardFields;
import versewind.schema.KnownOrgan;
import versewind.schema.OrganNames;
import versewind.sound.OrganSound;

/**
 * What is known of an organ that has changed. Registrations that were heard stay if everything they draw is still
 * there. Of the calibration: where only names have changed, it stays as it is; otherwise the trims before any reading
 * are moved by what was typed, and the organ is fitted again to those readings of which everything is still there.
 */
final class ChangedCalibration {
    private final KnownOrgan was;
    private final Instrument now;
    private final FormerNames change;

    ChangedCalibration(KnownOrgan was, Instrument now, FormerNames change) {
        this.was = was;
        this.now = now;
        this.change = change;
    }

    /** The changed organ with its calibration and the former names of its parts. */
    KnownOrgan organ() {
        FormerNames former = was.former().after(change, now);
        if (was.calibration().isNone()) {
            return new KnownOrgan(now, Calibration.NONE, experience(), former);
        }
        OrganNames before = OrganNames.of(was.instrument());
        List<Calibration.Kept> kept = was.calibration().kept().stream()
                .flatMap(each -> CalibrationFields.READING.moved(each, before, OrganNames.of(now, change)).stream())
                .toList();
        KnownOrgan known = new KnownOrgan(
                now, new Calibration(Optional.of(before()), was.calibration().offsets(), kept), experience(), former);
        if (isOnlyRenamed()) {
            return known;
        }
        OrganSound sound = known.soundBeforeReadings();
        return known.fittedTo(known.calibration().readings().stream()
                .filter(reading -> reading.expectedDba(sound).isPresent())
                .toList());
    }

    /** The registrations heard of which everything is still there. */
    private Experience experience() {
        return new Experience(
                moved(HeardFields.USUAL, was.experience().usual()),
                moved(HeardFields.ANSWER, was.experience().answers()));
    }

    private List<HeardRegistration> moved(HeardFields fields, List<HeardRegistration> heard) {
        OrganNames before = OrganNames.of(was.instrument());
        return heard.stream()
                .flatMap(each -> fields.table().moved(each, before, OrganNames.of(now, change)).stream())
                .toList();
    }

    /** Today's index of every stop. */
    private List<OptionalInt> stops() {
        return places(was.instrument().stops(), knob -> change.stop(now, knob.name()), now::stop);
    }

    /** Today's index of every division. */
    private List<OptionalInt> divisions() {
        return places(was.instrument().divisions(), each -> change.division(now, each.name()), now::division);
    }

    private static <P, N> List<OptionalInt> places(
            List<P> parts, Function<P, Optional<Now<N>>> today, Function<N, OptionalInt> index) {
        return parts.stream()
                .map(part -> today.apply(part).flatMap(Now::name).map(index).orElse(OptionalInt.empty()))
                .toList();
    }

    /** The trims before any reading, moved by what was typed over the trims since. */
    private Trims before() {
        Trims before = was.calibration().before().orElseThrow();
        Trims since = Trims.of(was.instrument());
        Trims typed = Trims.of(now);
        return new Trims(
                within(before.organDb() + typed.organDb() - since.organDb()),
                moved(before.stopsDb(), since.stopsDb(), typed.stopsDb(), stops()),
                moved(before.boxesDb(), since.boxesDb(), typed.boxesDb(), divisions()));
    }

    private static List<Double> moved(
            List<Double> before, List<Double> since, List<Double> typed, List<OptionalInt> places) {
        List<Double> moved = new ArrayList<>(typed);
        for (int i = 0; i < places.size(); i++) {
            if (places.get(i).isPresent()) {
                int place = places.get(i).getAsInt();
                double stepDb = typed.get(place).equals(since.get(i)) ? 0 : typed.get(place) - since.get(i);
                moved.set(place, within(before.get(i) + stepDb));
            }
        }
        return moved;
    }

    private static double within(double trimDb) {
        return Math.max(-Stop.WIDEST_TRIM_DB, Math.min(Stop.WIDEST_TRIM_DB, trimDb));
    }

    /** Whether the organ sounds as it did: everything is in its place, and only names differ. */
    private boolean isOnlyRenamed() {
        Instrument old = was.instrument();
        List<OptionalInt> couplers = places(old.couplers(), each -> change.coupler(now, each.name()), now::coupler);
        List<OptionalInt> tremulants =
                places(old.tremulants(), each -> change.tremulant(now, each.name()), now::tremulant);
        return Stream.of(stops(), divisions(), couplers, tremulants)
                        .allMatch(places -> IntStream.range(0, places.size())
                                .allMatch(i -> places.get(i).equals(OptionalInt.of(i))))
                && old.tremulants().size() == now.tremulants().size()
                && nameless(old).equals(nameless(now));
    }

    /** An instrument with numbers for names, without tremulants and pistons. */
    private static Instrument nameless(Instrument organ) {
        List<Division> divisions = new ArrayList<>();
        int first = 0;
        for (Division division : organ.divisions()) {
            List<Stop> stops = new ArrayList<>();
            for (Stop stop : division.stops()) {
                stops.add(nameless(organ, stop, first + stops.size()));
            }
            first += stops.size();
            String name = Integer.toString(divisions.size());
            divisions.add(new Division(name, division.manual(), division.keys(), division.box(), stops));
        }
        List<Coupler> couplers = new ArrayList<>();
        for (Coupler coupler : organ.couplers()) {
            String name = Integer.toString(couplers.size());
            couplers.add(new Coupler(
                    name, index(organ, coupler.source()), index(organ, coupler.keyboard()), coupler.kind()));
        }
        return new Instrument(
                "organ",
                "",
                organ.action(),
                organ.trimDb(),
                divisions,
                couplers,
                List.of(),
                Pistons.NONE,
                organ.room());
    }

    private static Stop nameless(Instrument organ, Stop stop, int index) {
        Stop renamed = new Stop(
                Integer.toString(index),
                stop.footage(),
                stop.family(),
                stop.pipe(),
                stop.ranks(),
                stop.composition(),
                stop.trimDb(),
                stop.enclosure(),
                Optional.empty(),
                "");
        return stop.borrowed()
                .map(lender -> organ.stop(lender).getAsInt())
                .map(lender -> renamed.borrowing(new StopName(
                        Integer.toString(organ.stops().get(lender).division()),
                        lender + " " + organ.stops().get(lender).stop().pitch())))
                .orElse(renamed);
    }

    private static String index(Instrument organ, String division) {
        return Integer.toString(organ.division(division).getAsInt());
    }
}
