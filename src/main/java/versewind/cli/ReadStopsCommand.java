package versewind.cli;

import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import versewind.organ.NotationException;
import versewind.stoplist.NewInstrument;
import versewind.stoplist.ReadOrgan;
import versewind.stoplist.StopList;
import versewind.store.BadFile;

/** {@code versewind read-stops FILE}: turns a published stop list into an instrument. */
final class ReadStopsCommand {

    private static final String CALLED = "--name";
    private static final String OUT = "--out";
    private static final String ENDING = ".json";
    private static final Pattern FOLDERS_AND_ENDING = Pattern.compile("^.*[/\\\\]|\\.[A-Za-z]{1,4}$");

    private ReadStopsCommand() {}

    static Command command() {
        return Command.of(
                        Subcommand.READ_STOPS,
                        "Reads a published stop list in English, German, French, Dutch, Italian, Spanish, Portuguese,"
                                + " Catalan, Polish, Czech or a Scandinavian language, and makes an instrument from"
                                + " it.",
                        ReadStopsCommand::run)
                .operand("FILE", "A text file with the stop list, or - for the standard input.")
                .option(
                        CALLED,
                        "NAME",
                        "The organ's name. If not given: the heading of the list, else the name of the file.")
                .option("-o " + OUT, "FILE", "Write the instrument to this new file, such as instruments/x.json.")
                .json()
                .footer("Lines that were not understood are listed with the reason, and give no stop. A pitch"
                        + " that is not printed is assumed from the name and marked with ?.")
                .statuses("Something in the list needs checking.")
                .examples("versewind read-stops list.txt --out instruments/new.json");
    }

    private static Reply run(Typed typed, Commands commands) throws BadFile, NotationException {
        String file = typed.operand();
        String text = commands.text(file);
        Optional<String> refusal = StopList.refusal(text);
        if (refusal.isPresent()) {
            throw new UsageException(refusal.get());
        }
        ReadOrgan organ = ReadOrgan.of(text);
        StopList list = organ.list();
        String usual = organ.heading().isEmpty() ? nameOf(file) : organ.heading();
        String name = typed.value(CALLED).map(String::strip).orElse(usual);
        if (name.isEmpty()) {
            throw new UsageException("An organ needs a name. Write one after " + CALLED + ".");
        }
        Optional<NewInstrument> made = organ.made(name);
        Optional<String> out = typed.value(OUT);
        if (out.isPresent()) {
            save(commands, out.get(), organ, made);
        }
        boolean whole = organ.printed().isPresent() && made.isPresent();
        String objections = organ.objections().stream().map(Reply::line).collect(Collectors.joining());
        return new Reply(
                !whole && list.wantsAttention() ? Reply.WANTS_ATTENTION : Reply.GOOD,
                commands.shown(typed, new StopListReport(list, name)),
                objections + words(list, made, out));
    }

    private static String nameOf(String file) {
        String stem = FOLDERS_AND_ENDING.matcher(file).replaceAll("");
        return file.equals(Typed.INPUT) || stem.isBlank() ? "New organ" : stem;
    }

    private static void save(Commands commands, String file, ReadOrgan organ, Optional<NewInstrument> made)
            throws BadFile, NotationException {
        if (!file.endsWith(ENDING)) {
            throw new UsageException(
                    "\"" + file + "\" does not end in " + ENDING + ". Write it like \"instruments/x.json\".");
        }
        if (!organ.objections().isEmpty()) {
            throw new UsageException("No instrument can be made from it. " + String.join(" ", organ.objections()));
        }
        if (made.isEmpty()) {
            throw new UsageException("The list has no manual with a stop, so no instrument can be made from it.");
        }
        Commands.requireSaved(
                commands.library()
                        .saveNewInstrument(commands.newFile(file), made.get().instrument()),
                file + " could not be written. ",
                file + " is there already and is left as it is. Write another name after -o.");
    }

    private static String words(StopList list, Optional<NewInstrument> made, Optional<String> saved) {
        StringBuilder words = new StringBuilder();
        if (saved.isPresent()) {
            words.append(Reply.line(saved.get() + " was written."));
            made.ifPresent(instrument -> instrument.remarks().forEach(remark -> words.append(Reply.line(remark))));
        }
        if (list.divisions().isEmpty()) {
            words.append(Reply.line("No stop was found. Are there names and pitches in it, like \"Open Diapason 8\"?"));
        }
        int doubts = list.doubts().size();
        if (doubts > 0) {
            words.append(Reply.line(doubts + (doubts == 1 ? " line" : " lines")
                    + " may describe part of the organ and could not be understood; see the end of the table."));
        }
        return words.toString();
    }
}
