package versewind.screen.desk;

import java.util.List;
import java.util.Optional;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Hymn;
import versewind.plan.ServiceOrder;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.screen.state.KeyTable;
import versewind.screen.state.PlanChanges;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.screen.state.VerseFeedbackCommands;
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
public record FeedbackScreen(ListBox<VersePlace> list, DeskNotes notes) implements AtOrgan {

    public static final KeyTable<FeedbackScreen> KEYS = KeyTable.<FeedbackScreen>under("After the service")
            .key("1", "too soft", heard(HeardAs.TOO_SOFT))
            .key("2", "right", heard(HeardAs.RIGHT))
            .key("3", "too strong", heard(HeardAs.TOO_STRONG))
            .key(
                    "x, Delete",
                    "delete the feedback",
                    (screen, state) -> state.onWork(work -> screen.answer(state, work, Optional.empty())))
            .key("Down, Space", "the verse below", (screen, state) -> screen.move(state, 1))
            .key("Page Down, Enter", "the same", (screen, state) -> screen.move(state, 1))
            .key("Up, Backspace, Page Up", "the verse above", (screen, state) -> screen.move(state, -1))
            .key("Esc, q", "back to the desk", (screen, state) -> VerseFeedbackCommands.askedToKeep(state.close()));

    private static final int LABEL = 8;
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
                && ServiceOrder.verse(work.plan(), places.get(at)).answer().isPresent()) {
            at++;
        }
        DeskNotes staying = notes.with(DeskNotes.Leaving.NO);
        return state.show(new DeskScreen(staying)).open(new FeedbackScreen(new ListBox<>(places, at), staying));
    }

    /** The verses that are asked about: all but those in which the organ plays alone. */
    private static List<VersePlace> asked(PlanEdit work) {
        int people = work.plan().heading().people();
        return ServiceOrder.places(work.plan()).stream()
                .filter(place -> work.sound()
                                .estimate(
                                        ServiceOrder.verse(work.plan(), place),
                                        people,
                                        work.plan().hymns().get(place.hymn()).tempo())
                                .balance()
                                .kind()
                        != Balance.Kind.ORGAN_ALONE)
                .toList();
    }

    private State move(State state, int by) {
        return state.show(new FeedbackScreen(list.move(by), notes));
    }

    /** Writes an answer into the plan's file at once; or, if the plan had unsaved changes, beside it with those. */
    private State answer(State state, PlanEdit work, Optional<Feedback> answer) {
        VersePlace place = list.current().orElseThrow();
        Verse verse = ServiceOrder.verse(work.plan(), place);
        PlanEdit after = work.with(work.history().to(work.plan().withVerse(place, verse.withAnswer(answer))));
        State next = move(state, answer.isPresent() ? 1 : 0).with(after);
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

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public void paint(Frame frame, State state) {
        PlanEdit work = state.work().orElseThrow();
        frame.write(1, 0, "How was the organ for the singers?", Style.HEADING);
        list.each(2, frame.height() - EDGE_ROWS, (place, index, y) -> paintRow(frame, state, work, index, y));
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
        Verse verse = ServiceOrder.verse(work.plan(), place);
        Hymn hymn = work.plan().hymns().get(place.hymn());
        Marks marks = state.marks();
        boolean here = index == list.marked();
        frame.write(0, y, here ? Mark.HERE.in(marks) : " ", Style.STRONG);
        boolean isFirst = index == 0 || list.rows().get(index - 1).hymn() != place.hymn();
        int number = numberColumns(work);
        frame.write(1, y, frame.fit(isFirst ? hymn.number() : "", number), Style.TEXT);
        int x = number + 2;
        frame.write(x, y, frame.fit(verse.label(), LABEL), Style.STRONG);
        x += LABEL + 1;
        String answer = verse.answer().map(each -> each.heard().word()).orElse(Mark.MINUS.in(marks));
        frame.write(x, y, answer, verse.answer().isPresent() ? Style.STRONG : Style.TEXT);
        x += ANSWER + 1;
        int people = notes.people(work);
        String who = Wording.who(verse, people, work.sound().estimate(verse, people, hymn.tempo()));
        String stepped = DeskWords.stepped(notes.steps(place));
        String said = stepped.isEmpty() ? who : "as played, " + stepped + " than planned; " + who;
        frame.write(x, y, frame.fit(said, frame.width() - 1 - x), Style.TEXT);
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
}
