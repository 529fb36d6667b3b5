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
        return kept(before.path(), before.fingerprint(), commands, "Ctrl-V in the library restores it")
                + openElsewhere(before, commands);
    }

    /** Of an organ, whose version before was kept with {@code Library.keepVersion}. */
    static String organ(OpenOrgan before, Commands commands) throws BadFile, NotationException {
        return kept(before.path(), before.fingerprint(), commands, "");
    }

    /** In a short line: that it is kept, and how to get it back, or where it lies. */
    private static String kept(Path file, Fingerprint held, Commands commands, String back)
            throws BadFile, NotationException {
        return commands.library()
                .keptVersion(file, held)
                .map(version -> kept(back.isEmpty() ? "beside it, " + ends(version, 3) : back))
                .orElse(Reply.line("The version before could not be kept."));
    }

    /** Of a copy in the bin. */
    static String binned(Path copy) {
        return kept(ends(copy, 2));
    }

    private static String kept(String where) {
        return Reply.line("The version before is kept: " + where + ".");
    }

    /** The end of a path. */
    private static String ends(Path path, int names) {
        return path.subpath(Math.max(0, path.getNameCount() - names), path.getNameCount())
                .toString();
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
