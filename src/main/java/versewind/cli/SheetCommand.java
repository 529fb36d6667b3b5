package versewind.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import versewind.organ.Names;
import versewind.organ.NotationException;
import versewind.screen.plan.SheetText;
import versewind.sheet.Sheet;
import versewind.sheet.SheetHtml;
import versewind.sheet.SheetOptions;
import versewind.store.BadFile;
import versewind.store.OpenPlan;

/** {@code versewind sheet PLAN}: the sheet for the music desk. */
final class SheetCommand {

    static final List<String> FORMATS = List.of("text", "html");

    private static final String FORMAT = "--format";
    private static final String OUTPUT = "--output";
    private static final String LARGE = "--large";
    private static final String CHANGES = "--changes-only";
    private static final String LADDER = "--ladder";
    private static final String DEPUTY = "--deputy";
    private static final String WIDTH = "--width";
    private static final String ASCII = "--ascii";

    private SheetCommand() {}

    /** The formats of a sheet. */
    private enum Format {
        TEXT,
        HTML
    }

    static Command command() {
        return Command.of(
                        Subcommand.SHEET,
                        "Makes a sheet for the music desk: the service with its levels and verdicts on one page, then"
                                + " a page for each hymn with what changes in every verse.",
                        SheetCommand::run)
                .operand("PLAN", Command.PLAN + " " + Command.OR_INPUT)
                .option(
                        FORMAT,
                        "FORMAT",
                        "text, or html, to print or to show. If not given: by the ending of the"
                                + " file's name, else text.")
                .option(
                        "-o " + OUTPUT,
                        "FILE",
                        "Write to this file, or with - to the standard output. It is replaced only if it is a sheet.")
                .flag(LARGE, "Use large type (html).")
                .flag(CHANGES, "After the first verse of a hymn, list only the changes.")
                .flag(LADDER, "Add two steps stronger and two softer for every verse.")
                .flag(
                        DEPUTY,
                        "Begin with a page about the organ, its pistons and what to set, and end with a list for the"
                                + " registrant.")
                .option(
                        WIDTH,
                        "N",
                        "Columns of a line, " + SheetText.NARROWEST + " to " + SheetText.WIDEST + ", "
                                + SheetText.COLUMNS + " if not given (text).")
                .flag(ASCII, "Use plain ASCII only (text).")
                .spoken("For a screen reader: no columns, rules and signs (text).")
                .statuses()
                .examples("versewind sheet harvest-festival -o harvest.html");
    }

    private static Reply run(Typed typed, Commands commands) throws BadFile, NotationException {
        Format format = format(typed);
        OpenPlan open = commands.plan(typed.operand());
        Sheet sheet = Sheet.of(open.plan(), open.organ().sound(), wishes(typed));
        String words = AssessCommand.unsavedWork(open, "on the sheet");
        Optional<String> name = typed.value(OUTPUT).filter(file -> !file.equals(Typed.INPUT));
        CharsetFallback letters = new CharsetFallback(
                typed.has(ASCII)
                        ? StandardCharsets.US_ASCII
                        : name.isPresent()
                                ? StandardCharsets.UTF_8
                                : commands.environment().charset());
        int columns = typed.whole(WIDTH, SheetText.NARROWEST, SheetText.WIDEST).orElse(SheetText.COLUMNS);
        String text =
                switch (format) {
                    case TEXT ->
                        commands.isSpoken(typed)
                                ? SheetText.spoken(sheet, letters::of)
                                : SheetText.of(sheet, letters::of, columns);
                    case HTML -> SheetHtml.of(sheet);
                };
        if (name.isEmpty()) {
            return new Reply(Reply.GOOD, text, words);
        }
        Path file = commands.newFile(name.get());
        Commands.requireSaved(
                commands.library().saveMade(file, text, mark(format), open.path()),
                "The sheet was not written to " + name.get() + ": ",
                "The sheet was not written to " + name.get() + ": Someone else has just changed it. Try again.");
        return new Reply(Reply.GOOD, "", words + Reply.line("Sheet written to " + name.get() + "."));
    }

    private static SheetOptions wishes(Typed typed) {
        return new SheetOptions(
                typed.has(LARGE) ? SheetOptions.Type.LARGE : SheetOptions.Type.USUAL,
                typed.has(CHANGES) ? SheetOptions.Content.CHANGES : SheetOptions.Content.WHOLE,
                typed.has(LADDER) ? SheetOptions.Steps.SHOWN : SheetOptions.Steps.LEFT_OUT,
                typed.has(DEPUTY) ? SheetOptions.Reader.DEPUTY : SheetOptions.Reader.ORGANIST);
    }

    private static Format format(Typed typed) throws NotationException {
        if (!typed.has(FORMAT)) {
            String file = typed.value(OUTPUT).orElse("");
            if (file.matches("(?i).*\\.(pdf|docx?|odt|rtf)")) {
                throw new UsageException("A sheet is written as .html or as text. Write .html, and print that as "
                        + file.substring(file.lastIndexOf('.')) + " from a browser.");
            }
            return file.matches("(?i).*\\.html?") ? Format.HTML : Format.TEXT;
        }
        Names names = new Names("A sheet has no format", "The formats are", FORMATS);
        return Format.values()[names.find(typed.value(FORMAT).orElse(""))];
    }

    /** The mark by which a sheet of this format is recognised. */
    private static String mark(Format format) {
        return switch (format) {
            case TEXT -> SheetText.MADE_BY;
            case HTML -> SheetHtml.MADE_BY;
        };
    }
}
