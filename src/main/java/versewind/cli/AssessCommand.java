package versewind.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import versewind.organ.NotationException;
import versewind.plan.Verse;
import versewind.rules.Advice;
import versewind.rules.Assessment;
import versewind.rules.Attendance;
import versewind.rules.NoiseExposure;
import versewind.sound.EarSeats;
import versewind.sound.OrganSound;
import versewind.store.AssessmentJson;
import versewind.store.BadFile;
import versewind.store.Fingerprint;
import versewind.store.OpenPlan;

/** {@code versewind assess PLAN}: how every verse of a plan stands. */
final class AssessCommand {

    static final String NAME = "assess";

    private static final String PEOPLE = "--people";
    private static final String HEARD = "--heard";
    private static final int MOST_NUMBERS = 12;

    private AssessCommand() {}

    static CommandSpec spec() {
        CommandSpec spec = Options.command(
                NAME, "Estimates every verse of a plan: the organ, the singing, and whether the organ leads.");
        spec.addPositional(Options.operand("PLAN", Options.PLAN + " " + Options.OR_INPUT));
        spec.addOption(Options.valued(
                PEOPLE,
                "N,N,...",
                "Numbers of people, like 40,180,500: shows how levels, margin and verdict move as the church fills."));
        spec.addOption(heard());
        spec.addOption(Options.json());
        return Options.withExitStatus(spec, "A verse wants attention.");
    }

    static Reply run(ParseResult typed, Commands commands) throws BadFile, NotationException {
        OpenPlan open = commands.plan(Options.operand(typed));
        CharsetFallback lettering = commands.lettering();
        OrganSound sound =
                typed.hasMatchedOption(HEARD) ? heeding(open) : open.organ().sound();
        return typed.hasMatchedOption(PEOPLE)
                ? attended(typed, open, sound, lettering)
                : expected(typed, open, sound, lettering);
    }

    private static OrganSound heeding(OpenPlan open) throws NotationException {
        if (open.plan().answered().isEmpty()) {
            throw new UsageException("Of no verse of this plan was it said how it was heard, so there is nothing that "
                    + HEARD + " could take into account.");
        }
        return open.organ().sound().heeding(open.plan());
    }

    private static OptionSpec heard() {
        return Options.flag(
                        "Takes into account what was said of the verses after the service: too soft, right, too"
                                + " strong.",
                        HEARD)
                .build();
    }

    private static Reply expected(ParseResult typed, OpenPlan open, OrganSound sound, CharsetFallback lettering) {
        Assessment assessment = Assessment.of(open.plan(), sound);
        NoiseExposure ears = NoiseExposure.of(open.plan(), assessment, new EarSeats(sound));
        String results = typed.hasMatchedOption(Options.JSON)
                ? AssessmentJson.of(open.plan(), assessment, ears, Advice.on(sound))
                : AssessmentText.of(open, assessment, ears, Advice.on(sound), lettering);
        int status = assessment.wantingAttention().isEmpty() ? Reply.GOOD : Reply.WANTS_ATTENTION;
        return new Reply(status, results, unsavedWork(open, "assessed"));
    }

    private static Reply attended(ParseResult typed, OpenPlan open, OrganSound sound, CharsetFallback lettering)
            throws NotationException {
        Attendance attendance = Attendance.of(open.plan(), sound, numbers(typed.matchedOptionValue(PEOPLE, "")));
        String results = typed.hasMatchedOption(Options.JSON)
                ? AssessmentJson.of(open.plan(), attendance)
                : AttendanceText.of(open.plan(), open.instrument(), attendance, lettering);
        return new Reply(
                attendance.wantsAttention() ? Reply.WANTS_ATTENTION : Reply.GOOD,
                results,
                unsavedWork(open, "assessed"));
    }

    private static List<Integer> numbers(String typed) throws NotationException {
        List<Integer> numbers = new ArrayList<>();
        for (String number : typed.split(",", -1)) {
            numbers.add(Options.whole(PEOPLE, number.strip(), 1, Verse.MOST_PEOPLE));
        }
        if (numbers.size() > MOST_NUMBERS) {
            throw new UsageException(PEOPLE + " takes " + MOST_NUMBERS + " numbers at most.");
        }
        return numbers;
    }

    /** That a plan has unsaved work, which is not taken into account. */
    static String unsavedWork(OpenPlan open, String done) {
        boolean isTheDraftItself = open.fingerprint().equals(Fingerprint.NO_FILE);
        return open.draft().isEmpty() || isTheDraftItself
                ? ""
                : "versewind: Unsaved work on this plan is kept beside its file and is not " + done
                        + ". Open the plan to" + " take it up.\n";
    }
}
