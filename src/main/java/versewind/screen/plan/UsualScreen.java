package versewind.screen.plan;

import java.util.List;
import java.util.Optional;
import versewind.calibration.CalibratedOrgan;
import versewind.calibration.Contradiction;
import versewind.calibration.Experience;
import versewind.calibration.HeardEffect;
import versewind.calibration.HeardRegistration;
import versewind.organ.Quoted;
import versewind.organ.RegistrationText;
import versewind.plan.Verse;
import versewind.screen.state.Effect;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Listing;
import versewind.screen.state.PlanChanges;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.Screen;
import versewind.screen.state.State;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Notice;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;

/**
 * The registrations that are usually drawn on an organ, over the plan or the organ: a short list to recall one from.
 *
 * @param list by their names
 * @param organ the organ
 * @param owner how the organ is open
 */
public record UsualScreen(ListBox<HeardRegistration> list, CalibratedOrgan organ, Owner owner)
        implements Listing<HeardRegistration> {

    public static final KeyTable<UsualScreen> KEYS = KeyTable.<UsualScreen>under("Usual registrations")
            .list("registration")
            .key("Enter", "take it for this verse", UsualScreen::recall)
            .key("i", "add one", (screen, state) -> state.open(UsualForm.ofGuess(screen.organ, screen.owner)))
            .key("e", "edit", (screen, state) -> screen.onMarked(state, heard -> screen.edit(state, heard)))
            .key(
                    "x, Delete",
                    "delete",
                    (screen, state) -> screen.onMarked(
                            state,
                            heard -> state.wants(screen.owner.keeping(
                                    screen.organ.experience().without(heard), screen.organ.experience()))))
            .key("Esc, q", "close", (screen, state) -> state.close());

    private static final int WIDTH = 76;
    private static final int NAME = 24;
    private static final int FIXED_ROWS = 2;
    private static final int MOST_ROWS = 10;

    /** How an organ is open. */
    enum Owner {
        /** With the plan that is made for it. */
        PLAN,
        /** To be changed. */
        ORGAN_BEING_CHANGED;

        /** Keeps what its organist knows now, and in a plan what was known before, for undo. */
        Effect keeping(Experience next, Experience before) {
            return switch (this) {
                case PLAN -> effects -> effects.keepExperience(next, Optional.of(before));
                case ORGAN_BEING_CHANGED -> effects -> effects.keepExperienceOfOrgan(next);
            };
        }
    }

    /** What is done with the marked registration. */
    @FunctionalInterface
    private interface OnUsual {
        State on(HeardRegistration usual);
    }

    static State open(State state, PlanEdit work) {
        return open(state, work.organ(), Owner.PLAN);
    }

    /** The list; where it is empty, the form of the first. */
    static State open(State state, CalibratedOrgan organ, Owner owner) {
        List<HeardRegistration> heard = organ.experience().all();
        return state.open(
                heard.isEmpty() ? UsualForm.ofGuess(organ, owner) : new UsualScreen(ListBox.of(heard), organ, owner));
    }

    private State onMarked(State state, OnUsual action) {
        return list.current().map(action::on).orElseGet(() -> state.says("None yet. Press i to add one."));
    }

    private State recall(State state) {
        return onMarked(
                state,
                usual -> owner == Owner.ORGAN_BEING_CHANGED
                        ? edit(state, usual)
                        : state.onWork(work -> recalled(state.close(), work, usual)));
    }

    private static State recalled(State state, PlanEdit work, HeardRegistration usual) {
        Optional<Verse> verse = work.verse();
        if (verse.isEmpty()) {
            return state.says("There is no verse to draw it in. Press i to add one.");
        }
        Verse after = verse.get().withRegistration(usual.registration()).withHands(usual.hands());
        return after.equals(verse.get())
                ? state.says("\"" + usual.name() + "\" is drawn already.")
                : PlanChanges.change(state, work, after).says("Recalled \"" + usual.name() + "\" (u to undo).");
    }

    private State edit(State state, HeardRegistration heard) {
        return organ.experience().usual().contains(heard)
                ? state.open(UsualForm.of(heard, organ, owner))
                : state.says("Feedback is as it was recorded after the service. Press x to remove it.");
    }

    /** What an organist knows was written into the organ's file. */
    static State kept(State state, PlanEvent.UsualKept kept) {
        CalibratedOrgan organ = kept.organ();
        State next = state.update(
                UsualScreen.class,
                screen -> new UsualScreen(
                        new ListBox<>(organ.experience().all(), screen.list.marked()), organ, screen.owner));
        Optional<State> written = next.withFileWritten();
        if (written.isPresent()) {
            return written.get().says("Kept in the organ's file.");
        }
        return next.onWork(work -> next.with(work.on(organ, kept.before()))
                .with(said(
                        state.marks(),
                        work.organ().experience(),
                        organ,
                        kept.before().isEmpty())));
    }

    /** By what is there now and was not, or was there and is not. */
    private static Notice said(Marks marks, Experience before, CalibratedOrgan now, boolean isUndone) {
        List<HeardRegistration> fresh = without(now.experience().all(), before.all());
        List<HeardRegistration> gone = without(before.all(), now.experience().all());
        if (isUndone) {
            return Notice.says("Undid: " + (fresh.isEmpty() ? "kept " + names(gone) : "removed " + names(fresh)) + ".");
        }
        if (fresh.isEmpty()) {
            return Notice.says("Removed " + names(gone) + " (u to undo).");
        }
        String kept = "Kept " + names(fresh) + " with the organ (u in the plan to undo). ";
        Optional<Contradiction> clash = now.contradictions().stream()
                .filter(each ->
                        fresh.contains(each.answer()) || each.others().stream().anyMatch(fresh::contains))
                .findFirst();
        return clash.map(each -> Notice.warns(kept
                        + (fresh.equals(List.of(each.answer()))
                                ? "It"
                                : Quoted.text(each.answer().name())) + " contradicts " + each.whom() + ": see R."))
                .orElseGet(() -> Notice.says(kept + effect(marks, now, fresh).orElse("R lists what is kept.")));
    }

    /** What fresh answers changed. */
    private static Optional<String> effect(Marks marks, CalibratedOrgan now, List<HeardRegistration> fresh) {
        return now.lastHeard()
                .filter(last -> fresh.stream().anyMatch(each -> each.service().equals(last.service())))
                .flatMap(last -> effect(marks, last));
    }

    private static Optional<String> effect(Marks marks, HeardEffect last) {
        return last.sentence().map(said -> said.replace("±", Mark.PLUS_MINUS.in(marks)));
    }

    private static List<HeardRegistration> without(List<HeardRegistration> all, List<HeardRegistration> others) {
        return all.stream().filter(each -> !others.contains(each)).toList();
    }

    private static String names(List<HeardRegistration> heard) {
        return heard.size() == 1 ? "\"" + heard.get(0).name() + "\"" : "feedback on " + heard.size() + " verses";
    }

    /** How it was, and for whom: "right, 150 people, singing ordinary". */
    private String of(HeardRegistration heard) {
        boolean isUsual = organ.experience().usual().contains(heard);
        return (isUsual ? heard.heard().felt() : heard.heard().word()) + ", " + heard.people() + " people, singing "
                + heard.singing().word();
    }

    private String words(HeardRegistration heard) {
        return heard.name() + ": " + of(heard);
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public Screen marking(int row) {
        return new UsualScreen(list.mark(row), organ, owner);
    }

    /** With what is drawn, and what contradicts it. */
    @Override
    public String words(HeardRegistration heard, State state) {
        return words(heard) + ". "
                + new RegistrationText(organ.sound().organ()).format(heard.registration()) + "."
                + organ.contradiction(heard)
                        .map(clash -> " " + clash.sentence())
                        .orElse("");
    }

    @Override
    public String name(State state) {
        return title();
    }

    @Override
    public void paint(Frame frame, State state) {
        int columns = Math.min(WIDTH, frame.width()) - 4;
        RegistrationText text = new RegistrationText(organ.sound().organ());
        List<String> below = list.current()
                .map(marked -> Text.wrapped(text.format(marked.registration()), columns))
                .orElse(List.of("None yet."));
        List<String> why = list.current()
                .flatMap(organ::contradiction)
                .map(clash -> Text.wrapped(clash.sentence(), columns))
                .orElse(List.of());
        List<String> effect = organ.lastHeard()
                .flatMap(last -> effect(state.marks(), last))
                .map(said -> Text.wrapped(said, columns))
                .orElse(List.of());
        int shown = Math.min(list.size(), MOST_ROWS);
        Box box = Box.open(frame, title(), WIDTH, shown + 1 + below.size() + why.size() + effect.size() + FIXED_ROWS);
        list.paint(frame, box.rows(0, shown), this::words, (heard, index, y) -> {
            frame.write(box.x(), y, frame.fit(heard.name(), NAME - 2), Style.TEXT);
            boolean isClash = organ.contradiction(heard).isPresent();
            frame.write(box.x() + NAME - 2, y, isClash ? "!" : "", Style.BAD);
            frame.write(box.x() + NAME, y, frame.fit(of(heard), box.width() - NAME), Style.FAINT);
        });
        list.paintPosition(frame, box, shown, "registration");
        box.write(frame, box.y() + shown + 1, below, Style.TEXT);
        box.write(frame, box.y() + shown + 1 + below.size(), why, Style.BAD);
        box.write(frame, box.y() + shown + 1 + below.size() + why.size(), effect, Style.MESSAGE);
        if (owner == Owner.PLAN) {
            KEYS.hints(frame, box, "Enter take it", "i", "e", "x", "Esc");
        } else {
            KEYS.hints(frame, box, "i", "e", "x", "Esc");
        }
    }

    private String title() {
        return "Usual registrations of " + organ.sound().organ().name();
    }
}
