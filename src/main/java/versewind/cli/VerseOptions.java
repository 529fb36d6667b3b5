package versewind.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.organ.Quoted;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.store.Fingerprint;
import versewind.store.OpenPlan;

/**
 * The options that name a hymn of a plan, and a verse of it.
 *
 * @param typed the options typed
 * @param plan the plan
 */
record VerseOptions(Typed typed, Plan plan) {

    static final String HYMN = "--hymn";
    static final String VERSE = "--verse";

    /** A command with these options. */
    static Command addTo(Command command) {
        return command.option(
                        HYMN, "N", "Only this hymn: its place in the plan, counted from 1, or its number in the book.")
                .option(
                        VERSE,
                        "V",
                        "Only this verse of the hymn: its label, like V2 or Last, or its place in the hymn, counted"
                                + " from 1. With the hymn before it, as in 211/V2, " + HYMN + " is not needed.");
    }

    /**
     * Refuses to write to a plan that was read from elsewhere than a file, or on which there is unsaved work.
     *
     * @param otherwise what else can be done: ", or leave out --write", or nothing
     */
    static void refuseWhereUnsafe(OpenPlan open, String otherwise) throws UsageException {
        if (open.draft().isPresent()) {
            throw new UsageException(open.path() + " has unsaved work. Restore or discard it first, with versewind "
                    + WrittenOver.word(open.path()) + otherwise + ".");
        }
        if (open.fingerprint().equals(Fingerprint.NO_FILE)) {
            throw new UsageException(
                    "A plan from the standard input has no file to write to. Name a plan's file" + otherwise + ".");
        }
    }

    /** The index of the hymn, if one was named. */
    Optional<Integer> hymn() throws UsageException {
        return typed.has(HYMN) ? Optional.of(hymn(typed.value(HYMN).orElse("").strip())) : Optional.empty();
    }

    private int hymn(String wanted) throws UsageException {
        List<Hymn> hymns = plan.hymns();
        Optional<Integer> place = place(wanted, hymns.size());
        Optional<Integer> found = place.isPresent()
                ? place
                : only(wanted, hymns.stream().map(Hymn::number).toList(), HYMN, "The plan");
        if (found.isEmpty()) {
            throw new UsageException("The plan has no hymn \"" + wanted + "\". It has "
                    + (hymns.isEmpty() ? "none." : "the hymns " + numbers(hymns) + "."));
        }
        return found.get();
    }

    /** The hymn or the verse that was named, or all. */
    PartOfPlan part() throws UsageException {
        Optional<Integer> hymn = hymn();
        return new PartOfPlan(hymn, verse(hymn));
    }

    /** The names by which hymns can be asked for: the number in the book, or else the place in the plan. */
    private static String numbers(List<Hymn> hymns) {
        return IntStream.range(0, hymns.size())
                .mapToObj(each -> hymns.get(each).number().isBlank()
                        ? (each + 1) + " (without a number)"
                        : hymns.get(each).number())
                .collect(Collectors.joining(", "));
    }

    /** The verse, if one was named. */
    Optional<VersePlace> verse(Optional<Integer> hymn) throws UsageException {
        if (!typed.has(VERSE)) {
            return Optional.empty();
        }
        String text = typed.value(VERSE).orElse("").strip();
        int slash = text.indexOf('/');
        if (hymn.isEmpty() && slash > 0) {
            return Optional.of(verse(
                    hymn(text.substring(0, slash).strip()),
                    text.substring(slash + 1).strip()));
        }
        if (hymn.isEmpty() && plan.hymns().size() != 1) {
            throw new UsageException(VERSE + " needs " + HYMN + ", because the plan has "
                    + plan.hymns().size() + " hymns.");
        }
        return Optional.of(verse(hymn.orElse(0), text));
    }

    private VersePlace verse(int of, String wanted) throws UsageException {
        List<String> labels =
                plan.hymns().get(of).verses().stream().map(Verse::label).toList();
        Optional<Integer> labelled = only(wanted, labels, VERSE, "The hymn");
        int verse = labelled.or(() -> place(wanted, labels.size()))
                .orElseThrow(() -> new UsageException("The hymn has no verse \"" + wanted + "\". It has "
                        + (labels.isEmpty() ? "none." : String.join(", ", labels) + ".")));
        return new VersePlace(of, verse);
    }

    /** The index of a place that is counted from 1. */
    private static Optional<Integer> place(String wanted, int size) {
        return wanted.matches("[0-9]{1,4}")
                ? Optional.of(Integer.parseInt(wanted) - 1).filter(index -> index >= 0 && index < size)
                : Optional.empty();
    }

    /** The index of a label; refused where several have it, since none of them is surely wanted. */
    private static Optional<Integer> only(String wanted, List<String> labels, String option, String whole)
            throws UsageException {
        List<Integer> all = IntStream.range(0, labels.size())
                .boxed()
                .filter(each -> !wanted.isEmpty() && labels.get(each).equalsIgnoreCase(wanted))
                .toList();
        if (all.size() > 1) {
            List<String> places =
                    all.stream().map(each -> option + " " + (each + 1)).toList();
            throw new UsageException(whole + " has " + Quoted.text(labels.get(all.get(0))) + " " + all.size()
                    + " times. Name the place instead: " + String.join(" or ", places) + ".");
        }
        return all.stream().findFirst();
    }
}
