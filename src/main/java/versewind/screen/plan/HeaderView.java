package versewind.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.plan.Hymn;
import versewind.plan.Player;
import versewind.plan.ServiceHeading;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.ShortWords;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.sheet.Wording;

/** The two rows at the top: the service, and the hymn where we are. */
final class HeaderView {

    private HeaderView() {}

    static void paint(Frame frame, State state, PlanEdit work) {
        ServiceHeading heading = work.plan().heading();
        String unsaved = state.isUnsaved() ? "  " + Mark.UNSAVED.in(state.marks()) + " unsaved changes" : "";
        String when = heading.date().map(date -> ShortWords.day(date) + "  ").orElse("")
                + people(heading.people())
                + (heading.player() == Player.MANUALS_ONLY
                        ? "  " + heading.player().word()
                        : "");
        String all = work.instrument().name() + "  " + when;
        String allAndDay = !frame.isWhole()
                ? all
                : heading.summary().map(day -> day + "  " + all).orElse(all);
        int room = frame.width() - 4 - Text.columns(heading.title()) - Text.columns(unsaved);
        String end = Stream.of(allAndDay, all)
                .filter(each -> Text.columns(each) <= room)
                .findFirst()
                .orElse(when);
        int endX = Math.max(0, frame.width() - Text.columns(end) - Text.columns(unsaved) - 1);
        String title = frame.fit(heading.title(), Math.max(0, endX - 3));
        frame.write(1, 0, title, Style.HEADING);
        int after = frame.write(endX, 0, end, Style.TEXT);
        frame.write(after, 0, unsaved, Style.NEAR);
        frame.write(1, 1, hymn(state, work, frame.width() - 2), Style.STRONG);
    }

    private static String people(int people) {
        return people == 1 ? "1 person" : people + " people";
    }

    /** All that is said of the hymn, or without its metre, or without its tune too, as fits. */
    private static String hymn(State state, PlanEdit work, int columns) {
        if (work.hymn().isEmpty()) {
            return "No hymns yet. Press I to add one.";
        }
        Hymn hymn = work.hymn().get();
        String start = "Hymn " + (work.place().hymn() + 1) + " of "
                + work.plan().hymns().size() + "  ";
        String title = (hymn.number() + " " + hymn.title()).strip();
        String key = key(state, hymn);
        for (List<String> more :
                List.of(List.of(hymn.tune(), hymn.metre(), key), List.of(hymn.tune(), key), List.of(key))) {
            String line = start + title + end(state, hymn, more);
            if (Text.columns(line) <= columns) {
                return line;
            }
        }
        String end = end(state, hymn, List.of(key));
        int room = Math.max(0, columns - Text.columns(start) - Text.columns(end));
        return Text.fit(
                start + Text.fit(title, room, Mark.CUT.in(state.marks())) + end, columns, Mark.CUT.in(state.marks()));
    }

    /** "E\u266d"; "E flat" where it is read aloud or there are no signs. */
    private static String key(State state, Hymn hymn) {
        String printed = Wording.key(hymn.key());
        return state.marks() == Marks.UNICODE
                ? printed
                : printed.codePoints().mapToObj(Text::typewritten).collect(Collectors.joining());
    }

    private static String end(State state, Hymn hymn, List<String> more) {
        List<String> parts = new ArrayList<>(List.of(""));
        more.forEach(part -> addIfSaid(parts, part));
        hymn.tempo().ifPresent(tempo -> parts.add(Mark.BEAT.in(state.marks()) + tempo));
        return String.join("  ", parts);
    }

    private static void addIfSaid(List<String> parts, String part) {
        if (!part.isBlank()) {
            parts.add(part);
        }
    }
}
