package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import versewind.organ.Drawing;
import versewind.plan.HandsAndFeet;
import versewind.proposal.Proposal;
import versewind.proposal.ScorePart;

/** What is proposed for a verse, over the plan: a list, and the one that is marked in full; and a search that goes on. */
final class ProposalsView {

    private static final int WIDTH = 76;
    private static final int POINTS = 6;
    private static final double WORTH_A_WORD = 0.05;

    /** From this height on the reasons of the parts are told. */
    private static final int TALL = 22;

    private static final int SHORT_WHY = 2;

    private ProposalsView() {}

    static void paint(Frame frame, State state, Panel.Proposals panel) {
        if (state.work().isEmpty()) {
            return;
        }
        Work work = state.work().get();
        int width = Math.min(WIDTH, frame.width() - 4);
        List<String> full = full(frame, work, panel.rows().get(panel.at()), width);
        int list = panel.rows().size();
        Box box = Box.open(frame, state, title(work), WIDTH, list + 1 + full.size() + 2);
        for (int row = 0; row < list; row++) {
            Proposal proposal = panel.rows().get(row);
            frame.write(box.x(), box.y() + row, points(proposal.score().points()), Style.STRONG);
            frame.write(
                    box.x() + POINTS,
                    box.y() + row,
                    Text.fit(proposal.why(), box.width() - POINTS, state.marks().cut()),
                    Style.TEXT);
        }
        frame.paint(box.x(), box.y() + panel.at(), box.width(), Style.CURSOR);
        int last = box.y() + box.height() - 1;
        int from = box.y() + list + 1;
        for (int i = 0; i < full.size() && from + i < last; i++) {
            frame.write(box.x(), from + i, full.get(i), Style.TEXT);
        }
        FormView.paintKeys(
                frame,
                box.x(),
                last,
                box.end(),
                Command.TAKE_PROPOSAL,
                Command.PROPOSE_HYMN,
                Command.PROPOSE_SERVICE,
                Command.CLOSE_PROPOSALS);
    }

    private static String title(Work work) {
        return "Proposed for " + work.verse().orElseThrow().label() + ", the lower the better";
    }

    private static String points(double points) {
        return String.format(Locale.ROOT, "%5.2f", points);
    }

    /** What to draw, why, and the score taken apart. */
    private static List<String> full(Frame frame, Work work, Proposal proposal, int columns) {
        String hands = hands(work, proposal.hands());
        List<String> lines = new ArrayList<>(
                Text.wrapped(Drawing.typed(work.instrument(), proposal.registration()) + "; " + hands, columns));
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
        for (ScorePart part : parts) {
            String head = String.format(
                    Locale.ROOT, "%s %-10s", points(part.points()), part.kind().word());
            lines.add(Text.fit(head + part.sentence(), columns, "~"));
        }
        return lines;
    }

    private static String hands(Work work, HandsAndFeet hands) {
        String right = work.instrument().divisions().get(hands.right()).name();
        String left = work.instrument().divisions().get(hands.left()).name();
        return hands.layout().word() + (right.equals(left) ? " on " + right : ", right " + right + ", left " + left);
    }

    static void paint(Frame frame, State state, Panel.Searching panel) {
        Box box = Box.open(frame, state, "Searching", WIDTH, 4);
        frame.write(
                box.x(),
                box.y() + 1,
                panel.verses() + " of " + panel.of() + (panel.of() == 1 ? " verse is" : " verses are") + " searched.",
                Style.TEXT);
        FormView.paintKeys(frame, box.x(), box.y() + box.height() - 1, box.end(), Command.STOP_SEARCH);
    }
}
