package versewind.screen.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.rules.StopChangesByDivision;
import versewind.screen.toolkit.Abbreviation;
import versewind.screen.toolkit.Flow;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.ShortWords;
import versewind.screen.toolkit.Style;
import versewind.sheet.DivisionLine;
import versewind.sheet.Wording;

/**
 * All that is drawn for a verse, in as many words as there is room for.
 *
 * @param marks with which it is written
 * @param organ the organ
 * @param lines what is drawn, division by division
 */
record DrawnWords(Marks marks, Instrument organ, List<DivisionLine> lines) {

    private static final int SHORT_NAME = 12;

    /** By full names. */
    Flow whole() {
        return flow(Integer.MAX_VALUE, DivisionLine::knobs);
    }

    /** The same; where that does not fit, with names shortened, unless they are heard; else by what is not drawn. */
    Flow fitting(int columns, int rows) {
        if (marks == Marks.WORDS) {
            return whole().fits(columns, rows) ? whole() : byTheRest();
        }
        Flow shortest = flow(SHORT_NAME, line -> allBut(line, SHORT_NAME));
        return Stream.of(whole(), flow(SHORT_NAME, line -> shortened(line.knobs(), SHORT_NAME)), byTheRest())
                .filter(flow -> flow.fits(columns, rows))
                .findFirst()
                .orElse(shortest);
    }

    /** Divisions of which more than half is drawn by what is not: "Swell: all but Celeste 8". */
    Flow byTheRest() {
        return flow(Integer.MAX_VALUE, line -> allBut(line, Integer.MAX_VALUE));
    }

    /** Tremulants, which are no stops, stand first, so that they are not taken for left out. */
    private List<String> allBut(DivisionLine line, int longest) {
        List<String> stops = organ.division(line.where()).stream()
                .boxed()
                .flatMap(division -> organ.stops().stream().filter(knob -> knob.division() == division))
                .map(knob -> knob.stop().label())
                .toList();
        List<String> left =
                stops.stream().filter(name -> !line.knobs().contains(name)).toList();
        List<String> names = new ArrayList<>(
                line.knobs().stream().filter(name -> !stops.contains(name)).toList());
        int drawn = line.knobs().size() - names.size();
        boolean isCoupler = line.where().equals(StopChangesByDivision.COUPLERS);
        if (isCoupler || left.size() >= drawn) {
            return shortened(line.knobs(), longest);
        }
        List<String> notDrawn = shortened(left, longest);
        names.add(left.isEmpty() ? "all" : "all but " + notDrawn.get(0));
        names.addAll(notDrawn.subList(Math.min(1, left.size()), left.size()));
        return names;
    }

    private Flow flow(int longest, Function<DivisionLine, List<String>> names) {
        Flow flow = new Flow();
        for (DivisionLine line : lines) {
            String box = line.box()
                    .map(position -> ", " + ShortWords.box(marks, position))
                    .orElse("");
            String place = shortened(line.where(), longest);
            flow.paragraph().add(place + box + (line.waits() ? ", " + Wording.WAITS : "") + ":", Style.HEADING);
            flow.addNames("", names.apply(line), Style.TEXT);
        }
        return flow.isEmpty() ? flow.add("Nothing is drawn.", Style.TEXT) : flow;
    }

    private List<String> shortened(List<String> names, int longest) {
        return names.stream().map(name -> shortened(name, longest)).toList();
    }

    private String shortened(String name, int longest) {
        return Abbreviation.of(name, longest, Mark.CUT.in(marks));
    }
}
