package versewind.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import versewind.organ.NotationException;
import versewind.screen.Text;
import versewind.store.BadFile;
import versewind.store.InstrumentEntry;
import versewind.store.Library;
import versewind.store.LibraryJson;
import versewind.store.PlanEntry;

/** {@code versewind list}: the plans and the instruments of the library. */
final class ListCommand {

    static final String NAME = "list";

    private static final int DATE = 10;
    private static final int ID = 24;

    private ListCommand() {}

    static CommandSpec spec() {
        CommandSpec spec = Options.command(NAME, "Lists the plans, the latest date first, and the instruments.");
        spec.addOption(Options.json());
        return Options.withExitStatus(spec, "A plan cannot be read.");
    }

    static Reply run(ParseResult typed, Commands commands) throws BadFile, NotationException {
        Library library = commands.library();
        List<PlanEntry> plans = library.catalogue().read().stream()
                .sorted(Comparator.comparing((PlanEntry entry) ->
                                entry.date().map(Object::toString).orElse(""))
                        .reversed())
                .toList();
        Map<String, BadFile> troubles = troubles(plans, library);
        List<InstrumentEntry> instruments = library.instruments();
        String results = typed.hasMatchedOption(Options.JSON)
                ? LibraryJson.of(plans, troubles, instruments)
                : text(
                        plans,
                        troubles,
                        instruments,
                        Page.asWideAs(commands.surroundings().columns(), commands.lettering()));
        StringBuilder words = new StringBuilder();
        troubles.values()
                .forEach(bad ->
                        words.append("versewind: ").append(bad.getMessage()).append('\n'));
        return new Reply(troubles.isEmpty() ? Reply.GOOD : Reply.WANTS_ATTENTION, results, words.toString());
    }

    /** What is wrong with those that cannot be read, by their ids. */
    private static Map<String, BadFile> troubles(List<PlanEntry> plans, Library library) {
        Map<String, BadFile> troubles = new TreeMap<>();
        for (PlanEntry entry : plans) {
            try {
                library.openPlan(entry.file().path());
            } catch (BadFile bad) {
                troubles.put(entry.file().id(), bad);
            }
        }
        return troubles;
    }

    /** Names stand there whole, for they are to be typed; a title is cut where a terminal is not wide enough. */
    private static String text(
            List<PlanEntry> plans, Map<String, BadFile> troubles, List<InstrumentEntry> instruments, Page page) {
        page.line(plans.isEmpty() ? "No plan yet." : "Plans");
        for (PlanEntry entry : plans) {
            boolean isBad = troubles.containsKey(entry.file().id());
            String state = isBad ? "[cannot be read] " : entry.file().unsavedWork() ? "[unsaved work] " : "";
            row(
                    page,
                    entry.date().map(Object::toString).orElse("no date"),
                    entry.file().id(),
                    state + entry.title());
        }
        page.blank();
        page.line(instruments.isEmpty() ? "No instrument yet." : "Instruments");
        for (InstrumentEntry entry : instruments) {
            String place = entry.place().isBlank() ? "" : ", " + entry.place();
            row(page, "", entry.id(), entry.name() + place);
        }
        return page.text();
    }

    private static void row(Page page, String date, String id, String title) {
        page.line(page.left(date, DATE) + "  " + id + " ".repeat(Math.max(0, ID - Text.columns(id))) + "  ", title);
    }
}
