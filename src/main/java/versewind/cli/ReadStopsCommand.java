package versewind.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import versewind.organ.Count;
import versewind.organ.Family;
import versewind.organ.NotationException;
import versewind.schema.FileFormat;
import versewind.stoplist.NewInstrument;
import versewind.stoplist.ReadCoupler;
import versewind.stoplist.ReadDivision;
import versewind.stoplist.ReadOrgan;
import versewind.stoplist.ReadPistons;
import versewind.stoplist.ReadStop;
import versewind.stoplist.StopList;
import versewind.stoplist.TradeList;
import versewind.stoplist.Unread;
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
                                + " Catalan, Polish, Czech, Hungarian, Finnish or a Scandinavian language, and makes an"
                                + " instrument from"
                                + " it.",
                        ReadStopsCommand::run)
                .operand("FILE", "A text file with the stop list, or - for the standard input.")
                .option(
                        CALLED,
                        "NAME",
                        "The organ's name. If not given: the heading of the list, else the name of the file.")
                .option(
                        "-o " + OUT,
                        "FILE",
                        "Make a new instrument of this name in the library; or write it to this new file, such as"
                                + " ./x.json.")
                .json()
                .footer("Lines that were not understood are listed with the reason, and give no stop. A pitch"
                        + " that is not printed is assumed from the name and marked with ?.")
                .statuses("Something in the list needs checking.")
                .examples("versewind read-stops list.txt --out new");
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
        String saved = "";
        String hint = "";
        if (out.isPresent()) {
            Path path = save(commands, out.get(), organ, made);
            saved = Reply.line(path + " was written.");
            hint = organ.printed().isPresent()
                    ? ""
                    : Reply.line("Say what its room is like: versewind room "
                            + WrittenOver.word(out.get().endsWith(ENDING) ? path.toString() : out.get())
                            + " \"parish church, 180 seats\"");
        }
        boolean whole = organ.printed().filter(TradeList.Read::isPrinted).isPresent() && made.isPresent();
        String objections = organ.objections().stream().map(Reply::line).collect(Collectors.joining());
        return new Reply(
                !whole && list.wantsAttention() ? Reply.WANTS_ATTENTION : Reply.GOOD,
                commands.shown(typed, new StopListReport(list, name)),
                objections + words(organ, made, saved) + hint);
    }

    private static String nameOf(String file) {
        String stem = FOLDERS_AND_ENDING.matcher(file).replaceAll("");
        return file.equals(Typed.INPUT) || stem.isBlank() ? "New organ" : stem;
    }

    private static Path save(Commands commands, String file, ReadOrgan organ, Optional<NewInstrument> made)
            throws BadFile, NotationException {
        boolean isInLibrary = FileFormat.isId(file) && !file.contains(".");
        if (!isInLibrary && !file.endsWith(ENDING)) {
            throw new UsageException("\"" + file + "\" does not end in " + ENDING
                    + ". Write a name for the library, like \"new-organ\", or a file, like \"./new-organ.json\".");
        }
        if (!organ.objections().isEmpty()) {
            throw new UsageException("No instrument can be made from it. "
                    + organ.objections().get(0)
                    + (organ.objections().size() > 1
                            ? " " + (organ.objections().size() - 1) + " more are listed with"
                                    + " the table; leave out -o to see it."
                            : ""));
        }
        if (made.isEmpty()) {
            throw new UsageException("The list has no manual with a stop, so no instrument can be made from it.");
        }
        Path path = isInLibrary ? commands.library().newInstrument(file) : commands.newFile(file);
        Commands.requireSaved(
                commands.library().saveNewInstrument(path, made.get().instrument()),
                file + " could not be written. ",
                file + " is there already and is left as it is. Write another name after -o.");
        return path;
    }

    private static String words(ReadOrgan organ, Optional<NewInstrument> made, String saved) {
        StopList list = organ.list();
        StringBuilder words = new StringBuilder(saved);
        made.filter(instrument -> !saved.isEmpty())
                .map(NewInstrument::remarks)
                .orElseGet(organ::assumed)
                .forEach(remark -> words.append(Reply.line(remark)));
        if (list.divisions().isEmpty()) {
            words.append(Reply.line("No stop was found. Are there names and pitches in it, like \"Open Diapason 8\"?"));
        }
        int doubts = list.doubts().size();
        if (doubts > 0) {
            words.append(Reply.line(Count.of(doubts, "line")
                    + " may describe part of the organ and could not be understood; see the end of the table."));
        }
        return words.toString();
    }

    /**
     * A stop list that was read: a table for every division, couplers, tremulants, pistons, what was not understood.
     *
     * @param list the list
     * @param name what the organ is called
     */
    private record StopListReport(StopList list, String name) implements Report {

        private static final int[] COLUMNS = {30, -8, 5, 12, 18};

        @Override
        public void print(Page page) {
            page.line(name);
            page.line(Count.of(list.stops().count(), "stop") + ", "
                    + Count.of(list.couplers().size(), "coupler") + ", "
                    + Count.of(list.tremulants().size(), "tremulant"));
            list.divisions().forEach(division -> division(page, division));
            section(
                    page,
                    "Couplers",
                    list.couplers().stream().map(StopListReport::coupler).toList());
            section(
                    page,
                    "Tremulants",
                    list.tremulants().stream()
                            .map(each -> each.name() + ", for " + each.division())
                            .toList());
            pistons(page, list.pistons());
            unread(page, "Not understood", list.doubts());
            unread(
                    page,
                    "Read as notes",
                    list.notUnderstood().stream()
                            .filter(each -> each.weight() == Unread.Weight.NOTE)
                            .toList());
        }

        private static void pistons(Page page, ReadPistons pistons) {
            List<String> parts = new ArrayList<>();
            if (pistons.generals() > 0) {
                parts.add(Count.of(pistons.generals(), "general"));
            }
            pistons.divisionals().forEach((division, count) -> parts.add(division + " " + count));
            if (pistons.levels() > 0) {
                parts.add(Count.of(pistons.levels(), "memory level"));
            }
            section(page, "Pistons", parts);
        }

        private static void division(Page page, ReadDivision division) {
            page.blank();
            String keyboard = division.manual().isPresent()
                    ? "manual " + division.manual().getAsInt()
                    : "pedal";
            String keys = division.keys().isPresent() ? ", " + division.keys().getAsInt() + " keys" : "";
            page.line(division.name() + ": " + keyboard + keys + (division.enclosed() ? ", in a swell box" : ""));
            for (ReadStop stop : division.stops()) {
                String feet = stop.feet() + (stop.supposed() ? "?" : "");
                page.line("  "
                        + page.cells(
                                " ",
                                COLUMNS,
                                stop.name(),
                                feet,
                                ranks(stop),
                                stop.family().word(),
                                stop.how().word()));
            }
        }

        private static String ranks(ReadStop stop) {
            boolean counts = stop.family().isCompound() || (stop.family() == Family.CELESTE && stop.ranks() > 1);
            return counts ? stop.ranks() + " rk" : "";
        }

        private static String coupler(ReadCoupler coupler) {
            return coupler.name() + (coupler.isWhole() ? "" : " (its divisions are not both in the list)");
        }

        private static void section(Page page, String head, List<String> entries) {
            if (!entries.isEmpty()) {
                page.blank();
                String all = String.join("; ", entries);
                page.hanging(head + ": ", all + (all.endsWith(".") ? "" : "."));
            }
        }

        private static void unread(Page page, String head, List<Unread> lines) {
            if (lines.isEmpty()) {
                return;
            }
            page.blank();
            page.line(head + ":");
            lines.forEach(each -> page.hanging("  line " + each.line() + ": ", each.text() + " - " + each.why()));
        }

        /** A footage is text, "2 2/3", and "" for a compound stop without one. */
        @Override
        public Json json() {
            Json divisionals = new Json();
            list.pistons().divisionals().forEach(divisionals::put);
            return new Json()
                    .put("title", list.title())
                    .list("divisions", list.divisions(), StopListReport::json)
                    .list("couplers", list.couplers(), each -> new Json()
                            .put("name", each.name())
                            .put("source", each.source())
                            .put("keyboard", each.keyboard())
                            .put("kind", each.kind().word())
                            .put("line", each.line()))
                    .list("tremulants", list.tremulants(), each -> new Json()
                            .put("name", each.name())
                            .put("division", each.division())
                            .put("line", each.line()))
                    .put(
                            "pistons",
                            new Json()
                                    .put("generals", list.pistons().generals())
                                    .put("divisionals", divisionals)
                                    .put("levels", list.pistons().levels()))
                    .list("notUnderstood", list.notUnderstood(), each -> new Json()
                            .put("line", each.line())
                            .put("text", each.text())
                            .put("why", each.why()));
        }

        private static Json json(ReadDivision division) {
            Json json = new Json()
                    .put("name", division.name())
                    .put("pedal", division.isPedal())
                    .put("enclosed", division.enclosed());
            division.manual().ifPresent(manual -> json.put("manual", manual));
            division.keys().ifPresent(keys -> json.put("keys", keys));
            return json.list("stops", division.stops(), stop -> new Json()
                    .put("name", stop.name())
                    .put("footage", stop.feet())
                    .put("ranks", stop.ranks())
                    .put("family", stop.family().word())
                    .put("sure", stop.how().isSure())
                    .put("how", stop.how().word())
                    .put("supposed", stop.supposed())
                    .put("remarks", stop.remarks())
                    .put("line", stop.line()));
        }
    }
}
