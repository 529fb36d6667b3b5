package versewind.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import versewind.organ.NotationException;
import versewind.store.BadFile;
import versewind.store.OpenPlan;
import versewind.store.PlanCsv;

/** {@code versewind export PLAN --csv}: a plan for a spreadsheet. */
final class ExportCommand {

    static final String NAME = "export";

    private static final String CSV = "--csv";

    private ExportCommand() {}

    static CommandSpec spec() {
        CommandSpec spec = Options.command(
                NAME, "Writes a plan as a spreadsheet, a row a verse, from which import makes the same plan again.");
        spec.addPositional(Options.operand("PLAN", Options.PLAN + " " + Options.OR_INPUT));
        spec.addOption(Options.flag("As comma-separated values in UTF-8; no cell of it is taken for a formula.", CSV)
                .required(true)
                .build());
        return Options.withExitStatus(spec);
    }

    static Reply run(ParseResult typed, Commands commands) throws BadFile, NotationException {
        OpenPlan open = commands.plan(Options.operand(typed));
        return new Reply(Reply.GOOD, PlanCsv.of(open.plan(), open.instrument()), "", Reply.Letters.UTF_8);
    }
}
