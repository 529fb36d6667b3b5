package versewind.stoplist;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import versewind.organ.Coupler;

/** Gathers the couplers and tremulants of a list, and tells pistons and notes that stand among them from the rest. */
final class PlayingAids {

    private static final Pattern TREMULANTS_APART = Pattern.compile("[,;]|(?<=\\p{L}{4})\\.\\s");
    private static final Pattern AL_PEDALE = Pattern.compile("(?i)\\bal pedal\\w*");

    private final ParsedLines gathered;
    private final String language;

    PlayingAids(ParsedLines gathered, String language) {
        this.gathered = gathered;
        this.language = language;
    }

    /** The couplers of a line, where it may hold some: neither among pistons nor before the first division. */
    CouplerLine couplers(String text, Section section) {
        boolean stops = section.kind().isEmpty();
        boolean before = stops && section.isBeforeDivisions();
        boolean stop = stops
                && AL_PEDALE.matcher(text).find()
                && Pitches.isMarked(text);
        boolean aside = section.kind()
                .filter(kind -> kind == SectionWord.Kind.PISTONS || kind == SectionWord.Kind.NOTES)
                .isPresent();
        return before || stop || aside
                ? new CouplerLine(List.of(), List.of())
                : CouplerLine.read(text, section.where(), section.hint(), language);
    }

    /** Takes in the couplers of a line, and the tremulants among them. */
    void take(CouplerLine read, int line, Section section) {
        read.couplers().forEach(each -> gathered.couplers()
                .add(new ParsedLines.PlacedCoupler(each, section.division(), line)));
        for (String rest : read.rest()) {
            if (Tremulants.isOne(rest)) {
                tremulant(Spelling.unnumbered(rest), rest, line, section);
                continue;
            }
            boolean aid = isAidOrNote(rest) || section.where() == CouplerLine.Where.AMONG_ACCESSORIES;
            gathered.leaveOut(
                    line,
                    rest,
                    aid ? "a playing aid, no coupler" : "no coupler that is known",
                    aid ? Unread.Weight.NOTE : Unread.Weight.DOUBT);
        }
    }

    /** Takes in the tremulants of a line. */
    void tremulants(String text, int line, Section section) {
        for (String part : TREMULANTS_APART.split(text, -1)) {
            if (Tremulants.isOne(part)) {
                tremulant(Spelling.unnumbered(part), part, line, section);
            } else if (!Spelling.unnumbered(part).isEmpty()) {
                other(part.strip(), line, SectionWord.Kind.ACCESSORIES);
            }
        }
    }

    private void tremulant(String name, String text, int line, Section section) {
        for (Optional<DivisionWord> division : Tremulants.divisions(text, language)) {
            gathered.tremulants().add(new ParsedLines.PlacedTremulant(name, division, shaken(section), line));
        }
    }

    /** The division that a tremulant stands under; none where it stands among the couplers below the pedal. */
    private int shaken(Section section) {
        return section.kind().isPresent() && gathered.isInPedal(section) ? -1 : section.division();
    }

    /** Leaves out a line that stands among what is no stop. */
    void other(String text, int line, SectionWord.Kind kind) {
        boolean note = kind == SectionWord.Kind.NOTES || kind == SectionWord.Kind.PISTONS || isAidOrNote(text);
        if (note) {
            gathered.leaveOut(line, text, "a playing aid or a note, no stop", Unread.Weight.NOTE);
        } else {
            gathered.leaveOut(
                    line,
                    text,
                    "it stands among couplers and playing aids, and is none that is known",
                    Unread.Weight.DOUBT);
        }
    }

    private static boolean isAidOrNote(String text) {
        return PistonLine.isOfPistons(text) || StopClassifier.isNote(text);
    }

    /** Begins a part that holds no stops, with what stands on the line of its heading. */
    Section part(SectionWord word, int line, Section section) {
        boolean couplers = word.kind() == SectionWord.Kind.COUPLERS;
        Set<Coupler.Kind> hint = couplers ? CouplerLine.hint(word.head(), language) : Set.of();
        Section part = section.ofOthers(word.kind(), hint);
        if (word.inline().isEmpty()) {
            return part;
        }
        String whole = word.head() + ": " + word.inline();
        if (word.kind() == SectionWord.Kind.TREMULANTS) {
            for (String each : word.inline().split("[,;]", -1)) {
                tremulant("Tremulant " + Spelling.unnumbered(each), each, line, section);
            }
        } else if (part.isElsewhere()) {
            gathered.leaveOut(line, whole, "a playing aid or a note, no stop", Unread.Weight.NOTE);
        } else {
            take(CouplerLine.read(whole, part.where(), hint, language), line, part);
        }
        return part;
    }

    /** Among stops a part of a line may still be a coupler: "Trumpet 8, Swell to Great". */
    void amongStops(String segment, StopClassifier.None none, int line, Section section) {
        CouplerLine read = CouplerLine.read(segment, CouplerLine.Where.ELSEWHERE, Set.of(), language);
        if (!read.couplers().isEmpty()) {
            take(read, line, section);
        } else if (Tremulants.isOne(segment)) {
            gathered.tremulants()
                    .add(new ParsedLines.PlacedTremulant(
                            Spelling.unnumbered(segment), Optional.empty(), shaken(section), line));
        } else if (PistonLine.isOfPistons(segment)) {
            gathered.leaveOut(line, segment, "a playing aid, no stop", Unread.Weight.NOTE);
        } else if (section.isBeforeDivisions()) {
            gathered.leaveOut(line, segment, Unread.BEFORE, Unread.Weight.NOTE);
        } else {
            gathered.leaveOut(line, segment, none.why(), none.weight());
        }
    }
}
