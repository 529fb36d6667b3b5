package versewind.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import versewind.advice.Assessment;
import versewind.store.AssessmentJson;
import versewind.store.BadFile;
import versewind.store.Fingerprint;
import versewind.store.Library;
import versewind.store.OpenPlan;

/** {@code versewind assess PLAN}: how every verse of a plan stands. */
final class AssessCommand {

    static final String NAME = "assess";

    private AssessCommand() {}

    static CommandSpec spec() {
        CommandSpec spec = Options.command(
                NAME, "Estimates every verse of a plan: the organ, the singing, and whether the organ leads.");
        spec.addPositional(Options.operand("PLAN", "A plan's file, or its name among the plans."));
        spec.addOption(Options.json());
        return Options.withExitStatus(spec, "A verse wants attention.");
    }

    static Reply run(ParseResult typed, Library library, Lettering lettering) throws BadFile {
        OpenPlan open = library.openPlan(Options.operand(typed));
        Assessment assessment = Assessment.of(open.plan(), open.organ().sound());
        String results = typed.hasMatchedOption(Options.JSON)
                ? AssessmentJson.of(open.plan(), assessment)
                : AssessmentText.of(open.plan(), open.instrument(), assessment, lettering);
        int status = assessment.wantingAttention().isEmpty() ? Reply.GOOD : Reply.WANTS_ATTENTION;
        return new Reply(status, results, unsavedWork(open, "assessed"));
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
