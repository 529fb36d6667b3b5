package versewind.organ;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The notation of a registration in words, for one instrument: {@code Great: Open Diapason 8, Principal 4; Pedal: all
 * but Trombone 16; couplers: Great to Pedal; Tremulant drawn; Swell closed}. {@link #parse} reads whatever {@link
 * #format} or {@link #parts} writes.
 *
 * <p>Line ends may replace semicolons. Names may be shortened as {@link Names} allows; a comma, semicolon or colon in a
 * name has a backslash before it, see {@link NameList}. Also read: {@code tremulants: Tremulant}, {@code boxes: Swell
 * closed}, {@code Swell=closed} and {@code Swell: closed}; these heads in the singular; and the whole name of a coupler
 * or a tremulant by itself. Swell boxes that are not mentioned are open.
 */
public final class RegistrationText {

    /** Stands for a registration with nothing drawn and all boxes open. */
    public static final String NOTHING = "nothing drawn";

    private static final String COUPLERS = "couplers";
    private static final String TREMULANTS = "tremulants";
    private static final String BOXES = "boxes";
    /** The same heads in the singular, which are read and never written. */
    private static final Map<String, String> PLURALS =
            Map.of("coupler", COUPLERS, "tremulant", TREMULANTS, "tremolo", TREMULANTS, "box", BOXES);

    private static final String DRAWN = " drawn";
    private static final int FEWEST_FOR_ALL = 4;
    private static final List<BoxPosition> POSITIONS = List.of(BoxPosition.values());
    private static final Pattern BOX = Pattern.compile("(?is)(.*?\\S)(?:\\s*[=:]\\s*|\\s+)("
            + POSITIONS.stream()
                    .map(position -> position.word().replace(" ", "[ -]"))
                    .collect(Collectors.joining("|"))
            + "|shut)");
    private static final Pattern ALL = Pattern.compile("(?is)all(?:\\s+but\\s+(.+))?");
    private static final String EXAMPLE =
            "Write a division, a colon and its stops, like \"Great: Open Diapason 8, Principal 4\".";

    private final Instrument instrument;
    private final Names divisions;
    private final Names couplers;
    private final Names tremulants;

    public RegistrationText(Instrument instrument) {
        this.instrument = instrument;
        this.divisions = new Names("The organ has no division", "The divisions are", instrument.divisionNames());
        this.couplers = new Names("The organ has no coupler", "The couplers are", instrument.couplerNames());
        this.tremulants = new Names("The organ has no tremulant", "The tremulants are", instrument.tremulantNames());
    }

    /**
     * Part of a registration.
     *
     * @param where a division, "couplers", "tremulants" or "boxes"
     * @param names what is drawn there; for boxes each with its position, "Swell half"
     */
    public record Part(String where, List<String> names) {
        public Part {
            names = List.copyOf(names);
        }

        /** The names with commas between them. */
        public String text() {
            return String.join(", ", names);
        }
    }

    /** Every part that has something drawn, and the positions of all boxes. */
    public List<Part> parts(Registration drawn) {
        List<Part> parts = new ArrayList<>();
        for (int division = 0; division < instrument.divisions().size(); division++) {
            parts.add(new Part(instrument.divisionNames().get(division), labels(drawn.stops(), division)));
        }
        parts.add(new Part(COUPLERS, names(drawn.couplers(), instrument.couplerNames())));
        parts.add(new Part(TREMULANTS, names(drawn.tremulants(), instrument.tremulantNames())));
        parts.add(new Part(
                BOXES,
                enclosed()
                        .mapToObj(division -> instrument.divisionNames().get(division) + " "
                                + drawn.boxes().get(division).word())
                        .toList()));
        parts.removeIf(part -> part.names().isEmpty());
        return parts;
    }

    /**
     * The whole registration on one line; empty if nothing is drawn and all boxes are open. A division of which most is
     * drawn is written by what is not: "Swell: all but Celeste 8".
     */
    public String format(Registration drawn) {
        List<String> parts = new ArrayList<>();
        for (int division = 0; division < instrument.divisions().size(); division++) {
            String stops = shortest(drawn.stops(), division);
            if (!stops.isEmpty()) {
                parts.add(head(division) + ": " + stops);
            }
        }
        if (!drawn.couplers().isEmpty()) {
            parts.add(COUPLERS + ": " + couplers(drawn.couplers()));
        }
        names(drawn.tremulants(), instrument.tremulantNames())
                .forEach(name -> parts.add(NameList.escaped(name) + DRAWN));
        positions(drawn, " ").forEach(parts::add);
        return String.join("; ", parts);
    }

    /** Stops by division: "Great: Open Diapason 8, Principal 4; Pedal: Bourdon 16". */
    public String stops(IndexSet stops) {
        return IntStream.range(0, instrument.divisions().size())
                .filter(division -> !labels(stops, division).isEmpty())
                .mapToObj(division -> head(division) + ": " + list(labels(stops, division)))
                .collect(Collectors.joining("; "));
    }

    /** Couplers, with commas between them. */
    public String couplers(IndexSet set) {
        return list(names(set, instrument.couplerNames()));
    }

    /** Tremulants, with commas between them. */
    public String tremulants(IndexSet set) {
        return list(names(set, instrument.tremulantNames()));
    }

    /** The boxes that are not open: "Swell: closed; Choir: half". */
    public String boxes(Registration drawn) {
        return positions(drawn, ": ").collect(Collectors.joining("; "));
    }

    private Stream<String> positions(Registration drawn, String between) {
        return enclosed()
                .filter(division -> drawn.boxes().get(division) != BoxPosition.OPEN)
                .mapToObj(
                        division -> NameList.escaped(instrument.divisionNames().get(division))
                                + between
                                + drawn.boxes().get(division).word());
    }

    private IntStream enclosed() {
        return IntStream.range(0, instrument.divisions().size())
                .filter(division -> instrument.divisions().get(division).isEnclosed());
    }

    /** A division's name before a colon; one that could be read as another head has a backslash before it. */
    private String head(int division) {
        String name = NameList.escaped(instrument.divisionNames().get(division));
        String plain = Names.plain(name);
        return PLURALS.containsKey(plain) || PLURALS.containsValue(plain) ? "\\" + name : name;
    }

    private String shortest(IndexSet drawn, int division) {
        List<String> put = labels(drawn, division);
        List<String> left = labels(all(division).minus(drawn), division);
        if (put.size() < FEWEST_FOR_ALL || left.size() > put.size() / 2) {
            return list(put);
        }
        return left.isEmpty() ? "all" : "all but " + list(left);
    }

    private List<String> labels(IndexSet stops, int division) {
        return stops.stream()
                .mapToObj(instrument.stops()::get)
                .filter(placed -> placed.division() == division)
                .map(placed -> placed.stop().label())
                .toList();
    }

    private static List<String> names(IndexSet set, List<String> names) {
        return set.stream().mapToObj(names::get).toList();
    }

    private static String list(List<String> names) {
        String list = names.stream().map(NameList::escaped).collect(Collectors.joining(", "));
        return ALL.matcher(list).matches() ? "\\" + list : list;
    }

    private IndexSet all(int division) {
        return IndexSet.of(IntStream.range(0, instrument.stops().size())
                .filter(stop -> instrument.stops().get(stop).division() == division));
    }

    /** Reads a registration; the exception says what cannot be read and what would be right. */
    public Registration parse(String typed) throws NotationException {
        return parse(Registration.silent(instrument), typed);
    }

    /** The same, drawn beside what is drawn already; swell boxes that are not named stay where they are. */
    public Registration parse(Registration before, String typed) throws NotationException {
        Registration drawn = before;
        for (String part : NameList.parts(typed, ";\r\n")) {
            drawn = with(drawn, part.strip());
        }
        return drawn;
    }

    private Registration with(Registration drawn, String part) throws NotationException {
        String head = NameList.head(part, ":");
        if (head.length() == part.length()) {
            return withoutColon(drawn, part);
        }
        String names = names(part, head);
        String plain = Names.plain(head.strip());
        return switch (PLURALS.getOrDefault(plain, plain)) {
            case COUPLERS -> drawn.withCouplers(with(drawn.couplers(), couplers, names, 0));
            case TREMULANTS -> drawn.withTremulants(with(drawn.tremulants(), tremulants, names, 0));
            case BOXES -> withBoxes(drawn, names);
            default ->
                isPosition(NameList.name(head), names)
                        ? withBox(drawn, part)
                        : drawn.withStops(with(drawn.stops(), head, names));
        };
    }

    /** Whether what follows a division is the position of its box, and no stop's name: "Swell: closed". */
    private boolean isPosition(String head, String names) throws NotationException {
        int division = division(head);
        boolean isWord = BOX.matcher("- " + names.strip()).matches();
        return isWord
                && instrument.divisions().get(division).isEnclosed()
                && !stops(division).has(names.strip());
    }

    private Registration withoutColon(Registration drawn, String part) throws NotationException {
        String plain = Names.plain(part);
        if (plain.equals(NOTHING)) {
            return drawn;
        }
        if (plain.endsWith(DRAWN)) {
            return withTremulant(drawn, NameList.name(part.substring(0, part.length() - DRAWN.length())));
        }
        if (BOX.matcher(part).matches()) {
            return withBox(drawn, part);
        }
        Optional<Registration> more = withNamed(drawn, part);
        return more.orElseThrow(() -> new NotationException(Quoted.text(part) + " has no colon. " + EXAMPLE));
    }

    /** With couplers and tremulants that a list names in whole; empty where it names anything else, or nothing. */
    private Optional<Registration> withNamed(Registration drawn, String list) {
        Registration more = drawn;
        List<String> names = NameList.parts(list, ",");
        for (String each : names) {
            String name = NameList.name(each);
            OptionalInt coupler = couplers.whole(name);
            OptionalInt tremulant = tremulant(name);
            if (coupler.isPresent() == tremulant.isPresent()) {
                return Optional.empty();
            }
            more = coupler.isPresent()
                    ? more.withCouplers(more.couplers().with(coupler.getAsInt()))
                    : more.withTremulants(more.tremulants().with(tremulant.getAsInt()));
        }
        return names.isEmpty() ? Optional.empty() : Optional.of(more);
    }

    /** Index of the tremulant of a name; where there is only one, also of that word. */
    private OptionalInt tremulant(String name) {
        boolean isOnly =
                instrument.tremulants().size() == 1 && TREMULANTS.equals(PLURALS.get(Names.plain(name.strip())));
        return isOnly ? OptionalInt.of(0) : tremulants.whole(name);
    }

    /** What stands after the head and its colon. */
    private static String names(String part, String head) throws NotationException {
        if (head.length() == part.length()) {
            throw new NotationException(Quoted.text(part.strip()) + " has no colon. " + EXAMPLE);
        }
        String names = part.substring(head.length() + 1);
        if (names.isBlank()) {
            throw new NotationException("Nothing follows " + Quoted.text(head.strip() + ":") + ". " + EXAMPLE);
        }
        return names;
    }

    /** Reads stops by division alone. */
    public IndexSet stops(String typed) throws NotationException {
        IndexSet stops = IndexSet.EMPTY;
        for (String part : NameList.parts(typed, ";\r\n")) {
            String head = NameList.head(part, ":");
            stops = with(stops, head, names(part, head));
        }
        return stops;
    }

    /** Reads names of couplers. */
    public IndexSet readCouplers(String typed) throws NotationException {
        return with(IndexSet.EMPTY, couplers, typed, 0);
    }

    /** Reads names of tremulants. */
    public IndexSet readTremulants(String typed) throws NotationException {
        return with(IndexSet.EMPTY, tremulants, typed, 0);
    }

    /** Reads positions of boxes; all others are open. */
    public List<BoxPosition> readBoxes(String typed) throws NotationException {
        return withBoxes(Registration.silent(instrument), typed).boxes();
    }

    private IndexSet with(IndexSet before, String head, String names) throws NotationException {
        int division = division(NameList.name(head));
        int first = all(division).next(0);
        Names stops = stops(division);
        Matcher all = ALL.matcher(names.strip());
        if (!all.matches()) {
            return with(before, stops, names, first);
        }
        IndexSet but = all.group(1) == null ? IndexSet.EMPTY : with(IndexSet.EMPTY, stops, all.group(1), first);
        return before.plus(all(division).minus(but));
    }

    private Names stops(int division) {
        Division of = instrument.divisions().get(division);
        return new Names(
                of.name() + " has no stop",
                of.name() + " has",
                of.stops().stream().map(Stop::label).toList());
    }

    /** With the names of a list drawn, the first of these names having this index. */
    private static IndexSet with(IndexSet before, Names names, String list, int first) throws NotationException {
        IndexSet drawn = before;
        for (String each : NameList.parts(list, ",")) {
            String name = NameList.name(each);
            int index = first + names.find(name);
            if (drawn.contains(index)) {
                throw new NotationException(Quoted.text(name) + " is drawn twice. Leave out one of them.");
            }
            drawn = drawn.with(index);
        }
        return drawn;
    }

    /** Index of a division. */
    public int division(String typed) throws NotationException {
        return divisions.find(typed);
    }

    /** Index of a division that a hand can play. */
    public int manual(String typed) throws NotationException {
        int division = division(typed);
        if (instrument.divisions().get(division).isPedal()) {
            throw new NotationException("A hand cannot play the "
                    + instrument.divisions().get(division).name() + ". Name the division of a manual.");
        }
        return division;
    }

    /** Puts boxes in the positions of a list: "Swell closed, Choir=half". Commas or semicolons stand between them. */
    public Registration withBoxes(Registration drawn, String typed) throws NotationException {
        Registration set = drawn;
        for (String box : NameList.parts(typed, ",;")) {
            set = withBox(set, box.strip());
        }
        return set;
    }

    /** Puts a box in a position: "Swell closed", "Swell=closed" or "Swell: closed". */
    private Registration withBox(Registration drawn, String typed) throws NotationException {
        Matcher named = BOX.matcher(typed);
        int sign = Math.max(typed.lastIndexOf('='), typed.lastIndexOf(':'));
        if (!named.matches() && sign < 0) {
            throw new NotationException(
                    Quoted.text(typed) + " is no position of a box. Write it like \"Swell=closed\".");
        }
        int division = division(NameList.name(named.matches() ? named.group(1) : typed.substring(0, sign)));
        if (!instrument.divisions().get(division).isEnclosed()) {
            throw new NotationException(
                    instrument.divisionNames().get(division) + " is not in a swell box. Leave out its position.");
        }
        Names positions = new Names(
                "There is no position",
                "The positions are",
                POSITIONS.stream().map(BoxPosition::word).toList());
        String position =
                named.matches() ? named.group(2) : typed.substring(sign + 1).strip();
        return drawn.withBox(
                division,
                position.equalsIgnoreCase("shut") ? BoxPosition.CLOSED : POSITIONS.get(positions.find(position)));
    }

    /** With a tremulant drawn. */
    public Registration withTremulant(Registration drawn, String typed) throws NotationException {
        return drawn.withTremulants(drawn.tremulants().with(tremulants.find(typed)));
    }
}
