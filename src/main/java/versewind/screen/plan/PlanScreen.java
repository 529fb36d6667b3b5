package versewind.screen.plan;

import java.util.List;
import java.util.stream.Stream;
import versewind.plan.Hymn;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.screen.state.Effect;
import versewind.screen.state.Effects;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Leaving;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.Screen;
import versewind.screen.state.ServiceForm;
import versewind.screen.state.State;
import versewind.screen.state.VerseFeedbackCommands;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Enlarged;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Style;
import versewind.sound.Estimate;

/** The plan: stops and verses beside each other, with the status bar under them. It lies under all other screens. */
public record PlanScreen() implements Screen {

    private static final PlanEdit.Side STOPS = PlanEdit.Side.STOPS;
    private static final PlanEdit.Side VERSES = PlanEdit.Side.VERSES;

    static final String NO_HYMNS = "No hymns yet. Press I to add one.";
    static final String NO_VERSES = "No verses yet. Press i to add one.";

    /** The key that opens the desk, also where the terminal is too small for the plan. */
    private static final String DESK = "K";

    /** A class of its own, so that the first screen, whose hints have their own words, does not wait for it. */
    private static final class Keys {
        static final KeyTable<PlanScreen> TABLE = KeyTable.<PlanScreen>under("Moving about")
                .key(STOPS, "Up", "in the stops: the stop above", plan((s, work) -> MoveCommands.toItem(s, work, -1)))
                .key(STOPS, "Down", "in the stops: the stop below", plan((s, work) -> MoveCommands.toItem(s, work, 1)))
                .key(
                        STOPS,
                        "Left",
                        "in the stops: the column (spoken: division) before",
                        plan((s, w) -> MoveCommands.beside(s, w, -1)))
                .key(
                        STOPS,
                        "Right",
                        "in the stops: the next column (spoken: division)",
                        plan((s, w) -> MoveCommands.beside(s, w, 1)))
                .key(STOPS, "Home", "in the stops: the first stop", plan(MoveCommands::toFirstItem))
                .key(STOPS, "End", "in the stops: the last stop", plan(MoveCommands::toLastItem))
                .key("/", "find a stop by part of its name", plan(FindScreen::open))
                .key(
                        VERSES,
                        "Up",
                        "in the verses: the verse above, also in the hymn before",
                        plan((s, work) -> MoveCommands.toVerse(s, work, -1)))
                .key(
                        VERSES,
                        "Down",
                        "in the verses: the verse below, also in the next hymn",
                        plan((s, work) -> MoveCommands.toVerse(s, work, 1)))
                .key(
                        "n, Page Down",
                        "the next verse of the hymn",
                        plan((s, work) -> MoveCommands.withinHymn(s, work, 1)))
                .key(
                        "p, Page Up",
                        "the previous verse of the hymn",
                        plan((s, work) -> MoveCommands.withinHymn(s, work, -1)))
                .key("]", "the next hymn", plan((s, work) -> MoveCommands.toHymn(s, work, 1)))
                .key("[", "the previous hymn", plan((s, work) -> MoveCommands.toHymn(s, work, -1)))
                .key("Tab, Shift-Tab", "switch between stops and verses", plan(MoveCommands::toOtherSide))
                .key("t", "levels of the verse in dB(A), sone and phon, and for the ears", verse(StatusView::figures))
                .key(STOPS, "T, Enter", "describe the stop in a sentence", plan(StopCommands::describe))
                .key(
                        "L",
                        "large letters for stops and verses, or the usual ones",
                        (s, state) -> state.withOtherLetters())
                .heading("Stops and swell boxes")
                .key(STOPS, "Space", "draw the stop, or put it in", verse(StopCommands::toggle))
                .key("j", "say all that is drawn, and how it is played", verse(StopCommands::tell))
                .key("0", "put everything in", verse(StopCommands::putAllIn))
                .key(
                        "<",
                        "louder: open the swell box a step",
                        verse((s, work, verse) -> StopCommands.moveBox(s, work, verse, 1)))
                .key(
                        ">",
                        "softer: close the swell box a step",
                        verse((s, work, verse) -> StopCommands.moveBox(s, work, verse, -1)))
                .key("c", "draw what the previous verse has", verse(StopCommands::takeOver))
                .key(
                        STOPS,
                        "v",
                        "lock the stop for proposals: as it is, the other way, free",
                        verse(LockCommands::lock))
                .key(
                        STOPS,
                        "V",
                        "lock it the same way in every verse of the service",
                        verse(LockCommands::lockThroughout))
                .key("R", "usual registrations: recall one; what feedback was kept", plan(UsualScreen::open))
                .key("*", "keep what is drawn as a usual registration", verse(UsualForm::ofVerse))
                .key("P", "proposals: what to draw", verse((s, w, verse) -> ProposalsScreen.open(s, w)))
                .key("A", "proposals for the whole service, then its curve", plan(ProposalsScreen::forService))
                .key("&", "draw the same in the following verses with the same singers", verse(StopCommands::carryOn))
                .heading("Who sings")
                .key("1", "the congregation sings", sungBy(SungBy.CONGREGATION))
                .key("2", "a small choir sings", sungBy(SungBy.SMALL_CHOIR))
                .key("3", "a soloist sings", sungBy(SungBy.SOLO_VOICE))
                .key("4", "nobody sings: the melody is soloed", sungBy(SungBy.MELODY_SOLOED))
                .key("5", "trebles sing a descant over the people", sungBy(SungBy.DESCANT))
                .key("6", "trebles alone sing", sungBy(SungBy.TREBLES))
                .key("7", "they sing in alternation, one side at a time", sungBy(SungBy.ALTERNATION))
                .key("8", "they sing unaccompanied, or accompanied again", verse(PlayingCommands::unaccompanied))
                .key(
                        "+, =",
                        "they sing more strongly",
                        verse((s, work, verse) -> PlayingCommands.sing(s, work, verse, 1)))
                .key("-", "they sing more gently", verse((s, work, verse) -> PlayingCommands.sing(s, work, verse, -1)))
                .key("g", "how the verse sounds: plain, bright, festal, gentle", verse(PlayingCommands::nextMood))
                .key(
                        "#",
                        "number of singers, or of people present",
                        verse((s, work, verse) -> s.open(VerseForm.of(work, verse, VerseForm.PEOPLE))))
                .heading("Hands and feet")
                .key("h", "next layout of hands and feet", verse(PlayingCommands::nextLayout))
                .key(
                        "H",
                        "keep hands and feet, the swell boxes, both or neither in proposals",
                        verse(LockCommands::keepPlaying))
                .key("r", "move the right hand to the next manual", verse(PlayingCommands::moveRightHand))
                .key("l", "move the left hand to the next manual", verse(PlayingCommands::moveLeftHand))
                .heading("Verses")
                .key("e", "edit label, piston and note of the verse", verse(PlanScreen::editVerse))
                .key(VERSES, "Enter", "", verse(PlanScreen::editVerse))
                .key(
                        "k",
                        "next kind: verse, refrain, interlude, last verse, Amen, intro",
                        verse(ArrangeCommands::nextKind))
                .key("O", "the verse may be left out, or not", verse(ArrangeCommands::turnOptional))
                .key("i", "add a verse after this one", hymn(ArrangeCommands::insertVerse))
                .key("d", "duplicate the verse", verse(ArrangeCommands::duplicateVerse))
                .key("x, Delete", "delete the verse", verse(ArrangeCommands::removeVerse))
                .key(",", "move the verse up", verse((s, work, verse) -> ArrangeCommands.moveVerse(s, work, -1)))
                .key(".", "move the verse down", verse((s, work, verse) -> ArrangeCommands.moveVerse(s, work, 1)))
                .heading("Hymns and service")
                .key(
                        "E",
                        "edit title, tune, key and tempo of the hymn, and how it sounds",
                        hymn((s, work, hymn) -> s.open(HymnForm.of(work, hymn))))
                .key("I", "add a hymn after this one", plan((s, work) -> s.open(HymnForm.ofNew(work))))
                .key("D", "duplicate the hymn", hymn(ArrangeCommands::duplicateHymn))
                .key("Ctrl-X", "delete the hymn", hymn(ArrangeCommands::removeHymn))
                .key("{", "move the hymn forward", hymn((s, work, hymn) -> ArrangeCommands.moveHymn(s, work, -1)))
                .key("}", "move the hymn back", hymn((s, work, hymn) -> ArrangeCommands.moveHymn(s, work, 1)))
                .key("b", "copy a hymn from another plan, with its registrations", plan((s, work) -> s.doors()
                        .libraryToBring(s)))
                .key(
                        "B",
                        "what was done with this hymn or tune before",
                        hymn((s, work, hymn) ->
                                s.wants(effects -> effects.findHymn(work.id(), hymn, Effect.Telling.LISTED))))
                .key(
                        "S",
                        "edit title, date and people of the service",
                        plan((s, work) -> s.open(ServiceForm.of(s, work))))
                .heading("Feedback and readings")
                .key("y", "feedback: too soft, right, too strong", verse(VerseFeedbackCommands::answer))
                .key("Y", "keep the feedback on this service with the organ", plan(VerseFeedbackCommands::keep))
                .key("m", "record a meter reading of this verse", verse(MeterForm::open))
                .key("M", "all readings, and what to measure next", plan((s, work) -> s.open(ReadingsScreen.of(work))))
                .heading("The plan")
                .key("u, Ctrl-Z", "undo", plan(ArrangeCommands::undo))
                .key("U, Ctrl-Y", "redo", plan(ArrangeCommands::redo))
                .key("s, Ctrl-S", "save", plan(PlanScreen::save))
                .key("w", "save under another title, in a new file", plan((s, w) -> s.open(ServiceForm.ofSaveUnder(w))))
                .key("o, Ctrl-O", "library: open another plan, or make a new one", (screen, s) -> s.doors()
                        .library(s))
                .key("W", "write the sheet for the music desk", plan(SheetForm::open))
                .key("f", "findings: what a colleague would say", plan(FindingsScreen::open))
                .key(
                        "a",
                        "findings if fewer or more people come",
                        plan((s, work) -> s.open(FindingsScreen.attendedForm(work))))
                .key(
                        "C",
                        "curve: how the service rises and falls, and what wants attention",
                        plan(FindingsScreen::underCurve))
                .key(DESK, "desk: the verse fills the screen, to play from", plan((s, work) -> s.doors()
                        .desk(s, work)))
                .key("q, Ctrl-Q", "leave", (screen, state) -> Leaving.afterAsking(state, Leaving.LEAVE, Effects::quit));
    }

    private static final int NEXT_ROWS = 2;
    private static final int CURVE_ROWS = 14;

    /** The keys most wanted at a moment, the first ones first, and few words for what they do. */
    private static List<String> hints(PlanEdit work) {
        if (work.hymn().isEmpty()) {
            return List.of("I new hymn", "b copy hymn", "S service", "o library", "? help", ": command", "q leave");
        }
        if (work.verse().isEmpty()) {
            return List.of("i new verse", "I new hymn", "E edit hymn", "? help", ": command", "s save", "q leave");
        }
        Stream<String> first =
                switch (work.side()) {
                    case VERSES -> Stream.of("i new verse", "I new hymn", "e edit", "x delete", "Tab stops", "k kind");
                    case STOPS ->
                        work.verse().get().registration().stops().isEmpty()
                                ? Stream.of("Space draw", "/ find", "P propose", "R usual", "c as before", "n next")
                                : Stream.of("Space draw", "/ find", "1 to 8 who", "n next", "P propose", "f findings");
                };
        Stream<String> more =
                switch (work.side()) {
                    case VERSES -> Stream.of("E edit hymn", "d duplicate", ", . move");
                    case STOPS -> Stream.of("+ - sing", "< > box", "h hands", "Tab verses");
                };
        Stream<String> last = Stream.of(": command", "s save", "u undo", "W sheet", "K desk", "S service", "q leave");
        return Stream.of(Stream.of("? help"), first, more, last)
                .flatMap(hints -> hints)
                .toList();
    }

    /** What a key does with the plan that is open. */
    @FunctionalInterface
    interface OnPlan {
        State on(State state, PlanEdit work);
    }

    /** What a key does with the current verse. */
    @FunctionalInterface
    interface OnVerse {
        State on(State state, PlanEdit work, Verse verse);
    }

    /** What a key does with the current hymn. */
    @FunctionalInterface
    interface OnHymn {
        State on(State state, PlanEdit work, Hymn hymn);
    }

    private static KeyTable.Action<PlanScreen> plan(OnPlan action) {
        return (screen, state) -> state.onWork(work -> action.on(state, work));
    }

    private static KeyTable.Action<PlanScreen> hymn(OnHymn action) {
        return plan((state, work) ->
                work.hymn().map(hymn -> action.on(state, work, hymn)).orElseGet(() -> state.says(NO_HYMNS)));
    }

    private static KeyTable.Action<PlanScreen> verse(OnVerse action) {
        return plan((state, work) -> work.verse()
                .map(verse -> action.on(state, work, verse))
                .orElseGet(() -> state.says(work.hymn().isPresent() ? NO_VERSES : NO_HYMNS)));
    }

    private static KeyTable.Action<PlanScreen> sungBy(SungBy by) {
        return verse((state, work, verse) -> PlayingCommands.sungBy(state, work, verse, by));
    }

    private static State save(State state, PlanEdit work) {
        return work.history().isUnsaved()
                ? state.wants(effects -> effects.save(work.plan(), List.of()))
                : state.says("Nothing to save.");
    }

    private static State editVerse(State state, PlanEdit work, Verse verse) {
        return state.open(VerseForm.of(work, verse, VerseForm.LABEL));
    }

    @Override
    public KeyTable<?> keys() {
        return Keys.TABLE;
    }

    @Override
    public Layer layer() {
        return Layer.GROUND;
    }

    @Override
    public Object mode(State state) {
        return state.work().map(PlanEdit::side).orElse(STOPS);
    }

    @Override
    public boolean worksWhenSmall(Key key, State state) {
        return !smallWords(state).isEmpty() && Key.all(DESK).contains(key);
    }

    @Override
    public String smallWords(State state) {
        boolean hasRoom = Size.OF_DESK.fits(state);
        return hasRoom && state.work().isPresent() ? " " + DESK + " opens the desk, which fits." : "";
    }

    /** In the rows that the stops leave blank: the curve of the hymn, and what the next verse changes. */
    private static void paintSpare(Frame frame, State state, PlanEdit work, int bottom) {
        Layout layout = Layout.of(state);
        int top = bottom;
        while (top > layout.top() && frame.isBlank(0, top - 1, layout.gridWidth())) {
            top--;
        }
        int blank = bottom - top - 1;
        List<String> next = blank < CurveView.LEAST_ROWS + NEXT_ROWS
                ? List.of()
                : MovesLine.ofNext(state, work, layout.gridWidth() - 2, NEXT_ROWS);
        int rows = blank - next.size();
        if (rows < CurveView.LEAST_ROWS
                || layout.gridWidth() < CurveView.LEAST_COLUMNS
                || work.verse().isEmpty()) {
            return;
        }
        List<VersePlace> service = work.plan().places();
        List<VersePlace> hymn = service.stream()
                .filter(place -> place.hymn() == work.place().hymn())
                .toList();
        int half = Math.min(rows / 2, CURVE_ROWS);
        boolean isForBoth = half >= CurveView.LEAST_ROWS && service.size() > hymn.size();
        int height = isForBoth ? half : Math.min(rows, CURVE_ROWS);
        int y = bottom - next.size() - height;
        CurveView.paint(frame, new Box(1, y, layout.gridWidth() - 2, height), work, hymn);
        if (isForBoth) {
            CurveView.paint(frame, new Box(1, y - height, layout.gridWidth() - 2, height), work, service);
        }
        Box.write(frame, 1, bottom - next.size(), next, next.size(), Style.FAINT);
    }

    private static void paintPanels(
            Frame frame, State state, PlanEdit work, StopGridLayout grid, List<Estimate> estimates) {
        if (state.isSpoken()) {
            SpokenView.paint(frame, state, work);
            return;
        }
        Layout layout = Layout.of(state);
        Frame panels = state.isLarge()
                ? new Frame(frame.width() / Enlarged.COLUMNS, layout.height() / Enlarged.ROWS, frame.marks())
                : frame;
        StopGridView.paint(panels, state, work, grid);
        VerseListView.paint(panels, state, work, estimates);
        if (panels != frame) {
            Enlarged.paint(panels, frame, 0, layout.top());
        }
        for (int y = layout.top(); y < layout.statusTop(); y++) {
            frame.put(layout.gridWidth(), y, Mark.WALL, Style.FAINT);
        }
    }

    @Override
    public String spoken(State before, State now) {
        return now.work().map(work -> SpokenView.here(before, now, work)).orElse("");
    }

    @Override
    public String name(State state) {
        return "Plan " + state.work().map(work -> work.plan().heading().title()).orElse("");
    }

    @Override
    public void paint(Frame frame, State state) {
        if (state.work().isPresent()) {
            PlanEdit work = state.work().get();
            StopGridLayout grid = Layout.grid(state, work);
            HeaderView.paint(frame, state, work);
            List<Estimate> estimates =
                    work.verses().stream().map(work::estimate).toList();
            paintPanels(frame, state, work, grid, estimates);
            int statusY = StatusView.paint(frame, state, work, estimates, StopGridView.page(frame, work, grid));
            if (frame.isWhole() && work.verse().isPresent() && !state.isSpoken()) {
                paintSpare(frame, state, work, statusY);
            }
        } else {
            frame.write(1, 0, "Versewind", Style.HEADING);
            frame.write(1, 2, "No plan is open. Press o to open one, q to leave.", Style.TEXT);
        }
        if (state.top() instanceof FindScreen) {
            return;
        }
        if (!state.notice().text().isBlank()) {
            state.notice().paint(frame);
        } else if (state.work().isPresent() && state.top() == this) {
            String[] hints = hints(state.work().get()).toArray(String[]::new);
            KeyTable.hintsInWords(frame, hints);
        }
    }
}
