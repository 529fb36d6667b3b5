package versewind.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.calibration.Calibration;
import versewind.calibration.MeterReading;
import versewind.organ.BoxPosition;
import versewind.organ.FormerNames;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.organ.StopName;
import versewind.organ.Trims;
import versewind.plan.HandsAndFeet;
import versewind.schema.KnownOrgan;
import versewind.sound.OrganSound;

/**
 * What an organ's readings say of it once it has changed. Where only names have changed all stays as it is; else the trims
 * before any reading are moved by what was typed, and the organ is fitted again to the readings of which everything is
 * still there.
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

    /** The changed organ and what is known of it. */
    KnownOrgan organ() {
        FormerNames former = was.former().after(change, now);
        if (was.calibration().isNone()) {
            return new KnownOrgan(now, Calibration.NONE, former);
        }
        List<Calibration.Kept> kept = was.calibration().kept().stream()
                .flatMap(each -> moved(each.reading())
                        .map(reading -> new Calibration.Kept(reading, each.beforeDba(), each.afterDba()))
                        .stream())
                .toList();
        Calibration moved =
                new Calibration(Optional.of(before()), was.calibration().offsets(), kept);
        KnownOrgan known = new KnownOrgan(now, moved, former);
        if (isOnlyRenamed()) {
            return known;
        }
        OrganSound sound = known.soundBeforeReadings();
        return known.fittedTo(moved.readings().stream()
                .filter(reading -> reading.expectedDba(sound).isPresent())
                .toList());
    }

    private OptionalInt stop(StopName name) {
        return change.stop(now, name)
                .flatMap(FormerNames.Now::name)
                .map(now::stop)
                .orElse(OptionalInt.empty());
    }

    private OptionalInt division(String name) {
        return change.division(now, name)
                .flatMap(FormerNames.Now::name)
                .map(now::division)
                .orElse(OptionalInt.empty());
    }

    private List<OptionalInt> stops() {
        return was.instrument().stops().stream().map(knob -> stop(knob.name())).toList();
    }

    private List<OptionalInt> divisions() {
        return was.instrument().divisions().stream()
                .map(each -> division(each.name()))
                .toList();
    }

    private List<OptionalInt> couplers() {
        return was.instrument().couplers().stream()
                .map(each -> change.coupler(now, each.name())
                        .flatMap(FormerNames.Now::name)
                        .map(now::coupler)
                        .orElse(OptionalInt.empty()))
                .toList();
    }

    private List<OptionalInt> tremulants() {
        return was.instrument().tremulants().stream()
                .map(each -> change.tremulant(now, each.name())
                        .flatMap(FormerNames.Now::name)
                        .map(now::tremulant)
                        .orElse(OptionalInt.empty()))
                .toList();
    }

    private static Optional<IndexSet> moved(IndexSet drawn, List<OptionalInt> places) {
        List<OptionalInt> found = drawn.stream().mapToObj(places::get).toList();
        return found.stream().allMatch(OptionalInt::isPresent)
                ? Optional.of(IndexSet.of(found.stream().mapToInt(OptionalInt::getAsInt)))
                : Optional.empty();
    }

    /** The reading in the indices of today; empty where something of it is gone. */
    private Optional<MeterReading> moved(MeterReading reading) {
        Registration drawn = reading.registration();
        List<OptionalInt> divisions = divisions();
        Optional<IndexSet> stops = moved(drawn.stops(), stops());
        Optional<IndexSet> couplers = moved(drawn.couplers(), couplers());
        Optional<IndexSet> tremulants = moved(drawn.tremulants(), tremulants());
        OptionalInt right = divisions.get(reading.hands().right());
        OptionalInt left = divisions.get(reading.hands().left());
        boolean whole = stops.isPresent() && couplers.isPresent() && tremulants.isPresent();
        if (!whole || !isManual(right) || !isManual(left)) {
            return Optional.empty();
        }
        List<BoxPosition> boxes = new ArrayList<>(Registration.silent(now).boxes());
        for (int i = 0; i < divisions.size(); i++) {
            if (divisions.get(i).isPresent()
                    && now.divisions().get(divisions.get(i).getAsInt()).isEnclosed()) {
                boxes.set(divisions.get(i).getAsInt(), drawn.boxes().get(i));
            } else if (drawn.boxes().get(i) != BoxPosition.OPEN) {
                return Optional.empty();
            }
        }
        return Optional.of(new MeterReading(
                reading.date(),
                new Registration(stops.get(), couplers.get(), tremulants.get(), boxes),
                new HandsAndFeet(reading.hands().layout(), right.getAsInt(), left.getAsInt()),
                reading.seat(),
                reading.present(),
                reading.sung(),
                reading.dba()));
    }

    private boolean isManual(OptionalInt division) {
        return division.isPresent() && !now.divisions().get(division.getAsInt()).isPedal();
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

    /** Whether the organ sounds as it did: everything is in its place, only called otherwise. */
    private boolean isOnlyRenamed() {
        Instrument old = was.instrument();
        boolean inPlace = Stream.of(stops(), divisions(), couplers(), tremulants())
                .allMatch(places -> IntStream.range(0, places.size())
                        .allMatch(i -> places.get(i).equals(OptionalInt.of(i))));
        boolean same = old.stops().size() == now.stops().size()
                && old.divisions().size() == now.divisions().size()
                && old.couplers().size() == now.couplers().size()
                && old.tremulants().size() == now.tremulants().size()
                && old.action() == now.action()
                && old.trimDb() == now.trimDb()
                && old.room().equals(now.room());
        return inPlace
                && same
                && IntStream.range(0, now.stops().size()).allMatch(this::soundsAlike)
                && IntStream.range(0, now.divisions().size()).allMatch(this::isPlayedAlike)
                && IntStream.range(0, now.couplers().size()).allMatch(this::couplesAlike);
    }

    private boolean soundsAlike(int index) {
        Stop old = was.instrument().stops().get(index).stop();
        Stop today = now.stops().get(index).stop();
        Optional<StopName> lender = old.borrowed()
                .map(name -> now.stops().get(stop(name).getAsInt()).name());
        return today.equals(new Stop(
                today.name(),
                old.footage(),
                old.family(),
                old.pipe(),
                old.ranks(),
                old.composition(),
                old.trimDb(),
                old.enclosure(),
                lender));
    }

    private boolean isPlayedAlike(int index) {
        var old = was.instrument().divisions().get(index);
        var today = now.divisions().get(index);
        return old.manual().equals(today.manual())
                && old.keys() == today.keys()
                && old.box().equals(today.box())
                && old.stops().size() == today.stops().size();
    }

    private boolean couplesAlike(int index) {
        var old = was.instrument().couplers().get(index);
        var today = now.couplers().get(index);
        return old.kind() == today.kind()
                && division(old.source()).equals(now.division(today.source()))
                && division(old.keyboard()).equals(now.division(today.keyboard()));
    }
}
