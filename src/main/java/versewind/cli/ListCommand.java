package versewind.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import versewind.organ.DayWords;
import versewind.organ.NotationException;
import versewind.screen.toolkit.Text;
import versewind.store.BadFile;
import versewind.store.InstrumentEntry;
import versewind.store.Library;
import versewind.store.PlanEntry;

/** {@code versewind list}: the plans and the instruments of the library. */
final class ListCommand {

    /** The latest date first, plans without a date last. */
    static final Comparator<PlanEntry> LATEST_FIRST =
            Comparator.comparing(ListCommand::dateOrBlank).reversed();

    /** In a larger library only the head of each file is read: the whole would take a minute. */
    private static final int MOST_CHECKED = 1000;

    private static final int DATE = 15;
    /** Columns of a name at least. */
    private static final int ID = 24;

    private ListCommand() {}

    static Command command() {
        return Command.of(
                        Subcommand.LIST,
                        "Lists the plans, the latest date first, and the instruments.",
                        ListCommand::run)
                .json()
                .statuses("A plan cannot be read.")
                .examples("versewind list");
    }

    private static String dateOrBlank(PlanEntry entry) {
        return entry.date().map(Object::toString).orElse("");
    }

    /** "Sun 20 Dec 2026", "no date". */
    static String date(PlanEntry entry) {
        return entry.date().map(DayWords::of).orElse("no date");
    }

    private static Reply run(Typed typed, Commands commands) throws BadFile, NotationException {
        Library library = commands.library();
        List<PlanEntry> plans =
                library.catalogue().read().stream().sorted(LATEST_FIRST).toList();
        boolean isLarge = plans.size() > MOST_CHECKED;
        Map<String, BadFile> troubles = isLarge ? Map.of() : troubles(plans, library);
        Contents contents = new Contents(plans, troubles, library.instruments());
        StringBuilder words = new StringBuilder();
        if (isLarge) {
            words.append(Reply.line(plans.size() + " plans: only the beginning of each file was read."));
        }
        troubles.values().forEach(bad -> words.append(Reply.line(bad.getMessage())));
        return new Reply(
                troubles.isEmpty() ? Reply.GOOD : Reply.WANTS_ATTENTION,
                commands.shown(typed, contents, commands.widePage()),
                words.toString());
    }

    /** Errors of the files that cannot be read, by id. */
    private static Map<String, BadFile> troubles(List<PlanEntry> plans, Library library) {
        Map<String, BadFile> troubles = new TreeMap<>();
        for (PlanEntry entry : plans) {
            try {
                library.readPlan(entry.file().path());
            } catch (BadFile bad) {
                troubles.put(entry.file().id(), bad);
            }
        }
        return troubles;
    }

    /** The contents of a library, and the errors of plans that cannot be read, by id. */
    private record Contents(List<PlanEntry> plans, Map<String, BadFile> troubles, List<InstrumentEntry> instruments)
            implements Report {

        /** Names are written whole, since they are to be typed; a title is cut where a terminal is not wide enough. */
        @Override
        public void print(Page page) {
            page.line(plans.isEmpty() ? "No plans yet." : "Plans");
            int names = widestName();
            for (PlanEntry entry : plans) {
                boolean isBad = troubles.containsKey(entry.file().id());
                String state = isBad ? " [cannot be read]" : entry.file().unsavedWork() ? " [unsaved work]" : "";
                page.line(head(page, date(entry), entry.file().id(), names), entry.title(), state);
            }
            page.blank();
            page.line(instruments.isEmpty() ? "No instruments yet." : "Instruments");
            for (InstrumentEntry entry : instruments) {
                String place = entry.place().isBlank() ? "" : ", " + entry.place();
                page.line(head(page, "", entry.id(), names), entry.name() + place, "");
            }
        }

        /** Columns of the longest name, so that all titles stand below each other. */
        private int widestName() {
            return Stream.concat(
                            plans.stream().map(entry -> entry.file().id()),
                            instruments.stream().map(InstrumentEntry::id))
                    .mapToInt(Text::columns)
                    .reduce(ID, Math::max);
        }

        private static String head(Page page, String date, String id, int names) {
            return page.left(date, DATE) + "  " + id + " ".repeat(names - Text.columns(id)) + "  ";
        }

        @Override
        public Json json() {
            return new Json()
                    .list("plans", plans, entry -> entry(entry)
                            .put("unsavedWork", entry.file().unsavedWork())
                            .put(
                                    "trouble",
                                    Optional.ofNullable(
                                                    troubles.get(entry.file().id()))
                                            .map(BadFile::getMessage)))
                    .list("instruments", instruments, entry -> new Json()
                            .put("id", entry.id())
                            .put("file", entry.path().toString())
                            .put("name", entry.name())
                            .put("place", entry.place()));
        }
    }

    /** A plan of the library. */
    static Json entry(PlanEntry entry) {
        return new Json()
                .put("id", entry.file().id())
                .put("file", entry.file().path().toString())
                .put("plan", entry.title())
                .with(ReportFields.date(entry.date()))
                .put("instrument", entry.instrument())
                .put("edited", entry.file().edited().toString());
    }
}
