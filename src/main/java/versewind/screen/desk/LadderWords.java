package versewind.screen.desk;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.Verse;
import versewind.rules.DynamicSteps;
import versewind.rules.StopChanges;
import versewind.rules.StopChangesByDivision;
import versewind.screen.toolkit.Abbreviation;
import versewind.screen.toolkit.Flow;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.ShortWords;
import versewind.screen.toolkit.Style;

/**
 * What makes a verse stronger and softer, in as many words as there is room for.
 *
 * @param marks with which it is written
 * @param organ the organ
 * @param ladder the steps of the verse
 * @param planned the verse as it is planned
 * @param from the step that is played now
 */
record LadderWords(Marks marks, Instrument organ, DynamicSteps ladder, Verse planned, int from) {

    private static final int SHORT_NAME = 12;

    /** How much is said of the step that is reached. */
    private enum Told {
        PLACE_AND_LEVEL,
        LEVEL,
        NOTHING
    }

    /** The next two steps, the second if there is room; each with its place in the order and its level if they fit. */
    Flow fitting(int way, int columns, int rows) {
        Flow least = steps(way, Told.NOTHING, SHORT_NAME);
        return Stream.of(
                        steps(way, Told.PLACE_AND_LEVEL, Integer.MAX_VALUE),
                        steps(way, Told.LEVEL, Integer.MAX_VALUE),
                        steps(way, Told.NOTHING, Integer.MAX_VALUE),
                        steps(way, Told.LEVEL, SHORT_NAME))
                .filter(flow -> flow.fits(columns, rows))
                .findFirst()
                .orElse(least);
    }

    private Flow steps(int way, Told told, int longest) {
        Flow flow = new Flow();
        for (int at = from; at != from + 2 * way && DeskNotes.reaches(ladder, at + way); at += way) {
            if (!flow.isEmpty()) {
                flow.ifRoom().add("then", Style.HEADING);
            }
            step(flow, at, at + way, longest);
            flow.add(reached(at, at + way, told), Style.TEXT);
        }
        return flow.isEmpty() ? flow.add("nothing further", Style.TEXT) : flow;
    }

    private void step(Flow flow, int at, int next, int longest) {
        Registration now = DeskNotes.drawn(ladder, planned, at);
        Registration then = DeskNotes.drawn(ladder, planned, next);
        String and = "";
        for (StopChangesByDivision each : StopChangesByDivision.of(organ, StopChanges.between(now, then))) {
            String place = each.where().equals(StopChangesByDivision.COUPLERS) ? "" : each.where();
            and = group(flow, spoken(and), sign(Mark.PUT_IN, place), each.putIn(), longest);
            and = group(flow, spoken(and), sign(Mark.DRAW, place), each.drawn(), longest);
            and = group(
                    flow,
                    and,
                    place,
                    each.box().map(box -> ShortWords.box(marks, box)).stream().toList(),
                    longest);
        }
    }

    private String sign(Mark mark, String place) {
        return (mark.in(marks) + " " + place).strip();
    }

    /** Between signs no "and" is wanted, unless they are words. */
    private String spoken(String and) {
        return marks == Marks.WORDS ? and : "";
    }

    /** Adds names after what is done with them, and returns what parts them from the next. */
    private String group(Flow flow, String and, String lead, List<String> names, int longest) {
        if (names.isEmpty()) {
            return flow.isEmpty() ? "" : and;
        }
        List<String> written = names.stream()
                .map(name -> Abbreviation.of(name, longest, Mark.CUT.in(marks)))
                .toList();
        flow.add(and, Style.TEXT).addNames(lead, written, Style.TEXT);
        return "and";
    }

    /** "(step 7 of 11: Great mixture, +1 dB)". */
    private String reached(int at, int next, Told told) {
        boolean isAway = Math.abs(next) > Math.abs(at);
        double db = isAway ? DeskNotes.changeDb(ladder, next) : -DeskNotes.changeDb(ladder, at);
        Optional<String> place = DeskNotes.reached(ladder, next).filter(step -> told == Told.PLACE_AND_LEVEL);
        return told == Told.NOTHING ? "" : "(" + place.map(step -> step + ", ").orElse("") + signed(db) + " dB)";
    }

    private String signed(double db) {
        long rounded = Math.round(db);
        return (rounded > 0 ? Mark.PLUS.in(marks) : rounded < 0 ? Mark.MINUS.in(marks) : "") + Math.abs(rounded);
    }
}
