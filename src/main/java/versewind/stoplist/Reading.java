package versewind.stoplist;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import versewind.organ.Coupler;
import versewind.organ.Family;

/** Goes through a list from top to bottom and collects what it says. */
final class Reading {

    private static final Pattern PISTON = Pattern.compile(
            "(?i)\\b(?:pistons?|studs?|generals?|generalkoppel|composition|divisionals?|memor(?:y|ies)|levels?|setzer\\w*|combination\\w*|kombination\\w*|combinaison\\w*|combinazion\\w*|reversib\\w*|sequencer|crescendo\\w*|walze|rollschweller|tutti|sforzando|appels?|anches|cancel|organo pleno|toe|thumb|schwelltritt|expression|swell pedal|setzen|zungen ab|pleno|absteller|registercrescendo|handregister|kombinationen|annullator\\w*|lock|zungeneinzelabsteller|ripieno al)\\b");
    private static final Pattern TREMULANTS_APART = Pattern.compile("[,;]|(?<=\\p{L}{4})\\.\\s");
    private static final Pattern PLUS = Pattern.compile("[\\p{L}\\d.]\\s?\\+\\s?[\\p{L}\\d]");
    private static final Pattern AL_PEDALE = Pattern.compile("(?i)\\bal pedal\\w*");
    private static final Pattern ONLY_MANUAL = Pattern.compile("(?i)^(?:manuale?|manuaal)\\b");
    private static final Pattern AT_END = Pattern.compile("[\\s:.*-]+$");

    /** "Hoofdwerk - Bovenwerk"; "II - Manuale" and "Manual - Oberwerk" are headings. */
    private static final Pattern DASHED_PAIR =
            Pattern.compile("(?!(?i:manua|clav|klav))(?![IVX]+\\b)\\p{L}{3,}\\.?\\s-\\s\\p{L}{3,}\\.?");

    private static final int LONGEST_PAIR = 16;
    private static final Pattern HALF = Pattern.compile(
            "(?i)(?:mano|lado)\\s+(izquierda|derecha).{0,12}|(m\\.?\\s?[id]\\.?)|(bajos|tiples|bassi|soprani)");

    private final Style style;
    private final List<Draft> divisions = new ArrayList<>();
    private final List<PlacedCoupler> couplers = new ArrayList<>();
    private final List<PlacedTremulant> tremulants = new ArrayList<>();
    private final List<Unread> unread = new ArrayList<>();

    /** A division while its stops are collected. */
    static final class Draft {
        final String name;
        final DivisionWord word;
        final int line;
        Optional<Boolean> enclosed;
        OptionalInt keys;
        final List<ReadStop> stops = new ArrayList<>();

        Draft(Heading heading, int line) {
            this.line = line;
            this.name = heading.name();
            this.word = heading.word();
            this.enclosed = heading.enclosed();
            this.keys = heading.keys();
        }

        boolean isSame(Heading heading) {
            return Spelling.spelled(name).equals(Spelling.spelled(heading.name()));
        }
    }

    /**
     * A coupler and where it stands.
     *
     * @param coupler what was read
     * @param here the division under whose heading it stands; -1 for none
     * @param line where it stands
     */
    record PlacedCoupler(RoughCoupler coupler, int here, int line) {}

    /**
     * A tremulant and where it stands.
     *
     * @param text its name
     * @param division the division it names
     * @param here the division under whose heading it stands; -1 for none
     * @param line where it stands
     */
    record PlacedTremulant(String text, Optional<DivisionWord> division, int here, int line) {}

    /**
     * The part of the list that a line stands in.
     *
     * @param kind what it holds; stops where it is empty
     * @param division the division; -1 before the first
     * @param hint pitches that the heading of couplers names
     * @param half the half of the keyboard that the stops play; "" for the whole
     */
    record Section(Optional<SectionWord.Kind> kind, int division, Set<Coupler.Kind> hint, String half) {

        static final Section BEFORE = new Section(Optional.empty(), -1, Set.of(), "");

        CouplerLine.Where where() {
            return kind.map(each -> switch (each) {
                        case COUPLERS -> CouplerLine.Where.AMONG_COUPLERS;
                        case ACCESSORIES -> CouplerLine.Where.AMONG_ACCESSORIES;
                        case TREMULANTS, PISTONS, NOTES, TITLE -> CouplerLine.Where.ELSEWHERE;
                    })
                    .orElse(CouplerLine.Where.ELSEWHERE);
        }
    }

    /** Whether a text tells of pistons and the like. */
    static boolean isOfPistons(String text) {
        return PISTON.matcher(text).find();
    }

    /** Whether a text heads one half of a keyboard. */
    static boolean isHalf(String text) {
        return HALF.matcher(text.strip()).matches();
    }

    Reading(Style style) {
        this.style = style;
    }

    List<Draft> divisions() {
        return divisions;
    }

    List<PlacedCoupler> couplers() {
        return couplers;
    }

    List<PlacedTremulant> tremulants() {
        return tremulants;
    }

    List<Unread> unread() {
        return unread;
    }

    String language() {
        return style.language();
    }

    /** Reads all rows. */
    void read(List<Grid.Row> rows) {
        new Columns(this, rows).read();
    }

    /** Whether a text is the heading of a division or of another part. */
    boolean isHeading(String text) {
        return heading(text).isPresent() || section(text).isPresent() || isHalf(text);
    }

    private Optional<SectionWord> section(String text) {
        return SectionWord.read(text, style.language()).filter(each -> each.kind() != SectionWord.Kind.TITLE);
    }

    private Optional<Heading> heading(String text) {
        Optional<Heading> heading = Heading.read(text, style.language());
        boolean mayBeStop = heading.isPresent()
                && !style.pitched()
                && heading.get().word().role().matches("bombarde|other|echo|positive")
                && Lexicon.get()
                        .exact(AT_END.matcher(text).replaceAll(""), style.setting())
                        .isPresent();
        return mayBeStop ? Optional.empty() : heading;
    }

    /** Reads a text, and says in which part of the list whatever follows stands. */
    Section text(String text, int line, Section section) {
        if (isHalf(text)) {
            Section in = section.division() < 0 ? openOnly(line) : section;
            return new Section(Optional.empty(), in.division(), Set.of(), clean(text));
        }
        Optional<SectionWord> word = SectionWord.read(text, style.language());
        if (word.isPresent() && isOnlyManual(word.get())) {
            return openManual(
                    clean(Compass.without(text).replaceAll("[(\\[].*$", "")), Compass.keys(text, false), line);
        }
        if (word.isPresent()) {
            return part(word.get(), line, section);
        }
        Optional<Heading> heading = heading(text);
        boolean coupler = section.where() != CouplerLine.Where.ELSEWHERE || heading.isEmpty() || isPair(text, section);
        CouplerLine couplerLine = coupler && mayCouple(text, section)
                ? CouplerLine.read(text, section.where(), section.hint(), style.language())
                : new CouplerLine(List.of(), List.of());
        if (!couplerLine.couplers().isEmpty() && (heading.isEmpty() || isPair(text, section))) {
            couplers(couplerLine, line, section);
            return section;
        }
        if (heading.isPresent()) {
            Section opened = open(heading.get(), line);
            return heading.get().inline().isEmpty()
                    ? opened
                    : text(heading.get().inline(), line, opened);
        }
        if (Tremulants.isOne(text) && !Feet.MARKED.matcher(text).find()) {
            tremulants(text, line, section);
            return section;
        }
        if (section.kind().isPresent()) {
            unread.add(amongOthers(text, line, section.kind().get()));
            return section;
        }
        return stops(text, line, section);
    }

    private void tremulants(String text, int line, Section section) {
        for (String part : TREMULANTS_APART.split(text, -1)) {
            if (Tremulants.isOne(part)) {
                Tremulants.divisions(part, style.language())
                        .forEach(division ->
                                tremulants.add(new PlacedTremulant(clean(part), division, shaken(section), line)));
            } else if (!clean(part).isEmpty()) {
                unread.add(amongOthers(part.strip(), line, SectionWord.Kind.ACCESSORIES));
            }
        }
    }

    /** Couplers are neither among pistons nor in what stands before the first division. */
    private boolean mayCouple(String text, Section section) {
        boolean before = section.kind().isEmpty() && section.division() < 0;
        boolean stop = section.kind().isEmpty()
                && AL_PEDALE.matcher(text).find()
                && Feet.MARKED.matcher(text).find();
        return !before
                && !stop
                && section.kind()
                        .filter(kind -> kind == SectionWord.Kind.PISTONS || kind == SectionWord.Kind.NOTES)
                        .isEmpty();
    }

    /** Whether what could be a heading joins two divisions: "I/P", "Ped + I", and among couplers "II-Ped." too. */
    private static boolean isPair(String text, Section section) {
        boolean among = section.where() != CouplerLine.Where.ELSEWHERE;
        return text.contains("/")
                || PLUS.matcher(text).find()
                || (among && DASHED_PAIR.matcher(text.strip()).matches())
                || (among && text.length() < LONGEST_PAIR && text.matches(".*\\S[-+]\\S.*"));
    }

    private static Unread amongOthers(String text, int line, SectionWord.Kind kind) {
        boolean note = kind == SectionWord.Kind.NOTES
                || kind == SectionWord.Kind.PISTONS
                || PISTON.matcher(text).find()
                || Recognition.isNote(text);
        return note
                ? new Unread(line, text, "a playing aid or a note, no stop", Unread.Weight.NOTE)
                : new Unread(
                        line,
                        text,
                        "it stands among couplers and playing aids, and is none that is known",
                        Unread.Weight.DOUBT);
    }

    /** The division that a tremulant stands under; none where it stands among the couplers below the pedal. */
    private int shaken(Section section) {
        boolean below = section.kind().isPresent()
                && section.division() >= 0
                && divisions.get(section.division()).word.isPedal();
        return below ? -1 : section.division();
    }

    private Section part(SectionWord word, int line, Section section) {
        if (word.kind() == SectionWord.Kind.TITLE) {
            unread.add(new Unread(line, word.head(), "a title", Unread.Weight.NOTE));
            return word.inline().isEmpty() ? section : text(word.inline(), line, section);
        }
        Set<Coupler.Kind> hint =
                word.kind() == SectionWord.Kind.COUPLERS ? CouplerLine.hint(word.head(), style.language()) : Set.of();
        Section part = new Section(Optional.of(word.kind()), section.division(), kinds(hint), "");
        if (word.inline().isEmpty()) {
            return part;
        }
        if (word.kind() == SectionWord.Kind.TREMULANTS) {
            for (String each : word.inline().split("[,;]", -1)) {
                Tremulants.divisions(each, style.language())
                        .forEach(division -> tremulants.add(
                                new PlacedTremulant("Tremulant " + clean(each), division, shaken(section), line)));
            }
            return part;
        }
        if (part.where() != CouplerLine.Where.ELSEWHERE) {
            CouplerLine couplerLine =
                    CouplerLine.read(word.head() + ": " + word.inline(), part.where(), hint, style.language());
            couplers(couplerLine, line, part);
            return part;
        }
        unread.add(new Unread(
                line, word.head() + ": " + word.inline(), "a playing aid or a note, no stop", Unread.Weight.NOTE));
        return part;
    }

    private static Set<Coupler.Kind> kinds(Set<Coupler.Kind> hint) {
        return hint.isEmpty() ? Set.of() : EnumSet.copyOf(hint);
    }

    private void couplers(CouplerLine read, int line, Section section) {
        read.couplers().forEach(each -> couplers.add(new PlacedCoupler(each, section.division(), line)));
        for (String rest : read.rest()) {
            if (Tremulants.isOne(rest)) {
                Tremulants.divisions(rest, style.language())
                        .forEach(division ->
                                tremulants.add(new PlacedTremulant(clean(rest), division, shaken(section), line)));
            } else {
                boolean aid = PISTON.matcher(rest).find()
                        || Recognition.isNote(rest)
                        || section.where() == CouplerLine.Where.AMONG_ACCESSORIES;
                unread.add(new Unread(
                        line,
                        rest,
                        aid ? "a playing aid, no coupler" : "no coupler that is known",
                        aid ? Unread.Weight.NOTE : Unread.Weight.DOUBT));
            }
        }
    }

    private static String clean(String text) {
        return text.replaceAll("^[\\s\\d.)*\u2022-]+|[\\s:.,;]+$", "").replaceAll("\\s+", " ");
    }

    /** Opens the division of a heading, or goes on with it where it was opened before. */
    private Section open(Heading heading, int line) {
        for (int i = 0; i < divisions.size(); i++) {
            Draft draft = divisions.get(i);
            if (draft.isSame(heading)) {
                draft.enclosed = draft.enclosed.or(heading::enclosed);
                draft.keys = draft.keys.isPresent() ? draft.keys : heading.keys();
                return new Section(Optional.empty(), i, Set.of(), "");
            }
        }
        divisions.add(new Draft(heading, line));
        return new Section(Optional.empty(), divisions.size() - 1, Set.of(), "");
    }

    /** Opens the manual of an organ whose list names none. */
    private Section openOnly(int line) {
        return openManual("Manual", OptionalInt.empty(), line);
    }

    private Section openManual(String name, OptionalInt keys, int line) {
        DivisionWord word = new DivisionWord("", OptionalInt.of(1), false, "");
        return open(new Heading(name, word, Optional.empty(), keys, ""), line);
    }

    /** "Manuale" above the first stops: the manual of an organ that has one. Followed by a heading, it stays empty. */
    private boolean isOnlyManual(SectionWord word) {
        return word.kind() == SectionWord.Kind.TITLE
                && word.inline().isEmpty()
                && divisions.isEmpty()
                && ONLY_MANUAL.matcher(word.head().strip()).find();
    }

    private static List<ReadStop> halved(List<ReadStop> stops, String half) {
        return half.isEmpty()
                ? stops
                : stops.stream()
                        .map(stop -> stop.named(stop.name() + " " + half, "one half of the keyboard"))
                        .toList();
    }

    /** Opens a division that the list gives a name of its own. */
    Section openNamed(String name, int line) {
        DivisionWord word = new DivisionWord("other", OptionalInt.empty(), false, name);
        return open(new Heading(clean(name), word, Optional.empty(), OptionalInt.empty(), ""), line);
    }

    /** Whether a text names a stop with its pitch. */
    boolean isPitchedStop(String text) {
        StopLine stop = StopLine.of(text, style);
        return stop.mark() != StopLine.Mark.NONE
                && Lexicon.get().known(stop.name(), style.setting()).isPresent();
    }

    /** Whether a text may be the heading of a division with a name that nobody else gives one. */
    boolean mayNameDivision(String text) {
        StopLine stop = StopLine.of(text, style);
        return style.pitched()
                && stop.mark() == StopLine.Mark.NONE
                && Spelling.words(text).size() <= 3
                && !text.matches(".*\\d.*")
                && Lexicon.get().find(stop.name(), style.setting()).isEmpty()
                && !PISTON.matcher(text).find();
    }

    private Section stops(String text, int line, Section section) {
        Section in = section;
        List<ReadStop> found = new ArrayList<>();
        for (String segment : StopSegments.of(text, style)) {
            Setting.Keyboard keyboard =
                    in.division() >= 0 && divisions.get(in.division()).word.isPedal()
                            ? Setting.Keyboard.PEDAL
                            : Setting.Keyboard.MANUAL;
            Recognition recognition = Recognition.of(segment, line, style, keyboard);
            if (recognition instanceof Recognition.Stops stops) {
                if (in.division() < 0 && !isPitchedStop(segment)) {
                    unread.add(new Unread(line, segment, Unread.BEFORE, Unread.Weight.NOTE));
                    continue;
                }
                in = in.division() < 0 ? openOnly(line) : in;
                List<ReadStop> read = halved(stops.stops(), in.half());
                found.addAll(read);
                divisions.get(in.division()).stops.addAll(read);
            } else if (recognition instanceof Recognition.Further further) {
                further(further.line(), segment, line, found, in);
            } else if (recognition instanceof Recognition.None none) {
                couplerOrUnread(segment, none, line, in);
            }
        }
        return in;
    }

    /** Among stops a part of a line may still be a coupler: "Trumpet 8, Swell to Great". */
    private void couplerOrUnread(String segment, Recognition.None none, int line, Section section) {
        CouplerLine read = CouplerLine.read(segment, CouplerLine.Where.ELSEWHERE, Set.of(), style.language());
        if (!read.couplers().isEmpty()) {
            couplers(read, line, section);
        } else if (Tremulants.isOne(segment)) {
            tremulants.add(new PlacedTremulant(clean(segment), Optional.empty(), shaken(section), line));
        } else {
            boolean before = section.division() < 0;
            boolean aid = PISTON.matcher(segment).find();
            unread.add(new Unread(
                    line,
                    segment,
                    aid ? "a playing aid, no stop" : before ? Unread.BEFORE : none.why(),
                    aid || before ? Unread.Weight.NOTE : none.weight()));
        }
    }

    private void further(StopLine pitches, String text, int line, List<ReadStop> found, Section section) {
        if (found.isEmpty() || section.division() < 0) {
            unread.add(new Unread(line, text, "a number without a name", Unread.Weight.NOTE));
            return;
        }
        List<ReadStop> stops = divisions.get(section.division()).stops;
        ReadStop last = found.get(found.size() - 1);
        Family family = last.family();
        if (family.isCompound()) {
            int ranks = pitches.ranks() > 0 ? Math.min(pitches.ranks(), 12) : last.ranks();
            Optional<versewind.organ.Footage> feet = last.footage().or(pitches::pitch);
            stops.set(
                    stops.indexOf(last),
                    new ReadStop(
                            last.name(),
                            feet,
                            last.supposed(),
                            ranks,
                            family,
                            last.pipe(),
                            last.how(),
                            last.strengthDb(),
                            last.remarks(),
                            line));
            return;
        }
        for (versewind.organ.Footage feet : pitches.feet()) {
            if (last.supposed() && stops.contains(last)) {
                stops.set(
                        stops.indexOf(last),
                        new ReadStop(
                                last.name(),
                                Optional.of(feet),
                                false,
                                last.ranks(),
                                family,
                                last.pipe(),
                                last.how(),
                                last.strengthDb(),
                                List.of(),
                                line));
                return;
            }
            Recognition again = Recognition.of(
                    last.name() + " " + feet + "'",
                    line,
                    style,
                    divisions.get(section.division()).word.isPedal()
                            ? Setting.Keyboard.PEDAL
                            : Setting.Keyboard.MANUAL);
            if (again instanceof Recognition.Stops more) {
                found.addAll(more.stops());
                stops.addAll(more.stops());
            }
        }
    }
}
