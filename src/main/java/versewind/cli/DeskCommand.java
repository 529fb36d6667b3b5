package versewind.cli;

/** {@code versewind desk PLAN}: a service verse by verse in large type, to play from. */
final class DeskCommand {

    private DeskCommand() {}

    static Command command() {
        return Command.of(
                        Subcommand.DESK,
                        "Shows a service verse by verse on the full screen, to play from; afterwards it asks how the"
                                + " organ was in each verse. Only the answers are written to the plan.",
                        (typed, commands) -> commands.desk(typed.operand()))
                .operand("PLAN", "The plan to play from: its file, or its name among the plans.")
                .fullScreen()
                .examples("versewind desk harvest-festival");
    }
}
