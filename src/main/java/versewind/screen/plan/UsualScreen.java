package versewind.screen.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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
import versewind.screen.state.Question;
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
 * The registrations that are usually drawn on an organ, over the plan or the organ: a short list to recall one from,
 * and below it the feedback, service by service.
 *
 * @param list by their names
 * @param unfolded the services whose verses are shown
 * @param organ the organ
 * @param owner how the organ is open
 */
public record UsualScreen(ListBox<UsualRow> list, Set<String> unfolded, CalibratedOrgan organ, Owner owner)
        implements Listing<UsualRow> {

    public static final KeyTable<UsualScreen> KEYS = KeyTable.<UsualScreen>under("Usual registrations")
            .list("row")
            .key("Enter", "take it for this verse; show or hide the answers of a service", UsualScreen::enter)
            .key("i", "add one", (screen, state) -> state.open(UsualForm.ofGuess(screen.organ, screen.owner)))
            .key("e", "edit", (screen, state) -> screen.onMarked(state, row -> screen.edit(state, row)))
            .key(
                    "x, Delete",
                    "delete it, or all answers of a service",
                    (screen, state) -> screen.onMarked(state, row -> screen.delete(state, row)))
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

    public UsualScreen {
        unfolded = Set.copyOf(unfolded);
    }

    /** What is done with the marked row. */
    @FunctionalInterface
    private interface OnUsual {
        State on(UsualRow row);
    }

    static State open(State state, PlanEdit work) {
        return open(state, work.organ(), Owner.PLAN);
    }

    /** The list; where it is empty, the form of the first. */
    static State open(State state, CalibratedOrgan organ, Owner owner) {
        List<UsualRow> rows = UsualRow.of(organ.experience(), Set.of());
        return state.open(
                rows.isEmpty()
                        ? UsualForm.ofGuess(organ, owner)
                        : new UsualScreen(ListBox.of(rows), Set.of(), organ, owner));
    }

    private State onMarked(State state, OnUsual action) {
        return list.current().map(action::on).orElseGet(() -> state.says("None yet. Press i to add one."));
    }

    private State enter(State state) {
        return onMarked(
                state,
                row -> row.isService()
                        ? state.show(folding(row.service()))
                        : owner == Owner.ORGAN_BEING_CHANGED
                                ? edit(state, row)
                                : state.onWork(work -> recalled(state.close(), work, row.first())));
    }

    /** With the verses of a service shown that were not, or the other way round. */
    private UsualScreen folding(String service) {
        Set<String> others = new HashSet<>(unfolded);
        if (!others.remove(service)) {
            others.add(service);
        }
        return new UsualScreen(
                new ListBox<>(UsualRow.of(organ.experience(), others), list.marked()), others, organ, owner);
    }

    private State delete(State state, UsualRow row) {
        Experience known = organ.experience();
        Experience left = row.heard().stream().reduce(known, Experience::without, (one, other) -> other);
        return Question.before(
                row.heard().size(),
                state,
                "Delete the " + row.heard().size() + " answers of " + row.name() + "?",
                closed -> closed.wants(owner.keeping(left, known)));
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

    private State edit(State state, UsualRow row) {
        return switch (row.kind()) {
            case USUAL -> state.open(UsualForm.of(row.first(), organ, owner));
            case ANSWER -> state.says("Feedback is as it was recorded after the service. Press x to remove it.");
            case SERVICE -> state.says("Press Enter to show its answers, x to remove them all.");
        };
    }

    /** What an organist knows was written into the organ's file. */
    static State kept(State state, PlanEvent.UsualKept kept) {
        CalibratedOrgan organ = kept.organ();
        State next = state.update(
                UsualScreen.class,
                screen -> new UsualScreen(
                        new ListBox<>(UsualRow.of(organ.experience(), screen.unfolded), screen.list.marked()),
                        screen.unfolded,
                        organ,
                        screen.owner));
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
        return clash.map(each -> Notice.warns(kept + each.claim() + " Was one different? See R."))
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
        if (heard.size() > 1) {
            return "feedback on " + heard.size() + " verses";
        }
        HeardRegistration one = heard.get(0);
        return one.service().isBlank() ? Quoted.text(one.name()) : "feedback on " + one.inWords();
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public Screen marking(int row) {
        return new UsualScreen(list.mark(row), unfolded, organ, owner);
    }

    private static String words(UsualRow row) {
        return row.name().strip() + ": " + row.felt();
    }

    /** With what is drawn, and what contradicts it. */
    @Override
    public String words(UsualRow row, State state) {
        return words(row) + ". " + drawn(row)
                + contradiction(row).map(clash -> " " + clash.sentence()).orElse("");
    }

    /** What is drawn; of a service nothing. */
    private String drawn(UsualRow row) {
        return row.isService()
                ? ""
                : new RegistrationText(organ.sound().organ()).format(row.first().registration()) + ".";
    }

    /** What contradicts it; of a service the first that contradicts any of its answers, if they are not shown. */
    private Optional<Contradiction> contradiction(UsualRow row) {
        boolean isShownBelow = row.isService() && unfolded.contains(row.service());
        return isShownBelow
                ? Optional.empty()
                : row.heard().stream()
                        .flatMap(heard -> organ.contradiction(heard).stream())
                        .findFirst();
    }

    @Override
    public String name(State state) {
        return title();
    }

    @Override
    public void paint(Frame frame, State state) {
        int columns = Math.min(WIDTH, frame.width()) - 4;
        List<String> below = list.current()
                .map(marked -> Text.wrapped(drawn(marked), columns))
                .orElse(List.of("None yet."));
        List<String> why = list.current()
                .flatMap(this::contradiction)
                .map(clash -> Text.wrapped(clash.sentence(), columns))
                .orElse(List.of());
        List<String> effect = organ.lastHeard()
                .flatMap(last -> effect(state.marks(), last))
                .map(said -> Text.wrapped(said, columns))
                .orElse(List.of());
        int shown = Math.min(list.size(), MOST_ROWS);
        Box box = Box.open(frame, title(), WIDTH, shown + 1 + below.size() + why.size() + effect.size() + FIXED_ROWS);
        list.paint(frame, box.rows(0, shown), UsualScreen::words, (row, index, y) -> {
            frame.write(box.x(), y, fitted(frame, row.name()), row.isService() ? Style.HEADING : Style.TEXT);
            frame.write(box.x() + NAME - 2, y, contradiction(row).isPresent() ? "!" : "", Style.BAD);
            frame.write(box.x() + NAME, y, frame.fit(row.felt(), box.width() - NAME), Style.FAINT);
        });
        list.paintPosition(frame, box, shown, "row");
        box.write(frame, box.y() + shown + 1, below, Style.TEXT);
        box.write(frame, box.y() + shown + 1 + below.size(), why, Style.BAD);
        box.write(frame, box.y() + shown + 1 + below.size() + why.size(), effect, Style.MESSAGE);
        Optional<String> enters = list.current()
                .map(row -> row.isService()
                        ? "Enter " + (unfolded.contains(row.service()) ? "hide" : "show") + " answers"
                        : owner == Owner.PLAN ? "Enter take it" : "");
        KEYS.hints(
                frame,
                box,
                Stream.of(enters.orElse(""), "i add one", "e edit", "x delete", "Esc close")
                        .filter(hint -> !hint.isEmpty())
                        .toArray(String[]::new));
    }

    /** A name in its column, of a verse with its label: "  Once in royal Dav\u2026 V5". */
    private static String fitted(Frame frame, String name) {
        int label = name.lastIndexOf(' ');
        return label < 0 || Text.columns(name) <= NAME - 2
                ? frame.fit(name, NAME - 2)
                : frame.fit(name.substring(0, label), NAME - 2 - Text.columns(name.substring(label)))
                        + name.substring(label);
    }

    private String title() {
        return "Usual registrations of " + organ.sound().organ().name();
    }
}
