package versewind.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import versewind.organ.NotationException;
import versewind.stoplist.NewInstrument;
import versewind.stoplist.StopList;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.PlainText;
import versewind.store.SaveOutcome;
import versewind.store.StopListJson;
import versewind.workshop.ReadOrgan;

/** {@code versewind read-stops FILE}: reads a published stop list and makes an instrument of it. */
final class ReadStopsCommand {

    static final String NAME = "read-stops";

    private static final String CALLED = "--name";
    private static final String OUT = "--out";
    private static final String ENDING = ".json";
    private static final Pattern FOLDERS_AND_ENDING = Pattern.compile("^.*[/\\\\]|\\.[A-Za-z]{1,4}$");

    private ReadStopsCommand() {}

    static CommandSpec spec() {
        CommandSpec spec = Options.command(
                NAME,
                "Reads a stop list as it is published, in English, German, French, Dutch, Italian, Spanish or a"
                        + " Scandinavian language, and makes an instrument of it.");
        spec.addPositional(Options.operand("FILE", "A text file with the stop list, or - for what is piped in."));
        spec.addOption(Options.valued(
                CALLED, "NAME", "What the organ is called; as the list is headed, else as the file, if not given."));
        spec.addOption(
                Options.valued("-o", OUT, "FILE", "Write the instrument to this new file, \"instruments/x.json\"."));
        spec.addOption(Options.json());
        spec.usageMessage()
                .footer(
                        "",
                        "Lines that were not understood are listed with the reason, and no stop is made of",
                        "them. A pitch that is not written is the usual one of the name, marked with ?.");
        return Options.withExitStatus(spec, "Something in the list wants a second look.");
    }

    static Reply run(ParseResult typed, Library library, CharsetFallback lettering) throws BadFile, NotationException {
        String file = Options.operand(typed);
        ReadOrgan organ = ReadOrgan.of(file.equals(Options.INPUT) ? PlainText.of(System.in) : PlainText.of(file));
        StopList list = organ.list();
        String usual = organ.heading().isEmpty() ? nameOf(file) : organ.heading();
        String name = typed.hasMatchedOption(CALLED)
                ? typed.matchedOptionValue(CALLED, "").strip()
                : usual;
        if (name.isEmpty()) {
            throw new UsageException("An organ needs a name. Write one after " + CALLED + ".");
        }
        Optional<NewInstrument> made = organ.made(name);
        String saved =
                typed.hasMatchedOption(OUT) ? saved(library, typed.matchedOptionValue(OUT, ""), organ, made) : "";
        String results =
                typed.hasMatchedOption(Options.JSON) ? StopListJson.of(list) : StopListPage.of(list, name, lettering);
        boolean whole = organ.printed().isPresent() && made.isPresent();
        int status = !whole && list.wantsAttention() ? Reply.WANTS_ATTENTION : Reply.GOOD;
        String objections =
                organ.objections().stream().map(ReadStopsCommand::line).collect(Collectors.joining());
        return new Reply(status, results, objections + words(list, made, saved));
    }

    private static String nameOf(String file) {
        String stem = FOLDERS_AND_ENDING.matcher(file).replaceAll("");
        return file.equals(Options.INPUT) || stem.isBlank() ? "New organ" : stem;
    }

    private static String saved(Library library, String file, ReadOrgan organ, Optional<NewInstrument> made)
            throws NotationException {
        if (!file.endsWith(ENDING)) {
            throw new UsageException(
                    "\"" + file + "\" does not end in " + ENDING + ". Write it like \"instruments/x.json\".");
        }
        if (!organ.objections().isEmpty()) {
            throw new UsageException("No instrument can be made of it. " + String.join(" ", organ.objections()));
        }
        if (made.isEmpty()) {
            throw new UsageException("The list has no manual with a stop, so no instrument can be made of it.");
        }
        Path path = OutputFile.of(file, Path.of(""));
        SaveOutcome outcome = library.saveNewInstrument(path, made.get().instrument());
        if (outcome instanceof SaveOutcome.ChangedOnDisk) {
            throw new UsageException(file + " is there already and is left as it is. Write another name after -o.");
        }
        if (outcome instanceof SaveOutcome.NotSaved notSaved) {
            throw new UsageException(file + " could not be written. " + notSaved.why());
        }
        return file + " is written.";
    }

    private static String words(StopList list, Optional<NewInstrument> made, String saved) {
        StringBuilder words = new StringBuilder();
        if (!saved.isEmpty()) {
            words.append(line(saved));
            made.ifPresent(instrument -> words.append(
                    instrument.remarks().stream().map(ReadStopsCommand::line).collect(Collectors.joining())));
        }
        if (list.divisions().isEmpty()) {
            words.append(line("No stop was found. Are there names and pitches in it, like \"Open Diapason 8\"?"));
        }
        int doubts = list.doubts().size();
        if (doubts > 0) {
            words.append(line(doubts + (doubts == 1 ? " line" : " lines")
                    + " may hold a part of the organ and could not be" + " understood; see the end of the table."));
        }
        return words.toString();
    }

    private static String line(String sentence) {
        return "versewind: " + sentence + "\n";
    }
}
