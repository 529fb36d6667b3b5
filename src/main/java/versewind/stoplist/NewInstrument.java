package versewind.stoplist;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Action;
import versewind.organ.Coupler;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.Instrument;
import versewind.organ.MixtureBreak;
import versewind.organ.Pipe;
import versewind.organ.Pistons;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.organ.StopName;
import versewind.organ.SwellBox;
import versewind.organ.Tremulant;

/**
 * An instrument made from a stop list, and what had to be assumed for it.
 *
 * @param instrument the organ, in an assumed room
 * @param remarks what was assumed or changed, a sentence each
 */
public record NewInstrument(Instrument instrument, List<String> remarks) {

    /** A parish church of middle size. Every number is an estimate, to be replaced by those of the room. */
    private static final Room SUPPOSED_ROOM = new Room(
            4000,
            300,
            new Room.MeasuredTimes(List.of(2.6, 2.5, 2.4, 2.2, 2.0, 1.6)),
            new Room.Distances(15, 25, 8, 10, 3));

    private static final int MANUAL_KEYS = 56;
    private static final int PEDAL_KEYS = 30;
    private static final double MOST_TRIM_DB = 8;

    /** A stop of half a keyboard counts as a whole one with half its power. */
    private static final double HALF_TRIM_DB = -3;

    /**
     * Makes an instrument.
     *
     * @param list the stop list
     * @param name what the organ is called, and after a comma where it stands
     * @return empty where the list has no manual with a stop
     */
    public static Optional<NewInstrument> of(StopList list, String name) {
        boolean manual = list.divisions().stream().anyMatch(division -> !division.isPedal());
        boolean few = list.stops().count() <= Instrument.MOST_STOPS;
        return manual && few ? Optional.of(new Maker(list).made(name)) : Optional.empty();
    }

    public NewInstrument {
        remarks = List.copyOf(remarks);
    }

    /** The remarks but that on the action and the room, which the list gives below. */
    List<String> withoutRoom() {
        return remarks.subList(1, remarks.size());
    }

    private static final class Maker {
        private final StopList list;
        private final List<String> remarks = new ArrayList<>();
        private final List<String> halves = new ArrayList<>();
        private final Map<String, List<ReadStop>> readStops = new LinkedHashMap<>();
        private String pedal = "";

        Maker(StopList list) {
            this.list = list;
        }

        NewInstrument made(String name) {
            remarks.add(
                    "Assumed, since the list does not say: electric action, and a church of 4000 m3 with 300 seats and"
                            + " a reverberation time of 2.2 s at 1000 Hz. Enter the figures of your room.");
            Map<String, ReadDivision> divisions = new LinkedHashMap<>();
            for (ReadDivision division : list.divisions()) {
                String into = into(division);
                divisions.putIfAbsent(into, division);
                readStops.computeIfAbsent(into, key -> new ArrayList<>()).addAll(division.stops());
            }
            List<Division> made = new ArrayList<>();
            divisions.forEach((key, division) -> made.add(division(key, division, readStops.get(key))));
            int comma = name.lastIndexOf(',');
            Instrument instrument = new Instrument(
                    comma < 0 ? name : name.substring(0, comma).strip(),
                    comma < 0 ? "" : name.substring(comma + 1).strip(),
                    Action.ELECTRIC,
                    0,
                    borrowing(made, divisions.keySet()),
                    couplers(),
                    tremulants(),
                    pistons(),
                    SUPPOSED_ROOM);
            list.stops()
                    .filter(ReadStop::supposed)
                    .map(stop -> stop.name() + " " + stop.feet())
                    .reduce((first, next) -> first + ", " + next)
                    .ifPresent(stops -> remarks.add("Pitches assumed from the names: " + stops + "."));
            if (!halves.isEmpty()) {
                remarks.add("Stops of half a keyboard: " + String.join(", ", halves)
                        + ". Each counts as a whole stop, 3 dB softer.");
            }
            return new NewInstrument(instrument, remarks);
        }

        /** An instrument has one pedal. */
        private String into(ReadDivision division) {
            if (!division.isPedal()) {
                return division.name();
            }
            if (pedal.isEmpty()) {
                pedal = division.name();
            } else {
                remarks.add(division.name() + " is joined to " + pedal + ".");
            }
            return pedal;
        }

        private Division division(String name, ReadDivision division, List<ReadStop> stops) {
            List<Stop> made = new ArrayList<>();
            Set<String> labels = new HashSet<>();
            boolean isBoxed = division.enclosed()
                    || stops.stream().anyMatch(stop -> stop.isBoxed().orElse(false));
            int keys = division.keys().orElse(division.isPedal() ? PEDAL_KEYS : MANUAL_KEYS);
            for (ReadStop stop : stops) {
                List<MixtureBreak> breaks = Composition.of(stop, keys, division.isPedal());
                double trimDb = stop.strengthDb() + (isHalf(division, stop) ? HALF_TRIM_DB : 0);
                Stop.Enclosure enclosure = isBoxed && !stop.isBoxed().orElse(division.enclosed())
                        ? Stop.Enclosure.OUTSIDE_THE_BOX
                        : Stop.Enclosure.AS_ITS_DIVISION;
                Stop first = stop(stop, stop.name(), trimDb, enclosure, breaks);
                Stop distinct = first;
                for (int i = 2; !labels.add(distinct.label()); i++) {
                    distinct = stop(stop, stop.name() + " (" + i + ")", trimDb, enclosure, breaks);
                }
                if (isHalf(division, stop)) {
                    halves.add(name + " " + distinct.label());
                }
                if (!distinct.equals(first)) {
                    remarks.add(name + " has two stops called " + first.label() + ": one is now called "
                            + distinct.label() + ".");
                }
                made.add(distinct);
            }
            OptionalInt manual = division.manual();
            return new Division(name, manual, keys, isBoxed ? Optional.of(new SwellBox(0)) : Optional.empty(), made);
        }

        /** The divisions with the stops that use the pipes of others linked to these. */
        private List<Division> borrowing(List<Division> made, Set<String> names) {
            List<String> places = List.copyOf(names);
            List<ReadDivision> read = places.stream()
                    .map(name -> new ReadDivision(
                            name,
                            made.get(places.indexOf(name)).manual(),
                            false,
                            OptionalInt.empty(),
                            readStops.get(name)))
                    .toList();
            BorrowedRanks lenders = new BorrowedRanks(read);
            List<Division> linked = new ArrayList<>();
            for (int d = 0; d < made.size(); d++) {
                List<Stop> stops = new ArrayList<>();
                for (int s = 0; s < made.get(d).stops().size(); s++) {
                    Stop stop = made.get(d).stops().get(s);
                    BorrowedRanks.At borrower = new BorrowedRanks.At(d, s);
                    Optional<BorrowedRanks.At> found = lenders.of(borrower);
                    Optional<StopName> lender = found.map(at -> new StopName(
                            made.get(at.division()).name(),
                            made.get(at.division()).stops().get(at.stop()).label()));
                    if (lender.isEmpty() && lenders.isBorrowed(borrower)) {
                        remarks.add(made.get(d).name() + " " + stop.label()
                                + " is borrowed, but the stop that lends its pipes was not found: it counts as"
                                + " having pipes of its own.");
                    }
                    if (found.filter(at -> lenders.isGuessed(borrower, at)).isPresent()) {
                        remarks.add(made.get(d).name() + " " + stop.label() + " is taken to use the pipes of "
                                + lender.get() + ", since no stop of its name is there to lend them.");
                    }
                    stops.add(lender.isPresent() ? stop.borrowing(lender.get()) : stop);
                }
                linked.add(made.get(d).withStops(stops));
            }
            return linked;
        }

        private Pistons pistons() {
            ReadPistons read = list.pistons();
            if (!read.any()) {
                return Pistons.NONE;
            }
            Map<String, Integer> divisionals = new LinkedHashMap<>();
            read.divisionals().forEach((division, count) -> {
                String known = known(division);
                if (!known.isEmpty()) {
                    divisionals.merge(known, count, Math::max);
                }
            });
            boolean any = read.generals() > 0 || !divisionals.isEmpty();
            return any ? new Pistons(read.generals(), divisionals, Math.max(1, read.levels())) : Pistons.NONE;
        }

        private static boolean isHalf(ReadDivision division, ReadStop stop) {
            List<String> pieces = List.of(stop.name().split(" ", -1));
            return !division.isPedal()
                    && IntStream.range(1, pieces.size())
                            .mapToObj(i -> pieces.subList(i, pieces.size()))
                            .map(tail -> tail.stream().map(Spelling::spelled).toList())
                            .anyMatch(tail -> WordList.of("half stop").at(tail, 0) == tail.size());
        }

        private static Stop stop(
                ReadStop stop, String name, double strengthDb, Stop.Enclosure enclosure, List<MixtureBreak> breaks) {
            Family family = stop.family();
            boolean fits = stop.pipe().isReed() == family.isReed();
            Pipe pipe = fits && !family.isCompound() ? stop.pipe() : family.usualPipe();
            int ranks = family.isCompound() || family == Family.CELESTE ? stop.ranks() : 1;
            double trimDb = Math.max(-MOST_TRIM_DB, Math.min(MOST_TRIM_DB, strengthDb));
            return new Stop(
                    name,
                    stop.footage().map(feet -> sounding(feet, family)),
                    family,
                    pipe,
                    ranks,
                    breaks,
                    trimDb,
                    enclosure,
                    Optional.empty(),
                    note(stop, breaks));
        }

        /** What an instrument keeps of the remarks: the compass, the composition, and what was assumed. */
        private static String note(ReadStop stop, List<MixtureBreak> breaks) {
            boolean isAssumed = breaks.size() > 1 && stop.remarks().stream().noneMatch(Composition::isBreak);
            return Stream.concat(stop.remarks().stream(), isAssumed ? Stream.of("breaks assumed") : Stream.empty())
                    .filter(each -> Compass.isSaid(each)
                            || ((breaks.isEmpty() || isAssumed) && Composition.isOne(each))
                            || WordList.of("assumed").in(each))
                    .collect(Collectors.joining("; "));
        }

        /** Old builders wrote 3 ft for 2 2/3, 6 for 5 1/3 and 1 1/2 for 1 1/3. */
        private static Footage sounding(Footage feet, Family family) {
            if (family != Family.MUTATION) {
                return feet;
            }
            return switch (feet.toString()) {
                case "3" -> new Footage(8, 3);
                case "6" -> new Footage(16, 3);
                case "12" -> new Footage(32, 3);
                case "1 1/2" -> new Footage(4, 3);
                default -> feet;
            };
        }

        private List<Coupler> couplers() {
            List<Coupler> couplers = new ArrayList<>();
            for (ReadCoupler coupler : list.couplers()) {
                String source = known(coupler.source());
                String keyboard = known(coupler.keyboard());
                if (coupler.isWhole() && !source.isEmpty() && !keyboard.isEmpty()) {
                    couplers.add(new Coupler(coupler.name(), source, keyboard, coupler.kind()));
                } else {
                    remarks.add(
                            "The coupler " + coupler.name() + " is left out: its divisions are not both in the list.");
                }
            }
            return couplers;
        }

        private String known(String division) {
            return list.divisions().stream()
                    .filter(each -> each.name().equals(division))
                    .findFirst()
                    .map(each -> each.isPedal() ? pedal : each.name())
                    .orElse("");
        }

        private List<Tremulant> tremulants() {
            return list.tremulants().stream()
                    .filter(tremulant -> !known(tremulant.division()).isEmpty())
                    .map(tremulant -> new Tremulant(tremulant.name(), known(tremulant.division())))
                    .toList();
        }
    }
}
