package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import versewind.organ.RegistrationText;
import versewind.plan.HandsAndFeet;
import versewind.plan.Plan;
import versewind.proposal.Proposal;
import versewind.proposal.ScorePart;
import versewind.rules.StopChanges;

/**
 * What is proposed for the current verse, over the plan: a list, and the one that is marked in full.
 *
 * @param list the best first, one at least
 */
record ProposalsScreen(ListBox<Proposal> list) implements Screen {

    static final KeyTable<ProposalsScreen> KEYS = KeyTable.<ProposalsScreen>under("Among the proposals")
            .list("proposal", (screen, by) -> new ProposalsScreen(screen.list.move(by)))
            .key("Enter", "draw", ProposalsScreen::take)
            .key(
                    "h",
                    "for the whole hymn",
                    (screen, state) -> state.onWork(work ->
                            search(state, work, OptionalInt.of(work.place().hymn()))))
            .key(
                    "s",
                    "for the service",
                    (screen, state) -> state.onWork(work -> search(state, work, OptionalInt.empty())))
            .key("Esc, P, q", "close", (screen, state) -> state.close());

    private static final int WIDTH = 76;
    private static final int POINTS = 6;
    private static final double WORTH_A_WORD = 0.05;

    /** Rows of a screen that neither list nor proposal take: two of the heading, rules, a blank one, keys. */
    private static final int FRAME_ROWS = 7;

    /** From this height on the reasons of the parts are told. */
    private static final int TALL = 22;

    private static final int SHORT_WHY = 2;

    /** Up to this many differences from the best proposal are listed; beyond that its own reason is shown. */
    private static final int MOST_DIFFERENCES = 4;

    /** Begins to search for the current verse. */
    static State open(State state, PlanEdit work) {
        return state.open(new SearchScreen(0, 1))
                .wants(effects -> effects.proposeVerse(work.plan(), work.place(), work.heard()));
    }

    private static State search(State state, PlanEdit work, OptionalInt hymn) {
        Plan plan = work.plan();
        int verses = hymn.isPresent()
                ? plan.hymns().get(hymn.getAsInt()).verses().size()
                : plan.hymns().stream().mapToInt(each -> each.verses().size()).sum();
        return state.show(new SearchScreen(0, verses)).wants(effects -> effects.propose(plan, hymn, work.heard()));
    }

    private State take(State state) {
        return state.onWork(work -> PlanChanges.change(
                state.close(), work, list.current().orElseThrow().on(work.plan(), work.place(), work.instrument())));
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public void paint(Frame frame, State state) {
        state.work().ifPresent(work -> paint(frame, state, work));
    }

    private void paint(Frame frame, State state, PlanEdit work) {
        List<String> full = full(frame, work, Math.min(WIDTH, frame.width() - 4));
        String title = "Proposed for " + work.verse().orElseThrow().label() + ", lower is better";
        Box box = Box.open(frame, title, WIDTH, list.size() + 1 + full.size() + 2);
        list.paint(frame, box.rows(0, list.size()), (proposal, index, y) -> {
            frame.write(box.x(), y, points(proposal.score().points()), Style.STRONG);
            String row = frame.fit(row(state, work, index), box.width() - POINTS);
            frame.write(box.x() + POINTS, y, row, Style.TEXT);
        });
        int room = Math.max(0, box.height() - 2 - list.size());
        box.write(frame, box.y() + list.size() + 1, full.subList(0, Math.min(full.size(), room)), Style.TEXT);
        KEYS.hints(frame, box, "Enter", "h", "s", "Esc");
    }

    /** Why the first is the best; of the others, where they are much like it, how they differ from it. */
    private String row(State state, PlanEdit work, int row) {
        Proposal best = list.rows().get(0);
        Proposal proposal = list.rows().get(row);
        StopChanges moves = StopChanges.between(best.registration(), proposal.registration());
        boolean isLike = row > 0 && proposal.hands().equals(best.hands()) && moves.count() <= MOST_DIFFERENCES;
        return isLike
                ? "as no. 1, but "
                        + MovesLine.between(state, work.instrument(), best.registration(), proposal.registration())
                : proposal.why();
    }

    private static String points(double points) {
        return String.format(Locale.ROOT, "%5.2f", points);
    }

    /** What to draw, why, and the score taken apart. */
    private List<String> full(Frame frame, PlanEdit work, int columns) {
        Proposal proposal = list.current().orElseThrow();
        String hands = hands(work, proposal.hands());
        List<String> lines = new ArrayList<>(Text.wrapped(
                new RegistrationText(work.instrument()).format(proposal.registration()) + "; " + hands, columns));
        List<String> why = Text.wrapped(proposal.why(), columns);
        lines.addAll(frame.height() < TALL ? why.subList(0, Math.min(SHORT_WHY, why.size())) : why);
        List<ScorePart> parts = proposal.score().parts().stream()
                .filter(part -> part.points() >= WORTH_A_WORD)
                .toList();
        if (frame.height() < TALL) {
            lines.addAll(Text.wrapped(
                    parts.stream()
                            .map(part -> part.kind().word() + " "
                                    + points(part.points()).strip())
                            .collect(Collectors.joining(", ")),
                    columns));
            return lines;
        }
        List<String> wrapped =
                parts.stream().flatMap(part -> told(part, columns).stream()).toList();
        boolean fits = list.size() + lines.size() + wrapped.size() + FRAME_ROWS <= frame.height();
        lines.addAll(
                fits
                        ? wrapped
                        : parts.stream()
                                .map(part -> frame.fit(head(part) + part.sentence(), columns))
                                .toList());
        return lines;
    }

    private static String head(ScorePart part) {
        return String.format(
                Locale.ROOT, "%s %-10s", points(part.points()), part.kind().word());
    }

    /** A part and its sentence, which goes on under itself. */
    private static List<String> told(ScorePart part, int columns) {
        String head = head(part);
        List<String> sentence = Text.wrapped(part.sentence(), columns - head.length());
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < sentence.size(); i++) {
            lines.add((i == 0 ? head : " ".repeat(head.length())) + sentence.get(i));
        }
        return lines;
    }

    private static String hands(PlanEdit work, HandsAndFeet hands) {
        String right = work.instrument().divisions().get(hands.right()).name();
        String left = work.instrument().divisions().get(hands.left()).name();
        return hands.layout().word() + (right.equals(left) ? " on " + right : ", right " + right + ", left " + left);
    }
}
