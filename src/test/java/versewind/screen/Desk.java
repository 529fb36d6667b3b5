package versewind.screen;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.Shipped;
import versewind.calibration.CalibratedOrgan;
import versewind.calibration.Calibration;
import versewind.calibration.Experience;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Undo;
import versewind.plan.Verse;
import versewind.proposal.RegistrationProposer;
import versewind.rules.DynamicSteps;
import versewind.screen.desk.DeskScreen;
import versewind.screen.library.LibraryEvent;
import versewind.screen.plan.FileEvent;
import versewind.screen.plan.Item;
import versewind.screen.plan.PlanEvent;
import versewind.screen.plan.StopGridLayout;
import versewind.screen.state.Effect;
import versewind.screen.state.Effects;
import versewind.screen.state.Event;
import versewind.screen.state.FormBox;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.Question;
import versewind.screen.state.State;
import versewind.screen.state.Transition;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Letters;
import versewind.screen.toolkit.Marks;
import versewind.sound.OrganSound;
import versewind.store.OpenPlan;

/** An editor without a terminal: keys are pressed on it, and what it shows and wants is looked at. */
public final class Desk {

    public static final LocalDate TODAY = LocalDate.of(2026, 9, 28);

    /** An ordinary screen with nothing on it. */
    static final State ORDINARY = Update.empty(80, 24, Marks.UNICODE, TODAY);

    private static final Map<String, Key> NAMED = IntStream.range(0, Key.Named.values().length)
            .mapToObj(i -> Key.Named.values()[i])
            .filter(named -> named != Key.Named.CHARACTER)
            .collect(Collectors.toMap(named -> "<" + Key.of(named).name().replace(" ", "") + ">", Key::of));

    private static final Map<Instrument, OrganSound> SOUNDS = new HashMap<>();

    static final String CHANGED_ELSEWHERE = "Somebody else changed this plan's file after you opened it.";

    private State state;
    private final List<Effect> effects = new ArrayList<>();

    /** What comes of unsaved work when it is taken up. */
    private Optional<Event> restored = Optional.empty();

    private Desk(State state) {
        this.state = state;
    }

    /** A shipped plan, open on a screen of a size. */
    public static Desk with(String plan, int columns, int rows) {
        return with(plan, columns, rows, Marks.UNICODE);
    }

    public static Desk with(String plan, int columns, int rows, Marks marks) {
        OpenPlan open = Shipped.plan(plan);
        return with(open.plan(), open.instrument(), Update.empty(columns, rows, marks, TODAY), Optional.empty());
    }

    public static Desk with(Plan plan, Instrument instrument, State empty, Optional<Plan> draft) {
        Desk desk = new Desk(empty);
        Optional<FileEvent.LeftWork> left =
                draft.map(now -> new FileEvent.LeftWork(Undo.of(plan).to(now), "by anna on vestry, last at 09:30"));
        desk.answer(new FileEvent.PlanOpened("a-plan", plan, instrument, organ(instrument), left));
        desk.restored = left.map(work -> new FileEvent.WorkRestored(work.history()));
        return desk;
    }

    /** An editor with no plan open. */
    public static Desk empty(int columns, int rows) {
        return new Desk(Update.empty(columns, rows, Marks.UNICODE, TODAY));
    }

    /** A plan without hymns on the parish organ. */
    public static Desk blank() {
        ServiceHeading heading = new ServiceHeading("Trial", Optional.empty(), 100, "");
        return with(
                new Plan(heading, "st-tethwin", List.of()),
                Shipped.plan("harvest-festival").instrument(),
                ORDINARY,
                Optional.empty());
    }

    /** A shipped plan, opened where everything is spoken. */
    static Desk openedSpoken(String plan) {
        OpenPlan open = Shipped.plan(plan);
        return with(open.plan(), open.instrument(), ORDINARY.lettered(Letters.SPOKEN), Optional.empty());
    }

    /** A shipped plan, changed before it is opened. */
    public static Desk with(String plan, UnaryOperator<Plan> change) {
        OpenPlan open = Shipped.plan(plan);
        return with(change.apply(open.plan()), open.instrument(), ORDINARY, Optional.empty());
    }

    /** A hymn of no book. */
    static Hymn unnumbered(Hymn hymn) {
        return new Hymn(
                "", hymn.title(), hymn.tune(), hymn.metre(), hymn.key(), hymn.tempo(), hymn.notes(), hymn.verses());
    }

    /** A shipped plan beside which other work was kept. */
    static Desk withDraft(String plan, UnaryOperator<Plan> draft) {
        OpenPlan open = Shipped.plan(plan);
        return with(open.plan(), open.instrument(), ORDINARY, Optional.of(draft.apply(open.plan())));
    }

    static CalibratedOrgan organ(Instrument instrument) {
        return CalibratedOrgan.of(sound(instrument), Calibration.NONE, Experience.NONE);
    }

    static OrganSound sound(Instrument instrument) {
        return SOUNDS.computeIfAbsent(instrument, OrganSound::open);
    }

    /** Presses keys: single characters, "<Tab>", "<PageDown>", "^S" with control, "'text'" typed letter by letter. */
    public Desk press(String... keys) {
        for (String key : keys) {
            if (key.length() > 1 && key.startsWith("'")) {
                key.substring(1, key.length() - 1)
                        .codePoints()
                        .forEach(point -> answer(new Event.Press(Key.of(point))));
            } else if (key.startsWith("^")) {
                answer(new Event.Press(Key.control(Character.toLowerCase(key.charAt(1)))));
            } else {
                answer(new Event.Press(NAMED.containsKey(key) ? NAMED.get(key) : Key.of(key.codePointAt(0))));
            }
        }
        return this;
    }

    /** The plan that is open is played from as {@code versewind desk} does. */
    Desk alone() {
        Transition step = Update.desk(state);
        state = step.state();
        effects.addAll(step.effects());
        return this;
    }

    /** What makes the verses at the desk stronger and softer is found, as far as it was asked for. */
    Desk climb() {
        List<Effect.LadderOf> wanted = new ArrayList<>();
        Effects climbing = Wanted.doneBy((name, arguments) -> {
            if (name.equals("findLadders")) {
                ((List<?>) arguments[0]).forEach(each -> wanted.add((Effect.LadderOf) each));
            }
            return List.of();
        });
        takeEffects().forEach(effect -> effect.by(climbing));
        wanted.forEach(of -> answer(new DeskScreen.LadderFound(
                of, DynamicSteps.of(work().sound(), of.verse(), of.people(), of.tempo(), DynamicSteps.AT_DESK))));
        return this;
    }

    /** Something happens outside; a proposal for a verse is found at once. */
    public Desk answer(Event input) {
        Transition step = Update.step(state, input);
        state = step.state();
        for (Effect effect : step.effects()) {
            if (Wanted.of(effect).is("proposeVerse")) {
                answer(new PlanEvent.VerseProposed(
                        plan(), RegistrationProposer.of(work().sound()).forVerse(plan(), work().place())));
            } else if (Wanted.of(effect).is("restoreWork")) {
                restored.ifPresent(this::answer);
            } else {
                effects.add(effect);
            }
        }
        return this;
    }

    /** The library is opened, and these are the plans in it. */
    public Desk library(LibraryEvent.ListedPlan... plans) {
        Transition step = Update.start(state);
        state = step.state();
        return answer(new LibraryEvent.PlansListed(List.of(plans), plans.length, LibraryEvent.PlansListed.Part.FIRST));
    }

    /** A plan in the library, edited in the evening before. */
    public static LibraryEvent.ListedPlan listed(String id, String title, String date) {
        return LibraryEvent.ListedPlan.of(
                id,
                title,
                date.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(date)),
                "st-tethwin",
                TODAY.minusDays(1).atTime(19, 30),
                LibraryEvent.ListedPlan.Condition.SAVED);
    }

    /** With stops and verses written so. */
    Desk lettered(Letters letters) {
        state = state.lettered(letters);
        return this;
    }

    public State state() {
        return state;
    }

    public PlanEdit work() {
        return state.work().orElseThrow();
    }

    public Plan plan() {
        return work().plan();
    }

    Verse verse() {
        return work().verse().orElseThrow();
    }

    public Hymn hymn() {
        return work().hymn().orElseThrow();
    }

    List<String> labels() {
        return work().verses().stream().map(Verse::label).toList();
    }

    public String said() {
        return state.notice().text();
    }

    /** What was wanted done outside since this was last asked. */
    public List<Wanted> effects() {
        return takeEffects().stream().map(Wanted::of).toList();
    }

    /** The same, to be done. */
    List<Effect> takeEffects() {
        List<Effect> all = List.copyOf(effects);
        effects.clear();
        return all;
    }

    /** The names of the stops, couplers and tremulants drawn. */
    List<String> drawn() {
        List<String> names = new ArrayList<>();
        Instrument instrument = work().instrument();
        verse().registration()
                .stops()
                .forEach(i -> names.add(instrument.stops().get(i).name().toString()));
        verse().registration()
                .couplers()
                .forEach(i -> names.add(instrument.couplers().get(i).name()));
        verse().registration()
                .tremulants()
                .forEach(i -> names.add(instrument.tremulants().get(i).name()));
        return names;
    }

    /** The knob where we are. */
    public String knob() {
        return Item.fullName(
                work().instrument(), StopGridLayout.items(work().instrument()).get(work().item()));
    }

    public Frame frame() {
        return View.paint(state);
    }

    /** The question that is asked; blank where there is none. */
    String question() {
        return state.top() instanceof Question question ? question.text() : "";
    }

    /** The form that is being filled in. */
    FormBox form() {
        return (FormBox) state.top();
    }

    /** The characters of the screen, row by row. */
    public String characters() {
        Frame frame = frame();
        return IntStream.range(0, frame.height()).mapToObj(frame::row).collect(Collectors.joining("\n", "", "\n"));
    }

    /** The screen as text: its characters, then its styles, then where the text caret is. */
    public String screen() {
        Frame frame = frame();
        String styles = IntStream.range(0, frame.height())
                .mapToObj(frame::styleRow)
                .collect(Collectors.joining("\n", "", "\n"));
        String caret =
                frame.caretX() < 0 ? "" : "caret in column " + frame.caretX() + " of row " + frame.caretY() + "\n";
        return characters() + "-".repeat(frame.width()) + "\n" + styles + caret;
    }
}
