package versewind.screen;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import versewind.plan.Heading;
import versewind.plan.Hymn;

/** The two rows at the top: the service, and the hymn where we are. */
final class HeaderView {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

    private HeaderView() {}

    static void paint(Frame frame, State state, Work work) {
        Heading heading = work.plan().heading();
        String unsaved = state.isUnsaved() ? "  " + state.marks().unsaved() + " unsaved" : "";
        String when = heading.date().map(date -> day(date) + "  ").orElse("") + heading.people() + " people";
        String all = work.instrument().name() + "  " + when;
        int room = frame.width() - 4 - Text.columns(heading.title()) - Text.columns(unsaved);
        String end = Text.columns(all) <= room ? all : when;
        int endX = Math.max(0, frame.width() - Text.columns(end) - Text.columns(unsaved) - 1);
        String title =
                Text.fit(heading.title(), Math.max(0, endX - 3), state.marks().cut());
        frame.write(1, 0, title, Style.HEADING);
        int after = frame.write(endX, 0, end, Style.TEXT);
        frame.write(after, 0, unsaved, Style.NEAR);
        frame.write(
                1,
                1,
                Text.fit(hymn(state, work), frame.width() - 2, state.marks().cut()),
                Style.STRONG);
    }

    /** A date as people say it: "Sun 4 Oct 2026". */
    static String day(LocalDate date) {
        return DAY.format(date);
    }

    private static String hymn(State state, Work work) {
        if (work.hymn().isEmpty()) {
            return "No hymn yet; I makes one.";
        }
        Hymn hymn = work.hymn().get();
        List<String> parts = new ArrayList<>();
        parts.add("Hymn " + (work.place().hymn() + 1) + " of "
                + work.plan().hymns().size());
        parts.add((hymn.number() + " " + hymn.title()).strip());
        addIfSaid(parts, hymn.tune());
        addIfSaid(parts, hymn.metre());
        addIfSaid(parts, hymn.key());
        hymn.tempo().ifPresent(tempo -> parts.add(state.marks().beat() + tempo));
        return String.join("  ", parts);
    }

    private static void addIfSaid(List<String> parts, String part) {
        if (!part.isBlank()) {
            parts.add(part);
        }
    }
}
