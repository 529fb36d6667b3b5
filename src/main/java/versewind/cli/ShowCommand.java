package versewind.cli;

import versewind.organ.NotationException;
import versewind.stoplist.TradeList;
import versewind.store.BadFile;

/** {@code versewind show}: the stop list of an instrument, as organ builders print it. */
final class ShowCommand {

    private ShowCommand() {}

    static Command command() {
        return Command.of(
                        Subcommand.SHOW,
                        "Prints the stop list of an instrument in the usual printed form, and below it what a list"
                                + " does not say: the room, trims, breaks. read-stops makes the same instrument from it"
                                + " again, but for usual registrations, feedback and readings.",
                        ShowCommand::run)
                .operand("INSTRUMENT", "Its name in the library, or a file: \"instruments/x.json\".")
                .statuses()
                .examples("versewind show st-tethwin > st-tethwin.txt");
    }

    private static Reply run(Typed typed, Commands commands) throws BadFile, NotationException {
        return Reply.utf8(TradeList.of(commands.library().openInstrument(typed.operand())));
    }
}
