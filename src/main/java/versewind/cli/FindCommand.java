package versewind.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.organ.NotationException;
import versewind.organ.Quoted;
import versewind.organ.RegistrationText;
import versewind.plan.HandsAndFeet;
import versewind.plan.Hymn;
import versewind.plan.Occurrence;
import versewind.plan.Plan;
import versewind.plan.Sought;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.sheet.Wording;
import versewind.store.BadFile;
import versewind.store.InstrumentEntry;
import versewind.store.Library;
import versewind.store.OpenPlan;
import versewind.store.PlanEntry;

/** {@code versewind find TEXT}: what was drawn for a hymn, a tune, on a date, or where a stop was used. */
final class FindCommand {

    private static final int LABEL = 7;
    private static final int MOST_FOUND = 500;

    private FindCommand() {}

    static Command command() {
        return Command.of(
                        Subcommand.FIND,
                        "Finds hymns in all plans by title, number, tune, service, date, organ or stops drawn, latest"
                                + " first, and shows the registration of every matching verse.",
                        FindCommand::run)
                .words(
                        "TEXT",
                        "Words or parts of words, all of which must occur. Capitals and accents make no difference.")
                .json()
                .statuses("Nothing was found.")
                .examples("versewind find cornopean harvest");
    }

    private static Reply run(Typed typed, Commands commands) throws BadFile, NotationException {
        Sought sought = Sought.of(typed.words());
        if (sought.words().isEmpty()) {
            throw new UsageException("Enter a word to search for. See versewind find --help.");
        }
        Library library = commands.library();
        StringBuilder words = new StringBuilder();
        List<InPlan> found = new ArrayList<>();
        Filter filter = Filter.of(library, sought);
        List<PlanEntry> entries = library.catalogue().read().stream()
                .sorted(ListCommand.LATEST_FIRST)
                .toList();
        for (PlanEntry entry : entries) {
            if (found.size() == MOST_FOUND) {
                words.append(Reply.line("Only the latest " + MOST_FOUND + " services are shown. Add another word."));
                break;
            }
            try {
                Optional<OpenPlan> wanted = library.readPlan(entry.file().path(), text -> filter.mayMatch(entry, text));
                if (wanted.isEmpty()) {
                    continue;
                }
                OpenPlan open = wanted.get();
                List<Occurrence> here = Occurrence.in(open.plan(), open.instrument(), sought);
                if (!here.isEmpty()) {
                    found.add(new InPlan(entry, open.plan(), open.instrument(), here));
                }
            } catch (BadFile bad) {
                words.append(Reply.line("Not searched: " + bad.getMessage()));
            }
        }
        if (!found.isEmpty()) {
            return new Reply(Reply.GOOD, commands.shown(typed, new Found(found)), words.toString());
        }
        words.append(Reply.line("Nothing matches " + Quoted.text(typed.words()) + "."));
        String none = typed.wantsJson() ? new Found(found).json().text() : "";
        return new Reply(Reply.WANTS_ATTENTION, none, words.toString());
    }

    /**
     * Whether a plan's file may match, by its text as it stands: much sooner said than its plan is read.
     *
     * @param sought the words
     * @param usual words of what files leave out, since it is usual
     * @param organs the names of the organs whose parts were never renamed, by id
     */
    private record Filter(Sought sought, String usual, Map<String, String> organs) {

        static Filter of(Library library, Sought sought) throws BadFile {
            StringBuilder usual = new StringBuilder();
            Stream.of(VerseKind.values())
                    .forEach(each -> usual.append(each.word()).append('\n'));
            Stream.of(SungBy.values()).forEach(each -> usual.append(each.word()).append('\n'));
            Stream.of(HandsAndFeet.Layout.values())
                    .forEach(each -> usual.append(each.word()).append('\n'));
            Map<String, String> organs = new HashMap<>();
            for (InstrumentEntry each : library.instruments()) {
                if (isNeverRenamed(library, each.id())) {
                    organs.put(each.id(), each.name());
                }
            }
            return new Filter(sought, Sought.plain(usual.toString()), organs);
        }

        private static boolean isNeverRenamed(Library library, String id) {
            try {
                return library.openOrgan(id).organ().former().isNone();
            } catch (BadFile unreadable) {
                return false;
            }
        }

        boolean mayMatch(PlanEntry entry, String text) {
            String organ = organs.get(entry.instrument());
            return organ == null
                    || sought.isInPlain(usual
                            + Sought.plain(text
                                    + '\n'
                                    + organ
                                    + '\n'
                                    + entry.date().map(Occurrence::dates).orElse("")));
        }
    }

    /** A plan with the places found in it. */
    private record InPlan(PlanEntry entry, Plan plan, Instrument instrument, List<Occurrence> occurrences) {

        Json json(Occurrence occurrence) {
            Hymn hymn = plan.hymns().get(occurrence.hymn());
            return ListCommand.entry(entry)
                    .put("number", hymn.number())
                    .put("title", hymn.title())
                    .put("tune", hymn.tune())
                    .list(
                            "verses",
                            occurrence.verses(),
                            index -> verse(hymn.verses().get(index)));
        }

        private Json verse(Verse verse) {
            return ReportFields.verse(verse)
                    .put("hands", verse.hands().layout().word())
                    .with(ReportFields.drawn(instrument, verse.registration()));
        }
    }

    /** The hymns found, with their matching verses and registrations. */
    private record Found(List<InPlan> all) implements Report {

        @Override
        public void print(Page page) {
            for (InPlan found : all) {
                page.hanging(
                        ListCommand.date(found.entry()) + "  ",
                        found.entry().title() + " (" + found.entry().file().id() + "), "
                                + found.instrument().name());
                found.occurrences().forEach(occurrence -> hymn(page, found, occurrence));
                page.blank();
            }
        }

        private static void hymn(Page page, InPlan found, Occurrence occurrence) {
            Hymn hymn = found.plan().hymns().get(occurrence.hymn());
            String tune = hymn.tune().isBlank() ? "" : ", " + hymn.tune();
            page.hanging("  ", (hymn.number() + " " + hymn.title()).strip() + tune);
            RegistrationText text = new RegistrationText(found.instrument());
            for (int index : occurrence.verses()) {
                Verse verse = hymn.verses().get(index);
                String drawn = text.parts(verse.registration()).stream()
                        .map(part -> part.where() + ": " + part.text())
                        .collect(Collectors.joining("; "));
                page.hanging(
                        "    " + page.left(verse.label(), LABEL) + " ",
                        Wording.hands(found.instrument(), verse.hands()) + "; "
                                + (drawn.isEmpty() ? RegistrationText.NOTHING : drawn));
            }
        }

        @Override
        public Json json() {
            return new Json()
                    .put(
                            "found",
                            all.stream()
                                    .<Object>flatMap(found ->
                                            found.occurrences().stream().map(found::json))
                                    .toList());
        }
    }
}
