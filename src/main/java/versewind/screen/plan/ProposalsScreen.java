package versewind.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.organ.RegistrationText;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.Verses;
import versewind.proposal.Proposal;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.Usual;
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
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.sheet.Wording;
import versewind.sound.Balance;
import versewind.sound.Dynamic;
import versewind.sound.Estimate;

/**
 * What is proposed for the current verse, over the plan: a list, and the one that is marked in full.
 *
 * @param list the best first, one at least
 */
public record ProposalsScreen(ListBox<Proposal> list) implements Listing<Proposal> {

    public static final KeyTable<ProposalsScreen> KEYS = KeyTable.<ProposalsScreen>under("Among the proposals")
            .list("proposal")
            .key("Enter", "take it for this verse", ProposalsScreen::take)
            .key(
                    "P",
                    "proposals for the whole hymn, or for the service",
                    (screen, state) -> state.onWork(work -> wider(state, work)))
            .key("T", "describe why, and all that it draws", ProposalsScreen::describe)
            .key("Esc, q", "close", (screen, state) -> state.close());

    private static final int WIDTH = 76;
    private static final int NUMBER = 2;

    /** From this height on it is told what speaks against a proposal. */
    private static final int TALL = 22;

    private static final int SHORT_WHY = 2;

    /** What was found for the current verse, and before it what is usual, where that is right here too. */
    public static ProposalsScreen of(PlanEdit work, RegistrationProposer.OfVerse found) {
        Verse verse = work.plan().verse(found.place());
        Optional<Proposal> usual =
                usual(work, verse).flatMap(each -> each.proposal(work.sound(), work.plan(), found.place()));
        return new ProposalsScreen(ListBox.of(found.after(usual).proposals()));
    }

    private static Optional<Usual> usual(PlanEdit work, Verse verse) {
        return work.organ()
                .experience()
                .nearest(verse, verse.people().orElse(work.plan().heading().people()))
                .map(heard -> new Usual(heard.name(), heard.registration(), heard.hands()));
    }

    /** Begins to search for the current verse; where nobody plays in it, asks for how many verses at once. */
    static State open(State state, PlanEdit work) {
        return !work.plan().verse(work.place()).isPlayed()
                ? wider(state, work)
                : state.open(new SearchScreen(0, 1)).wants(effects -> effects.proposeVerse(work.plan(), work.place()));
    }

    /** Asks whether to draw the whole service anew. */
    static State forService(State state, PlanEdit work) {
        return work.plan().places().isEmpty()
                ? state.says("No verses yet. Press I to add a hymn.")
                : asked(state, List.of(service(work, "Enter")));
    }

    /** Asks for how many verses, before they are drawn anew. */
    private static State wider(State state, PlanEdit work) {
        Plan plan = work.plan();
        int hymn = work.place().hymn();
        int verses = work.verses().size();
        Question.Answer ofHymn = new Question.Answer(
                "Enter",
                "proposals for this hymn: " + Verses.counted(work.verses().stream()),
                closed -> search(closed, plan, OptionalInt.of(hymn), verses));
        return asked(state, List.of(ofHymn, service(work, "P")));
    }

    private static State asked(State state, List<Question.Answer> answers) {
        return state.open(new Question(
                "Draw what is proposed, except what is locked? What is drawn there now is replaced.",
                Stream.concat(answers.stream(), Stream.of(Question.Answer.STAY)).toList()));
    }

    private static Question.Answer service(PlanEdit work, String key) {
        int verses = work.plan().places().size();
        return new Question.Answer(
                key,
                "proposals for the service: "
                        + Verses.counted(work.plan().places().stream().map(work.plan()::verse)),
                closed -> search(closed, work.plan(), OptionalInt.empty(), verses));
    }

    private static State search(State state, Plan plan, OptionalInt hymn, int verses) {
        State base = state.top() instanceof ProposalsScreen ? state.close() : state;
        return base.open(new SearchScreen(0, verses)).wants(effects -> effects.propose(plan, hymn));
    }

    private State take(State state) {
        return state.onWork(work -> {
            Verse verse = list.current().orElseThrow().on(work.plan(), work.place(), work.instrument());
            State after = PlanChanges.change(state.close(), work, verse);
            return after.work()
                    .filter(now -> !now.plan().equals(work.plan()))
                    .map(now -> after.says(taken(now, work.plan().verse(work.place()), verse)))
                    .orElse(after);
        });
    }

    /** "Taken for V1: fff, leads, 9 in 10 (u to undo). Now on piston G6.". */
    private static String taken(PlanEdit now, Verse before, Verse verse) {
        Estimate estimate = now.estimate(verse);
        String level = estimate.dynamic().map(Dynamic::word).orElse("silent");
        boolean isJudged = estimate.balance().kind() != Balance.Kind.ORGAN_ALONE;
        String piston = verse.piston().isBlank()
                ? " No longer on piston " + before.piston() + ": set it by hand."
                : " Now on piston " + verse.piston() + ".";
        return "Taken for " + verse.label() + ": " + level
                + (isJudged ? ", " + Wording.verdict(estimate.balance()) : "") + " (u to undo)."
                + (verse.piston().equals(before.piston()) ? "" : piston);
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public Screen marking(int row) {
        return new ProposalsScreen(list.mark(row));
    }

    /** What would be moved, and what comes of it. */
    @Override
    public String words(Proposal proposal, State state) {
        return state.work()
                .flatMap(work -> work.verse().map(verse -> {
                    Verse then = proposal.on(verse);
                    return MovesLine.instead(state, work, verse, then) + ": " + SpokenView.sound(work.estimate(then));
                }))
                .orElse("");
    }

    /** The keys too when it opens. */
    @Override
    public String spoken(State before, State now) {
        boolean isOpen = before.top() instanceof ProposalsScreen;
        return Listing.super.spoken(before, now)
                + (isOpen
                        ? ""
                        : " Enter takes it, P is for the hymn or the service, T says why and all that it draws.");
    }

    /** Why it is right, all that it draws and what speaks against it. */
    private State describe(State state) {
        Proposal proposal = list.current().orElseThrow();
        return state.onWork(work -> state.says(Stream.concat(
                        Stream.of(
                                proposal.why(),
                                "Draws " + new RegistrationText(work.instrument()).format(proposal.registration())
                                        + "."),
                        proposal.furtherRemarks().stream())
                .collect(Collectors.joining(" "))));
    }

    @Override
    public String name(State state) {
        return state.work().map(this::title).orElse("");
    }

    @Override
    public void paint(Frame frame, State state) {
        state.work().ifPresent(work -> paint(frame, state, work));
    }

    private void paint(Frame frame, State state, PlanEdit work) {
        List<String> full = full(frame, state, work, Math.min(WIDTH, frame.width() - 4));
        Box box = Box.open(frame, title(work), WIDTH, list.size() + 1 + full.size() + 2);
        list.paint(frame, box.rows(0, list.size()), row -> words(row, state), (proposal, index, y) -> {
            frame.write(box.x(), y, Integer.toString(index + 1), Style.STRONG);
            frame.write(box.x() + NUMBER, y, frame.fit(sound(proposal), box.width() - NUMBER), Style.TEXT);
        });
        list.paintPosition(frame, box, list.size(), "proposal");
        int room = Math.max(0, box.height() - 2 - list.size());
        box.write(frame, box.y() + list.size() + 1, full.subList(0, Math.min(full.size(), room)), Style.TEXT);
        KEYS.hints(frame, box, "Enter take it", "P more verses", "Esc");
    }

    /** How it sounds, beside the first of all where that is said. */
    private static String sound(Proposal proposal) {
        return proposal.unlike().isEmpty() ? proposal.sound() : proposal.unlike();
    }

    /** What to draw, why, and what speaks against it. */
    private List<String> full(Frame frame, State state, PlanEdit work, int columns) {
        Proposal proposal = list.current().orElseThrow();
        String hands = Wording.hands(work.instrument(), proposal.hands());
        List<String> lines = new ArrayList<>(Text.wrapped(
                new RegistrationText(work.instrument()).format(proposal.registration()) + "; " + hands, columns));
        work.verse()
                .filter(verse -> usual(work, verse).stream().noneMatch(each -> each.is(proposal)))
                .flatMap(verse -> UsualLine.of(work, proposal.on(verse)))
                .ifPresent(
                        usual -> lines.add(Text.fit(Text.capital(usual) + ".", columns, Mark.CUT.in(state.marks()))));
        List<String> why = Text.wrapped(proposal.why(), columns);
        boolean isLow = frame.height() < TALL;
        lines.addAll(isLow ? why.subList(0, Math.min(SHORT_WHY, why.size())) : why);
        if (!isLow) {
            proposal.furtherRemarks().forEach(remark -> lines.addAll(Text.wrapped("- " + remark, columns)));
        }
        return lines;
    }

    private String title(PlanEdit work) {
        long best = list.rows().stream().filter(each -> each.unlike().isEmpty()).count();
        return "Proposed for " + work.verse().map(Verse::label).orElse("")
                + (best > 1 ? ", your usual first" : ", the best first");
    }
}
