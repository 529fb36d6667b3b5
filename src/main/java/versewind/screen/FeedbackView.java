package versewind.screen;

import java.util.List;
import versewind.plan.Hymn;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.sheet.Wording;

/** All verses and how the organ was in each, with a mark at the one that is asked about. */
final class FeedbackView {

    private static final int LABEL = 8;
    private static final int ANSWER = 11;
    private static final int EDGE_ROWS = 5;

    private FeedbackView() {}

    static void paint(Frame frame, State state, PlanEdit work, Panel.Answers panel) {
        List<VersePlace> places = FeedbackCommands.asked(work);
        int room = frame.height() - EDGE_ROWS;
        int top = Math.max(0, Math.min(panel.at() - room / 2, places.size() - room));
        frame.write(1, 0, "How was the organ to those who sang?", Style.HEADING);
        for (int i = top; i < Math.min(places.size(), top + room); i++) {
            paintRow(frame, state, work, panel, places, i, 2 + i - top);
        }
        paintKeys(frame, frame.height() - 2);
    }

    private static void paintRow(
            Frame frame, State state, PlanEdit work, Panel.Answers panel, List<VersePlace> places, int index, int y) {
        VersePlace place = places.get(index);
        Verse verse = ServiceOrder.verse(work.plan(), place);
        Hymn hymn = work.plan().hymns().get(place.hymn());
        Marks marks = state.marks();
        boolean here = index == panel.at();
        frame.write(0, y, here ? marks.here() : " ", Style.STRONG);
        boolean isFirst = index == 0 || places.get(index - 1).hymn() != place.hymn();
        int number = numberColumns(work);
        frame.write(1, y, Text.fit(isFirst ? hymn.number() : "", number, marks.cut()), Style.TEXT);
        int x = number + 2;
        frame.write(x, y, Text.fit(verse.label(), LABEL, marks.cut()), Style.STRONG);
        x += LABEL + 1;
        String answer = verse.answer().map(each -> each.heard().word()).orElse(marks.minus());
        frame.write(x, y, answer, verse.answer().isPresent() ? Style.STRONG : Style.TEXT);
        x += ANSWER + 1;
        int people = panel.notes().people(work);
        String who = Wording.who(verse, people, work.sound().estimate(verse, people, hymn.tempo()));
        String otherwise = panel.notes().steps(place) == 0 ? "" : "Answer for what was planned. ";
        frame.write(x, y, Text.fit(otherwise + who, frame.width() - 1 - x, marks.cut()), Style.TEXT);
        if (here) {
            frame.paint(1, y, frame.width() - 2, Style.CURSOR);
        }
    }

    private static int numberColumns(PlanEdit work) {
        return work.plan().hymns().stream()
                .mapToInt(hymn -> Math.min(LABEL, Text.columns(hymn.number())))
                .max()
                .orElse(0);
    }

    private static void paintKeys(Frame frame, int y) {
        KeyRow.paint(
                frame,
                1,
                y,
                frame.width(),
                Command.WAS_TOO_SOFT,
                Command.WAS_RIGHT,
                Command.WAS_TOO_STRONG,
                Command.NO_ANSWER,
                Command.CLOSE_ANSWERS);
    }
}
