package versewind.screen.library;

import java.util.Optional;
import versewind.organ.Count;
import versewind.screen.toolkit.ShortWords;
import versewind.screen.toolkit.Style;

/**
 * The plans of a library in words.
 *
 * @param library where they lie
 */
record PlanWords(LibraryState library) {

    /** What is wrong with a plan, if anything is. */
    Optional<String> trouble(LibraryEvent.ListedPlan plan) {
        return library.assessed(plan).map(LibraryEvent.PlanAssessed::trouble).filter(trouble -> !trouble.isEmpty());
    }

    /** The file of a plan and its organ, and what was found in it. */
    String file(LibraryEvent.ListedPlan plan) {
        return "file " + plan.id() + ", organ " + plan.organ()
                + library.foundIn(plan).map(text -> "; has " + text).orElse("");
    }

    /** What is known of a plan, in a few words. */
    record Known(String words, Style style) {}

    Known known(LibraryEvent.ListedPlan plan) {
        boolean isBroken = plan.condition() == LibraryEvent.ListedPlan.Condition.UNREADABLE
                || trouble(plan).isPresent();
        if (isBroken) {
            return new Known("cannot be read", Style.BAD);
        }
        return plan.condition() == LibraryEvent.ListedPlan.Condition.UNSAVED_WORK
                ? new Known("unsaved changes", Style.NEAR)
                : library.assessed(plan).map(PlanWords::known).orElse(new Known("", Style.TEXT));
    }

    private static Known known(LibraryEvent.PlanAssessed assessed) {
        int wanting = assessed.wantingAttention();
        int cautions = assessed.cautions();
        if (assessed.verses() == 0) {
            return new Known("no verse yet", Style.FAINT);
        }
        if (wanting > 0) {
            return new Known(
                    wanting + (wanting == 1 ? " verse needs attention" : " verses need attention"), Style.NEAR);
        }
        return cautions > 0 ? new Known(Count.of(cautions, "caution"), Style.NEAR) : new Known("ready", Style.GOOD);
    }

    static String date(LibraryEvent.ListedPlan plan) {
        return plan.date().map(ShortWords::day).orElse("no date");
    }

    /** "Harvest Festival, Sun 4 Oct 2026, ready". */
    String words(LibraryEvent.ListedPlan plan) {
        String known = known(plan).words();
        return plan.title() + ", " + date(plan) + (known.isEmpty() ? "" : ", " + known);
    }

    /** The organ of a plan, where another one has the same title and day. */
    Optional<String> organ(LibraryEvent.ListedPlan plan) {
        boolean isOne = library.plans().stream()
                        .filter(each ->
                                each.title().equals(plan.title()) && each.date().equals(plan.date()))
                        .count()
                == 1;
        return isOne ? Optional.empty() : Optional.of(plan.organ());
    }
}
