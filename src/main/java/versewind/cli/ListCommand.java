package versewind.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
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

    static Reply run(ParseResult typed, Library library, Lettering lettering) throws BadFile {
        List<PlanEntry> plans = library.catalogue().read().stream()
                .sorted(Comparator.comparing((PlanEntry entry) ->
                                entry.date().map(Object::toString).orElse(""))
                        .reversed())
                .toList();
        Map<String, BadFile> troubles = troubles(plans, library);
        List<InstrumentEntry> instruments = library.instruments();
        String results = typed.hasMatchedOption(Options.JSON)
                ? LibraryJson.of(plans, troubles, instruments)
                : text(plans, troubles, instruments, lettering);
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

    private static String text(
            List<PlanEntry> plans,
            Map<String, BadFile> troubles,
            List<InstrumentEntry> instruments,
            Lettering lettering) {
        Page page = new Page(lettering);
        page.line(plans.isEmpty() ? "No plan yet." : "Plans");
        for (PlanEntry entry : plans) {
            boolean isBad = troubles.containsKey(entry.file().id());
            String state = isBad ? "[cannot be read] " : entry.file().unsavedWork() ? "[unsaved work] " : "";
            page.line(page.left(entry.date().map(Object::toString).orElse("no date"), DATE) + "  "
                    + page.left(entry.file().id(), ID) + "  " + state + entry.title());
        }
        page.blank();
        page.line(instruments.isEmpty() ? "No instrument yet." : "Instruments");
        for (InstrumentEntry entry : instruments) {
            String place = entry.place().isBlank() ? "" : ", " + entry.place();
            page.line(page.left("", DATE) + "  " + page.left(entry.id(), ID) + "  " + entry.name() + place);
        }
        return page.text();
    }
}
