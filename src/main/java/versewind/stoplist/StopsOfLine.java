package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import versewind.organ.Footage;
import versewind.organ.Stop;

/** Gathers the stops of one line, and gives what its other parts are to whom it concerns. */
final class StopsOfLine {

    private final ParsedLines gathered;
    private final PlayingAids aids;
    private final ListStyle style;
    private final int line;
    private final List<ReadStop> found = new ArrayList<>();
    private Section section;

    StopsOfLine(ParsedLines gathered, PlayingAids aids, ListStyle style, int line, Section section) {
        this.gathered = gathered;
        this.aids = aids;
        this.style = style;
        this.line = line;
        this.section = section;
    }

    /** Reads the line, and says in which division whatever follows stands. */
    Section read(String text) {
        for (String segment : Segments.ofStops(text, style)) {
            StopClassifier recognition = recognised(segment);
            if (recognition instanceof StopClassifier.Stops stops) {
                take(stops.stops(), segment);
            } else if (recognition instanceof StopClassifier.Further further) {
                further(further.line(), segment);
            } else if (recognition instanceof StopClassifier.None none) {
                aids.amongStops(segment, none, line, section);
            }
        }
        return section;
    }

    private StopClassifier recognised(String text) {
        return StopClassifier.of(
                text,
                line,
                style,
                gathered.isInPedal(section) ? NameContext.Keyboard.PEDAL : NameContext.Keyboard.MANUAL);
    }

    private void take(List<ReadStop> stops, String segment) {
        if (section.isBeforeDivisions() && !StopLine.isPitchedStop(segment, style)) {
            gathered.leaveOut(line, segment, Unread.BEFORE, Unread.Weight.NOTE);
            return;
        }
        section = gathered.opened(section, line);
        List<ReadStop> read = halved(stops);
        found.addAll(read);
        gathered.division(section).stops().addAll(read);
    }

    private List<ReadStop> halved(List<ReadStop> stops) {
        return section.half().isEmpty()
                ? stops
                : stops.stream()
                        .map(stop -> stop.named(stop.name() + " " + section.half(), "one half of the keyboard"))
                        .toList();
    }

    /** Gives pitches or ranks without a name to the stop before. */
    private void further(StopLine pitches, String text) {
        if (found.isEmpty() || section.isBeforeDivisions()) {
            gathered.leaveOut(line, text, "a number without a name", Unread.Weight.NOTE);
            return;
        }
        List<ReadStop> stops = gathered.division(section).stops();
        ReadStop last = found.get(found.size() - 1);
        if (last.family().isCompound()) {
            int ranks = pitches.ranks() > 0 ? Math.min(pitches.ranks(), Stop.MOST_RANKS) : last.ranks();
            stops.set(stops.indexOf(last), last.ranked(ranks, pitches.pitch(), line));
            return;
        }
        for (Footage feet : pitches.feet()) {
            if (last.supposed() && stops.contains(last)) {
                stops.set(stops.indexOf(last), last.pitched(feet, line));
                return;
            }
            StopClassifier again = recognised(last.name() + " " + feet + "'");
            if (again instanceof StopClassifier.Stops more) {
                found.addAll(more.stops());
                stops.addAll(more.stops());
            }
        }
    }
}
