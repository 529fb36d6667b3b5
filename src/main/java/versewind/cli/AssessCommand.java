package versewind.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.organ.NotationException;
import versewind.plan.Verse;
import versewind.rules.Attendance;
import versewind.schema.KnownOrgan;
import versewind.store.BadFile;
import versewind.store.Fingerprint;
import versewind.store.OpenPlan;

/** {@code versewind assess PLAN}: how every verse of a plan sounds. */
final class AssessCommand {

    private static final String PEOPLE = "--people";
    private static final String VERBOSE = "-v";
    private static final String HEARD = "--heard";
    private static final int MOST_NUMBERS = 12;

    private AssessCommand() {}

    static Command command() {
        return VerseOptions.addTo(Command.of(
                                Subcommand.ASSESS,
                                "Estimates every verse of a plan: the organ, the singing, and whether the organ leads.",
                                AssessCommand::run)
                        .operand("PLAN", Command.PLAN + " " + Command.OR_INPUT))
                .option(
                        PEOPLE,
                        "N,N,...",
                        "Numbers of people, such as 40,180,500: shows how levels, shares and verdicts change as the"
                                + " church fills.")
                .flag(HEARD, "Uses the feedback recorded after the service: too soft, right, too strong.")
                .flag(VERBOSE, "Shows the levels in dB(A), sone and phon too, and what they mean for the ears.")
                .spoken("For a screen reader: a sentence a verse.")
                .json()
                .statuses("A verse needs attention.")
                .examples(
                        "versewind assess harvest-festival",
                        "versewind assess harvest-festival --verse 211/V2 --people 40,180,500");
    }

    private static Reply run(Typed typed, Commands commands) throws BadFile, NotationException {
        OpenPlan open = commands.plan(typed.operand());
        KnownOrgan organ = typed.has(HEARD) ? withFeedback(open) : open.organ();
        String words = unsavedWork(open, "assessed");
        PartOfPlan part = new VerseOptions(typed, open.plan()).part();
        Optional<String> people = typed.value(PEOPLE);
        if (people.isEmpty()) {
            AssessmentReport report = typed.has(VERBOSE)
                    ? AssessmentReport.withLevels(open, part, organ.calibrated())
                    : AssessmentReport.of(open, part, organ.sound());
            String told = commands.isSpoken(typed)
                    ? commands.shown(
                            typed,
                            new SpokenAssessment(report),
                            Page.asWideAs(OptionalInt.empty(), commands.letters())) // a line for a sentence
                    : commands.shown(typed, report);
            return new Reply(status(report.wantsAttention()), told, words);
        }
        Attendance attendance = Attendance.of(open.plan(), organ.sound(), numbers(people.get()));
        AttendanceReport report = new AttendanceReport(open, part, attendance);
        return new Reply(status(report.wantsAttention()), commands.shown(typed, report), words);
    }

    private static int status(boolean wantsAttention) {
        return wantsAttention ? Reply.WANTS_ATTENTION : Reply.GOOD;
    }

    private static KnownOrgan withFeedback(OpenPlan open) throws UsageException {
        if (open.plan().answered().isEmpty()) {
            throw new UsageException("No feedback is recorded in this plan, so " + HEARD + " has nothing to use.");
        }
        return open.organ().with(open.organ().experience().keepingAnswers(open.plan()));
    }

    private static List<Integer> numbers(String typed) throws UsageException {
        List<Integer> numbers = new ArrayList<>();
        for (String number : typed.split(",", -1)) {
            numbers.add(Typed.whole(PEOPLE, number.strip(), 1, Verse.MOST_PEOPLE));
        }
        if (numbers.size() > MOST_NUMBERS) {
            throw new UsageException("Enter at most " + MOST_NUMBERS + " numbers for " + PEOPLE + ".");
        }
        return numbers;
    }

    /** A warning that a plan has unsaved work, which is left out. */
    static String unsavedWork(OpenPlan open, String done) {
        boolean isTheDraftItself = open.fingerprint().equals(Fingerprint.NO_FILE);
        return open.draft().isEmpty() || isTheDraftItself
                ? ""
                : Reply.line(open.path() + " has unsaved work, which is not " + done + ". To restore it: versewind "
                        + WrittenOver.word(open.path()));
    }
}
