package versewind.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.workshop.TradeList;

/** {@code versewind show}: the stop list of an instrument, as the trade prints it. */
final class ShowCommand {

    static final String NAME = "show";

    private ShowCommand() {}

    static CommandSpec spec() {
        CommandSpec spec = Options.command(
                NAME,
                "Prints the stop list of an instrument the trade's way, and below it what a list cannot tell: the"
                        + " room, trims, breaks. read-stops makes the same instrument of it again.");
        spec.addPositional(
                Options.operand("INSTRUMENT", "Its name in the library, or a file: \"instruments/x.json\"."));
        return Options.withExitStatus(spec);
    }

    static Reply run(ParseResult typed, Library library) throws BadFile {
        String text = TradeList.of(library.openInstrument(Options.operand(typed)));
        return new Reply(Reply.GOOD, text, "", Reply.Letters.UTF_8);
    }
}
