package versewind.stoplist;

import java.util.List;
import java.util.stream.Stream;
import versewind.organ.Footage;
import versewind.organ.Stop;
import versewind.stoplist.Unread.Weight;

/** Gathers the stops of one line, and gives what its other parts are to whom it concerns. */
final class StopsOfLine {

    private static final int SHORTEST_NAME = 4;

    private final LineReader reader;
    private final ParsedLines lines;
    private final int line;
    private ReadStop last;
    private Section place;
    private Section section;

    StopsOfLine(LineReader reader, int line, Section section) {
        this.reader = reader;
        this.lines = reader.lines();
        this.line = line;
        this.section = section;
    }

    /** Reads the line, and says in which division whatever follows stands. */
    Section read(String text) {
        boolean isOfMixture =
                lines.last(section).filter(stop -> stop.family().isCompound()).isPresent() && Composition.isBreak(text);
        if (isOfMixture && lines.remark(text.strip(), section)) {
            return section;
        }
        for (String segment : Segments.ofStops(text, reader.style())) {
            StopClassifier.Result result = classified(segment);
            if (result instanceof StopClassifier.OneStop one) {
                take(one.stop(), segment);
                several(one.stop(), segment);
            } else if (result instanceof StopClassifier.Further further) {
                further(further.line(), segment);
            } else if (result instanceof StopClassifier.None none
                    && !(isOfStop(segment) && lines.remark(segment, section))) {
                reader.aids().amongStops(segment, none, line, section);
            }
        }
        return section;
    }

    /** "From tenor C", "8 notes". */
    private static boolean isOfStop(String segment) {
        return Compass.isOfStop(segment) || WordList.of("keys").isAll(Spelling.words(new Line(segment).letters()));
    }

    private StopClassifier.Result classified(String text) {
        NameContext.Keyboard keyboard =
                lines.isInPedal(section) ? NameContext.Keyboard.PEDAL : NameContext.Keyboard.MANUAL;
        return StopClassifier.of(text, line, reader.style(), keyboard);
    }

    private void take(ReadStop stop, String segment) {
        boolean named = !reader.style().headed() && stop.how().isSure();
        if (section.isBeforeDivisions() && !named && !reader.isPitchedStop(segment)) {
            lines.leaveOut(line, segment, Unread.BEFORE, Weight.NOTE);
            return;
        }
        boolean isOfPedal = WordList.of("stop of pedal").at(Spelling.words(stop.name()), 0) > 0
                || stop.remarks().stream().anyMatch(this::isPedal);
        if (isOfPedal && !lines.isInPedal(section)) {
            place = lines.openPedal(line);
        } else {
            section = lines.opened(section, line);
            place = section;
        }
        add(place.half().isEmpty() ? stop : stop.named(stop.name() + " " + place.half(), "one half of the keyboard"));
    }

    /** A doubt about a stop in whose remarks the name of another stands, with a pitch of its own. */
    private void several(ReadStop stop, String segment) {
        boolean isPitched = !stop.family().isCompound()
                && StopLine.of(segment, reader.style()).feet().size() > 1;
        boolean isNamed = stop.remarks().stream()
                .flatMap(each -> Stream.of(each.split(" ", -1)))
                .anyMatch(word -> word.length() >= SHORTEST_NAME
                        && Lexicon.get().exact(word, reader.style().setting()).isPresent());
        if (isPitched && isNamed) {
            lines.leaveOut(line, segment, "several pitches: it may be several stops", Weight.DOUBT);
        }
    }

    /** "(pedal)" behind a stop. */
    private boolean isPedal(String remark) {
        List<String> words = Spelling.words(remark);
        return words.size() == 1
                && DivisionWord.in(words, reader.style().language())
                        .filter(each -> each.word().isPedal())
                        .isPresent();
    }

    private void add(ReadStop stop) {
        last = stop;
        lines.add(stop, place);
    }

    private void change(ReadStop changed) {
        lines.change(last, changed, place);
        last = changed;
    }

    /** Gives pitches or ranks without a name to the stop before. */
    private void further(StopLine pitches, String text) {
        if (last == null) {
            lines.leaveOut(line, text, Unread.NUMBER, Weight.NOTE);
            return;
        }
        if (last.family().isCompound()) {
            // "Mixtur 2 2/3', 4f.": behind a compound stop f means ranks
            StopLine whole = StopLine.of(last.name() + " " + text, reader.style());
            int said = Math.max(pitches.ranks(), whole.ranks());
            int ranks = said > 0 ? Math.min(said, Stop.MOST_RANKS) : last.ranks();
            change(last.ranked(ranks, pitches.pitch(), line));
            return;
        }
        for (Footage feet : pitches.feet()) {
            if (last.supposed() && lines.division(place).stops().contains(last)) {
                change(last.pitched(feet, line));
                return;
            }
            if (classified(last.name() + " " + feet + "'") instanceof StopClassifier.OneStop more) {
                add(more.stop());
            }
        }
    }
}
