package versewind.screen;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Everything the editor knows at one moment.
 *
 * @param columns width of the screen in cells
 * @param rows height of the screen in cells
 * @param marks the marks it is drawn with
 * @param today the day, for new plans
 * @param work the plan being worked on, if one is open
 * @param bench the organ being changed, over the plan, if one is
 * @param panel what lies over it
 * @param notice what was last said
 */
public record State(
        int columns,
        int rows,
        Marks marks,
        LocalDate today,
        Optional<PlanEdit> work,
        Optional<OrganEdit> bench,
        Panel panel,
        Notice notice) {

    /** An editor with nothing open yet. */
    public static State empty(int columns, int rows, Marks marks, LocalDate today) {
        return new State(
                columns, rows, marks, today, Optional.empty(), Optional.empty(), new Panel.None(), Notice.NONE);
    }

    State with(PlanEdit other) {
        return new State(columns, rows, marks, today, Optional.of(other), bench, panel, notice);
    }

    State with(Panel other) {
        return new State(columns, rows, marks, today, work, bench, other, notice);
    }

    State with(Notice other) {
        return new State(columns, rows, marks, today, work, bench, panel, other);
    }

    State sized(int otherColumns, int otherRows) {
        return new State(otherColumns, otherRows, marks, today, work, bench, panel, notice);
    }

    State with(Optional<OrganEdit> other) {
        return new State(columns, rows, marks, today, work, other, panel, notice);
    }

    /** With nothing over the plan. */
    State closed() {
        return with(new Panel.None());
    }

    /** Whether there is something that would be lost. */
    boolean isUnsaved() {
        return work.map(open -> open.history().isUnsaved()).orElse(false)
                || bench.map(open -> open.history().isUnsaved()).orElse(false);
    }

    /** What lies over the plan, behind a question if one is asked. */
    Panel behindQuestion() {
        return panel instanceof Panel.Question question ? question.under() : panel;
    }

    /** Where the next key is looked up. */
    Command.Where where() {
        if (panel instanceof Panel.Find) {
            return Command.Where.FIND;
        }
        if (panel instanceof Panel.Form) {
            return Command.Where.FORM;
        }
        if (panel instanceof Panel.Chooser) {
            return Command.Where.CHOOSER;
        }
        if (panel instanceof Panel.Library) {
            return Command.Where.LIBRARY;
        }
        if (panel instanceof Panel.Findings) {
            return Command.Where.FINDINGS;
        }
        if (panel instanceof Panel.Proposals) {
            return Command.Where.PROPOSALS;
        }
        if (panel instanceof Panel.Searching) {
            return Command.Where.SEARCH;
        }
        if (panel instanceof Panel.Help) {
            return Command.Where.HELP;
        }
        if (panel instanceof Panel.Readings) {
            return Command.Where.READINGS;
        }
        if (panel instanceof Panel.Desk) {
            return Command.Where.DESK;
        }
        if (panel instanceof Panel.Answers) {
            return Command.Where.ANSWERS;
        }
        if (panel instanceof Panel.Question) {
            return Command.Where.ANYWHERE;
        }
        if (panel instanceof Panel.StopText) {
            return Command.Where.STOP_TEXT;
        }
        if (bench.isPresent()) {
            return Command.Where.ORGAN;
        }
        boolean stops = work.map(open -> open.side() == PlanEdit.Side.STOPS).orElse(true);
        return stops ? Command.Where.STOPS : Command.Where.VERSES;
    }
}
