package versewind.screen.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Hymn;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Listing;
import versewind.screen.state.PlanChanges;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.Screen;
import versewind.screen.state.State;
import versewind.screen.state.VerseFeedbackCommands;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.sheet.Wording;
import versewind.sound.Balance;

/**
 * The question after the service, over the desk: was the organ too soft, right or too strong, verse by verse.
 *
 * @param list the verses that are asked about, one of them marked
 * @param notes what is known at the desk
 */
public record FeedbackScreen(ListBox<VersePlace> list, DeskNotes notes) implements AtOrgan, Listing<VersePlace> {

    public static final KeyTable<FeedbackScreen> KEYS = KeyTable.<FeedbackScreen>under("After the service")
            .key("1", "too soft", heard(HeardAs.TOO_SOFT))
            .key("2", "right", heard(HeardAs.RIGHT))
            .key("3", "too strong", heard(HeardAs.TOO_STRONG))
            .key(
                    "x, Delete",
                    "delete the feedback",
                    (screen, state) -> state.onWork(work -> screen.answer(state, work, Optional.empty())))
            .key("Down, Space", "the verse below", (screen, state) -> screen.moved(state, 1, "verse"))
            .key("Page Down, Enter", "the same", (screen, state) -> screen.moved(state, 1, "verse"))
            .key("Up, Backspace, Page Up", "the verse above", (screen, state) -> screen.moved(state, -1, "verse"))
            .key("Esc, q", "back to the desk", (screen, state) -> VerseFeedbackCommands.askedToKeep(state.close()));

    private static final String QUESTION = "How was the organ for the singers?";
    private static final String KEYS_IN_WORDS = "1 too soft, 2 right, 3 too strong. ";
    private static final String ALL_ANSWERED = "All answered; Esc goes back to the desk.";
    private static final int LABEL = 8;

    /** Columns of the title of a hymn without a number. */
    private static final int TITLE = 16;

    private static final int ANSWER = 11;
    private static final int EDGE_ROWS = 5;

    private static KeyTable.Action<FeedbackScreen> heard(HeardAs heard) {
        return (screen, state) -> state.onWork(work -> {
            VersePlace place = screen.list.current().orElseThrow();
            Feedback answer = new Feedback(heard, screen.notes.people(work), screen.notes.otherwise(work, place));
            return screen.answer(state, work, Optional.of(answer));
        });
    }

    /** The list over the desk, at the first verse without an answer, or at its end. */
    static State open(State state, PlanEdit work, DeskNotes notes) {
        List<VersePlace> places = asked(work);
        if (places.isEmpty()) {
            return state.says("There is no sung verse.");
        }
        int at = 0;
        while (at < places.size() - 1
                && work.plan().verse(places.get(at)).answer().isPresent()) {
            at++;
        }
        DeskNotes staying = notes.with(DeskNotes.Leaving.NO);
        return state.show(new DeskScreen(staying)).open(new FeedbackScreen(new ListBox<>(places, at), staying));
    }

    /** The verses that are asked about: all but those in which the organ plays alone. */
    private static List<VersePlace> asked(PlanEdit work) {
        int people = work.plan().heading().people();
        return work.plan().places().stream()
                .filter(place -> work.sound()
                                .estimate(
                                        work.plan().verse(place),
                                        people,
                                        work.plan().hymn(place).tempo())
                                .balance()
                                .kind()
                        != Balance.Kind.ORGAN_ALONE)
                .toList();
    }

    @Override
    public Screen marking(int row) {
        return new FeedbackScreen(list.mark(row), notes);
    }

    /** Writes an answer into the plan's file at once; or, if the plan had unsaved changes, beside it with those. */
    private State answer(State state, PlanEdit work, Optional<Feedback> answer) {
        VersePlace place = list.current().orElseThrow();
        Verse verse = work.plan().verse(place);
        PlanEdit after = work.with(work.history().to(work.plan().withVerse(place, verse.withAnswer(answer))));
        int step = answer.isPresent() ? 1 : 0;
        boolean isLast = list.marked() == list.size() - 1;
        State shown = state.show(marking(list.marked() + step)).with(after);
        State next = isLast && unanswered(after) == 0 ? shown.says(ALL_ANSWERED) : shown;
        if (after.plan().equals(work.plan())) {
            return next;
        }
        if (work.access() == PlanEdit.Access.LOOKED_AT) {
            return state.says(PlanChanges.ONLY_LOOKING);
        }
        return switch (notes.opened()) {
            case ALONE, FROM_SAVED -> next.wants(effects -> effects.save(after.plan(), List.of()));
            case FROM_UNSAVED ->
                next.says("Kept with the plan's other unsaved changes; press s in the plan to save.")
                        .wants(effects -> effects.keepDraft(after.history()));
        };
    }

    private long unanswered(PlanEdit work) {
        return list.rows().stream()
                .filter(place -> work.plan().verse(place).answer().isEmpty())
                .count();
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public boolean savesUnheard() {
        return true;
    }

    @Override
    public String name(State state) {
        return QUESTION;
    }

    @Override
    public void paint(Frame frame, State state) {
        PlanEdit work = state.work().orElseThrow();
        frame.write(1, 0, QUESTION, Style.HEADING);
        Box window = new Box(1, 2, frame.width() - 2, frame.height() - EDGE_ROWS);
        list.paint(
                frame,
                window,
                place -> words(place, work),
                (place, index, y) -> paintRow(frame, state, work, index, y));
        KEYS.hints(
                frame,
                1,
                frame.height() - 2,
                frame.width() - 1,
                Style.FAINT,
                "1",
                "2",
                "3",
                "x no feedback",
                "Esc back",
                "? help");
        if (!state.notice().text().isBlank()) {
            state.notice().paint(frame);
        }
    }

    private void paintRow(Frame frame, State state, PlanEdit work, int index, int y) {
        VersePlace place = list.rows().get(index);
        Verse verse = work.plan().verse(place);
        Hymn hymn = work.plan().hymn(place);
        Marks marks = state.marks();
        boolean isFirst = index == 0 || list.rows().get(index - 1).hymn() != place.hymn();
        int number = numberColumns(work);
        frame.write(1, y, frame.fit(isFirst ? called(hymn) : "", number), Style.TEXT);
        int x = number + 2;
        frame.write(x, y, frame.fit(verse.label(), LABEL), Style.STRONG);
        x += LABEL + 1;
        String answer = verse.answer().map(each -> each.heard().word()).orElse(Mark.MINUS.in(marks));
        frame.write(x, y, answer, verse.answer().isPresent() ? Style.STRONG : Style.TEXT);
        x += ANSWER + 1;
        frame.write(x, y, frame.fit(who(place, work), frame.width() - 1 - x), Style.TEXT);
    }

    /** Who sang, and where that was so that it was not played as planned. */
    private String who(VersePlace place, PlanEdit work) {
        Verse verse = work.plan().verse(place);
        int people = notes.people(work);
        OptionalInt tempo = work.plan().hymn(place).tempo();
        String who = Wording.who(verse, people, work.sound().estimate(verse, people, tempo));
        String stepped = DeskWords.stepped(notes.steps(place));
        return stepped.isEmpty() ? who : "as played, " + stepped + " than planned; " + who;
    }

    private static String answer(VersePlace place, PlanEdit work) {
        return work.plan()
                .verse(place)
                .answer()
                .map(each -> each.heard().word())
                .orElse("no feedback");
    }

    /** "208 V1: too soft; congregation of 480". */
    private String words(VersePlace place, PlanEdit work) {
        return name(place, work) + ": " + answer(place, work) + "; " + who(place, work);
    }

    /** "208 V1"; with the title of a hymn that has no number. */
    private static String name(VersePlace place, PlanEdit work) {
        return called(work.plan().hymn(place)) + " " + work.plan().verse(place).label();
    }

    private static String called(Hymn hymn) {
        return hymn.number().isBlank() ? hymn.title() : hymn.number();
    }

    @Override
    public String words(VersePlace place, State state) {
        return state.work().map(work -> words(place, work)).orElse("");
    }

    /**
     * The verse marked now, who sang only where others did than in the one before, after what became of that where it
     * was answered; at first the keys.
     */
    @Override
    public String spoken(State before, State now) {
        if (now.work().isEmpty() || list.isEmpty()) {
            return "";
        }
        PlanEdit work = now.work().get();
        VersePlace place = list.current().orElseThrow();
        if (!(before.top() instanceof FeedbackScreen screen)) {
            return KEYS_IN_WORDS + Listing.super.spoken(before, now);
        }
        VersePlace last = screen.list.current().orElseThrow();
        boolean isAnswered = !before.work().equals(now.work());
        String answered = isAnswered ? name(last, work) + " was " + answer(last, work) + ". " : "";
        if (isAnswered && now.notice().text().equals(ALL_ANSWERED)) {
            return answered.strip();
        }
        String sung = who(place, work).equals(who(last, work)) ? "" : "; " + who(place, work);
        return answered + name(place, work) + ": " + answer(place, work) + sung + ", " + list.place() + ".";
    }

    private static int numberColumns(PlanEdit work) {
        return work.plan().hymns().stream()
                .mapToInt(hymn -> Math.min(hymn.number().isBlank() ? TITLE : LABEL, Text.columns(called(hymn))))
                .max()
                .orElse(0);
    }
}
