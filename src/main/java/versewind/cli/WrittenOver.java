package versewind.cli;

import java.nio.file.Path;
import java.util.stream.Collectors;
import versewind.organ.NotationException;
import versewind.plan.Plan;
import versewind.store.BadFile;
import versewind.store.Fingerprint;
import versewind.store.OpenOrgan;
import versewind.store.OpenPlan;

/** What is said after a file was written over: how to get back what it held, and who has it open. */
final class WrittenOver {

    private WrittenOver() {}

    /** Of a plan. */
    static String plan(OpenPlan before, Commands commands) throws BadFile, NotationException {
        return restore(before.path(), before.fingerprint(), commands) + openElsewhere(before, commands);
    }

    /** Of an organ, whose version before was kept with {@code Library.keepVersion}. */
    static String organ(OpenOrgan before, Commands commands) throws BadFile, NotationException {
        return restore(before.path(), before.fingerprint(), commands);
    }

    private static String restore(Path file, Fingerprint held, Commands commands) throws BadFile, NotationException {
        return commands.library()
                .keptVersion(file, held)
                .map(version -> restore(version, file))
                .orElse(Reply.line("The previous version could not be kept."));
    }

    /** How to get back a copy of what a file held. */
    static String restore(Path copy, Path file) {
        return Reply.line("The previous version is " + copy + ". To restore it: cp " + word(copy) + " " + word(file));
    }

    /** Who has a plan open now, whose program merges what was written with what is edited there. */
    static String openElsewhere(OpenPlan open, Commands commands) throws BadFile, NotationException {
        return commands.library().others(open).stream()
                .map(other -> Reply.line(other.sentence() + ". There it is merged when the plan is saved next."))
                .collect(Collectors.joining());
    }

    /** The feedback that belonged to what is no longer drawn, or sung. */
    static String feedback(Plan before, Plan after) {
        String lost = ReportFields.names(
                before,
                before.places().stream()
                        .filter(place -> before.verse(place).answer().isPresent()
                                && after.verse(place).answer().isEmpty()));
        return lost.isEmpty() ? "" : Reply.line("The feedback went with what it was given for: " + lost + ".");
    }

    /** A path as a word for a POSIX shell. */
    static String word(Path path) {
        return word(path.toString());
    }

    /** A name as a word for a POSIX shell. */
    static String word(String name) {
        return name.matches("[A-Za-z0-9_./:~+,@%-]+") ? name : "'" + name.replace("'", "'\\''") + "'";
    }
}
