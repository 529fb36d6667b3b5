package versewind.stoplist;

import java.util.Optional;
import java.util.Set;
import versewind.organ.Coupler;
import versewind.stoplist.SectionWord.Kind;
import versewind.stoplist.Unread.Weight;

/** Gathers the couplers and tremulants of a list, and separates pistons and notes from them. */
final class PlayingAids {

    private static final TokenForm PEDAL_PITCH = TokenForm.of("=al =pedale|=pedaliera|=pedal");
    /** "30 SV 4'" among stops: a division coupled to itself. */
    private static final TokenForm OWN = TokenForm.of("#3? word _#2 ~quote|<feet>");

    static final String USUAL =
            "not said which: taken to join the manuals and to couple each to the pedal; please check";

    private final ParsedLines lines;
    private final String language;

    PlayingAids(ParsedLines lines, String language) {
        this.lines = lines;
        this.language = language;
    }

    /** The couplers of a line, where it may hold some: neither among pistons nor before the first division. */
    CouplerLine couplers(String text, Section section) {
        Line line = new Line(text);
        boolean before = section.kind().isEmpty() && section.isBeforeDivisions();
        boolean stop = section.kind().isEmpty() && PEDAL_PITCH.in(line) >= 0 && Pitches.isMarked(line);
        boolean aside = section.is(Kind.PISTONS) || section.is(Kind.NOTES);
        return before || stop || aside
                ? CouplerLine.NONE
                : CouplerLine.read(text, section.where(), section.hint(), language);
    }

    /** Takes in the couplers of a line, and the tremulants among them. */
    void take(CouplerLine read, int line, Section section) {
        read.couplers().forEach(each -> lines.add(new ParsedLines.PlacedCoupler(each, section.division(), line)));
        for (String rest : read.rest()) {
            if (CouplerLine.isUsual(rest)) {
                lines.leaveOut(line, rest, USUAL, Weight.DOUBT);
            } else if (Tremulants.isOne(rest)) {
                tremulant(Spelling.unnumbered(rest), rest, line, section);
            } else if (isAidOrNote(rest) || section.is(Kind.ACCESSORIES)) {
                lines.leaveOut(line, rest, "a playing aid, not a coupler", Weight.NOTE);
            } else {
                lines.leaveOut(line, rest, "not a known coupler", Weight.DOUBT);
            }
        }
    }

    /** Takes in the tremulants of a line. */
    void tremulants(String text, int line, Section section) {
        for (String part : Segments.split(text, PlayingAids::isBetween)) {
            if (Tremulants.isOne(part)) {
                tremulant(Spelling.unnumbered(part), part, line, section);
            } else if (!Spelling.unnumbered(part).isEmpty()) {
                other(part, line, Kind.ACCESSORIES);
            }
        }
    }

    private static boolean isBetween(Line line, int token) {
        boolean sentence = line.isSign(token, ".")
                && line.gap(token + 1) > 0
                && line.is(token - 1, Token.Kind.WORD)
                && line.at(token - 1).text().length() > 3;
        return sentence || line.isSign(token, ",;");
    }

    private void tremulant(String name, String text, int line, Section section) {
        Tremulants.divisions(text, language).forEach(division -> tremulant(name, division, line, section));
    }

    /** Where it stands among the couplers below the pedal, it need not belong to the pedal. */
    private void tremulant(String name, Optional<DivisionWord> division, int line, Section section) {
        boolean below = section.kind().isPresent() && lines.isInPedal(section);
        lines.add(new ParsedLines.PlacedTremulant(name, division, below ? -1 : section.division(), line));
    }

    /** Leaves out a line that stands among what is no stop. */
    void other(String text, int line, Kind kind) {
        if (kind == Kind.NOTES || kind == Kind.PISTONS || isAidOrNote(text)) {
            lines.leaveOut(line, text, "a playing aid or a note, not a stop", Weight.NOTE);
        } else {
            String why = "listed among couplers and playing aids, but not a known one";
            lines.leaveOut(line, text, why, Weight.DOUBT);
        }
    }

    private static boolean isAidOrNote(String text) {
        return PistonLine.isOfPistons(text) || StopClassifier.isNote(text);
    }

    /** Begins a part that holds no stops, with what stands on the line of its heading. */
    Section part(SectionWord word, int line, Section section) {
        Set<Coupler.Kind> hint = word.kind() == Kind.COUPLERS ? CouplerLine.hint(word.head(), language) : Set.of();
        Section part = section.ofOthers(word.kind(), hint);
        String whole = word.head() + ": " + word.inline();
        if (word.inline().isEmpty()) {
            return word.kind() == Kind.COUPLERS ? lines.beginCouplers(part, line, word.head()) : lines.begin(part);
        }
        if (word.kind() == Kind.TREMULANTS) {
            Segments.split(word.inline(), (each, i) -> each.isSign(i, ",;"))
                    .forEach(each -> tremulant("Tremulant " + Spelling.unnumbered(each), each, line, section));
        } else if (part.isElsewhere() && !joins(couplersOf(word))) {
            lines.leaveOut(line, whole, "a playing aid or a note, not a stop", Weight.NOTE);
        } else if (part.isElsewhere()) {
            take(couplersOf(word), line, part);
        } else {
            String text = word.kind() == Kind.COUPLERS ? whole : word.inline();
            take(CouplerLine.read(text, part.where(), hint, language), line, part);
        }
        return part;
    }

    /** The couplers that stand among pistons and pedals of combination. */
    private CouplerLine couplersOf(SectionWord word) {
        return CouplerLine.read(word.inline(), CouplerLine.Where.AMONG_ACCESSORIES, Set.of(), language);
    }

    /** True if any joins two divisions: "Great 4" among pistons counts them. */
    private static boolean joins(CouplerLine line) {
        return line.couplers().stream().anyMatch(coupler -> coupler.kind() == Coupler.Kind.UNISON);
    }

    /** Among stops a part of a line may still be a coupler: "Trumpet 8, Swell to Great". */
    void amongStops(String segment, StopClassifier.None none, int line, Section section) {
        Line words = new Line(segment);
        boolean own = OWN.is(words) && words.letters().length() > 1;
        CouplerLine.Where where = own ? CouplerLine.Where.AMONG_COUPLERS : CouplerLine.Where.ELSEWHERE;
        CouplerLine read =
                section.isBeforeDivisions() ? CouplerLine.NONE : CouplerLine.read(segment, where, Set.of(), language);
        if (!read.couplers().isEmpty()) {
            take(read, line, section);
        } else if (Tremulants.isOne(segment)) {
            tremulant(Spelling.unnumbered(segment), Optional.empty(), line, section);
        } else if (PistonLine.isOfPistons(segment)) {
            lines.leaveOut(line, segment, "a playing aid, not a stop", Weight.NOTE);
        } else if (section.isBeforeDivisions()) {
            lines.leaveOut(line, segment, Unread.BEFORE, Weight.NOTE);
        } else {
            lines.leaveOut(line, segment, none.why(), none.weight());
        }
    }
}
