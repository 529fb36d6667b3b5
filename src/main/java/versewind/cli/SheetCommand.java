package versewind.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import versewind.organ.Names;
import versewind.organ.NotationException;
import versewind.sheet.Sheet;
import versewind.sheet.SheetHtml;
import versewind.sheet.SheetOptions;
import versewind.store.BadFile;
import versewind.store.OpenPlan;
import versewind.store.SaveOutcome;

/** {@code versewind sheet PLAN}: what lies on the music desk. */
final class SheetCommand {

    static final String NAME = "sheet";

    private static final String FORMAT = "--format";
    private static final String OUTPUT = "--output";
    private static final String LARGE = "--large";
    private static final String CHANGES = "--changes-only";
    private static final String LADDER = "--ladder";
    private static final String ASCII = "--ascii";

    private SheetCommand() {}

    /** What a sheet can be made as. */
    private enum Format {
        TEXT,
        HTML
    }

    static CommandSpec spec() {
        CommandSpec spec = Options.command(
                NAME,
                "Makes the sheet for the music desk: for every verse what is drawn and what changes, how strong it is,"
                        + " and cards for the pistons and for whoever pulls stops.");
        spec.addPositional(Options.operand("PLAN", "A plan's file, or its name among the plans."));
        spec.addOption(Options.valued(
                FORMAT,
                "FORMAT",
                "text, 80 columns wide, or html, to print or to show. As the file's name ends, else text."));
        spec.addOption(OptionSpec.builder("-o", OUTPUT)
                .arity("1")
                .paramLabel("FILE")
                .type(String.class)
                .description("Write to this file. It is replaced only if it is a sheet.")
                .build());
        spec.addOption(Options.flag("Set it large (html).", LARGE).build());
        spec.addOption(Options.flag("After a hymn's first verse only what changes.", CHANGES)
                .build());
        spec.addOption(Options.flag("With two steps stronger and two softer for every verse.", LADDER)
                .build());
        spec.addOption(Options.flag("Nothing but ASCII (text).", ASCII).build());
        return Options.withExitStatus(spec, "A verse wants attention.");
    }

    static Reply run(ParseResult typed, Commands commands) throws BadFile, NotationException {
        Format format = format(typed);
        OpenPlan open = commands.library().openPlan(Options.operand(typed));
        Sheet sheet = Sheet.of(open.plan(), open.organ().sound(), wishes(typed));
        int status = sheet.wantsAttention() ? Reply.WANTS_ATTENTION : Reply.GOOD;
        String words = AssessCommand.unsavedWork(open, "on the sheet");
        if (!typed.hasMatchedOption(OUTPUT)) {
            return new Reply(status, made(sheet, format, lettering(typed, commands.lettering())), words);
        }
        String name = typed.matchedOptionValue(OUTPUT, "");
        Path file = OutputFile.of(name, commands.surroundings().workingFolder());
        String text = made(sheet, format, lettering(typed, new CharsetFallback(StandardCharsets.UTF_8)));
        SaveOutcome outcome = commands.library().saveMade(file, text, mark(format));
        if (outcome instanceof SaveOutcome.Saved) {
            return new Reply(status, "", words + "versewind: The sheet is written to " + name + ".\n");
        }
        String why = outcome instanceof SaveOutcome.NotSaved notSaved
                ? notSaved.why()
                : "Somebody else has just changed it. Try again.";
        return Reply.bad("The sheet is not written to " + name + ": " + why);
    }

    private static SheetOptions wishes(ParseResult typed) {
        return new SheetOptions(
                typed.hasMatchedOption(LARGE) ? SheetOptions.Type.LARGE : SheetOptions.Type.USUAL,
                typed.hasMatchedOption(CHANGES) ? SheetOptions.Content.CHANGES : SheetOptions.Content.WHOLE,
                typed.hasMatchedOption(LADDER) ? SheetOptions.Steps.SHOWN : SheetOptions.Steps.LEFT_OUT);
    }

    private static Format format(ParseResult typed) throws NotationException {
        if (!typed.hasMatchedOption(FORMAT)) {
            String file = typed.matchedOptionValue(OUTPUT, "");
            return file.matches("(?i).*\\.html?") ? Format.HTML : Format.TEXT;
        }
        List<Format> formats = List.of(Format.values());
        Names names = new Names("A sheet has no format", "The formats are", List.of("text", "html"));
        return formats.get(names.find(typed.matchedOptionValue(FORMAT, "")));
    }

    private static CharsetFallback lettering(ParseResult typed, CharsetFallback usual) {
        return typed.hasMatchedOption(ASCII) ? new CharsetFallback(StandardCharsets.US_ASCII) : usual;
    }

    private static String made(Sheet sheet, Format format, CharsetFallback lettering) {
        return switch (format) {
            case TEXT -> SheetText.of(sheet, lettering);
            case HTML -> SheetHtml.of(sheet);
        };
    }

    private static String mark(Format format) {
        return switch (format) {
            case TEXT -> SheetText.MADE_BY;
            case HTML -> SheetHtml.MADE_BY;
        };
    }
}
