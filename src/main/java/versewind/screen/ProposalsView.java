package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import versewind.organ.RegistrationText;
import versewind.plan.HandsAndFeet;
import versewind.proposal.Proposal;
import versewind.proposal.ScorePart;
import versewind.rules.StopChanges;

/** What is proposed for a verse, over the plan: a list, and the one that is marked in full; and a search that goes on. */
final class ProposalsView {

    private static final int WIDTH = 76;
    private static final int POINTS = 6;
    private static final double WORTH_A_WORD = 0.05;

    /** Rows of a screen that neither list nor proposal take: two of the heading, rules, a blank one, keys. */
    private static final int FRAME_ROWS = 7;

    /** From this height on the reasons of the parts are told. */
    private static final int TALL = 22;

    private static final int SHORT_WHY = 2;

    /** With so many movements from the first a proposal is told by them, with more by its own sentence. */
    private static final int MOST_DIFFERENCES = 4;

    private ProposalsView() {}

    static void paint(Frame frame, State state, Panel.Proposals panel) {
        if (state.work().isEmpty()) {
            return;
        }
        PlanEdit work = state.work().get();
        int width = Math.min(WIDTH, frame.width() - 4);
        int list = panel.rows().size();
        List<String> full = full(frame, state, work, panel.rows().get(panel.at()), width, list);
        Box box = Box.open(frame, title(work), WIDTH, list + 1 + full.size() + 2);
        for (int row = 0; row < list; row++) {
            Proposal proposal = panel.rows().get(row);
            frame.write(box.x(), box.y() + row, points(proposal.score().points()), Style.STRONG);
            frame.write(
                    box.x() + POINTS,
                    box.y() + row,
                    Text.fit(
                            row(state, work, panel.rows(), row),
                            box.width() - POINTS,
                            state.marks().cut()),
                    Style.TEXT);
        }
        frame.paint(box.x(), box.y() + panel.at(), box.width(), Style.CURSOR);
        int last = box.y() + box.height() - 1;
        int from = box.y() + list + 1;
        for (int i = 0; i < full.size() && from + i < last; i++) {
            frame.write(box.x(), from + i, full.get(i), Style.TEXT);
        }
        KeyRow.paint(
                frame,
                box.x(),
                last,
                box.end(),
                Command.TAKE_PROPOSAL,
                Command.PROPOSE_HYMN,
                Command.PROPOSE_SERVICE,
                Command.CLOSE_PROPOSALS);
    }

    /** Why the first is the best; of the others, where they are much like it, how they differ from it. */
    private static String row(State state, PlanEdit work, List<Proposal> rows, int row) {
        Proposal best = rows.get(0);
        Proposal proposal = rows.get(row);
        StopChanges moves = StopChanges.between(best.registration(), proposal.registration());
        boolean isLike = row > 0 && proposal.hands().equals(best.hands()) && moves.count() <= MOST_DIFFERENCES;
        return isLike
                ? "the first, but "
                        + MovesLine.between(state, work.instrument(), best.registration(), proposal.registration())
                : proposal.why();
    }

    private static String title(PlanEdit work) {
        return "Proposed for " + work.verse().orElseThrow().label() + ", the lower the better";
    }

    private static String points(double points) {
        return String.format(Locale.ROOT, "%5.2f", points);
    }

    /** What to draw, why, and the score taken apart. */
    private static List<String> full(
            Frame frame, State state, PlanEdit work, Proposal proposal, int columns, int list) {
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
        boolean fits = list + lines.size() + wrapped.size() + FRAME_ROWS <= frame.height();
        lines.addAll(
                fits
                        ? wrapped
                        : parts.stream()
                                .map(part -> Text.fit(
                                        head(part) + part.sentence(),
                                        columns,
                                        state.marks().cut()))
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

    static void paint(Frame frame, State state, Panel.Searching panel) {
        Box box = Box.open(frame, "Searching", WIDTH, 4);
        frame.write(
                box.x(),
                box.y() + 1,
                panel.verses() + " of " + panel.of() + (panel.of() == 1 ? " verse is" : " verses are") + " searched.",
                Style.TEXT);
        KeyRow.paint(frame, box.x(), box.y() + box.height() - 1, box.end(), Command.STOP_SEARCH);
    }
}
