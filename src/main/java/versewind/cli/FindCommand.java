package versewind.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import versewind.organ.Instrument;
import versewind.organ.NotationException;
import versewind.organ.RegistrationText;
import versewind.plan.Hymn;
import versewind.plan.Occurrence;
import versewind.plan.Sought;
import versewind.plan.Verse;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.LibraryJson;
import versewind.store.LibraryJson.FoundIn;
import versewind.store.OpenPlan;
import versewind.store.PlanEntry;

/** {@code versewind find TEXT}: what was drawn for a hymn, a tune, on a date, or where a stop was used. */
final class FindCommand {

    static final String NAME = "find";

    private static final int LABEL = 7;

    private FindCommand() {}

    static CommandSpec spec() {
        CommandSpec spec = Options.command(
                NAME,
                "Finds hymns in all plans by title, number, tune, service, date, organ, or stops drawn, the latest"
                        + " first, and shows what is drawn for every verse that fits.");
        spec.addPositional(Options.operand(
                "TEXT", "Words or parts of words that all have to be there; capitals and accents make no difference."));
        spec.addOption(Options.json());
        return Options.withExitStatus(spec, "Nothing was found.");
    }

    static Reply run(ParseResult typed, Library library, CharsetFallback lettering) throws BadFile, NotationException {
        Sought sought = Sought.of(Options.operand(typed));
        if (sought.words().isEmpty()) {
            throw new UsageException("Nothing is said that could be found. See versewind find --help.");
        }
        StringBuilder words = new StringBuilder();
        List<FoundIn> found = new ArrayList<>();
        for (PlanEntry entry : library.catalogue().read()) {
            try {
                OpenPlan open = library.openPlan(entry.file().path());
                List<Occurrence> here = Occurrence.in(open.plan(), open.instrument(), sought);
                if (!here.isEmpty()) {
                    found.add(new FoundIn(entry, open.plan(), open.instrument(), here));
                }
            } catch (BadFile bad) {
                words.append("versewind: Not looked into: ")
                        .append(bad.getMessage())
                        .append('\n');
            }
        }
        found.sort(Comparator.comparing((FoundIn each) ->
                        each.entry().date().map(Object::toString).orElse(""))
                .reversed());
        if (found.isEmpty()) {
            words.append("versewind: Nothing fits \"")
                    .append(Options.operand(typed))
                    .append("\".\n");
        }
        String results = typed.hasMatchedOption(Options.JSON) ? LibraryJson.of(found) : text(found, lettering);
        return new Reply(found.isEmpty() ? Reply.WANTS_ATTENTION : Reply.GOOD, results, words.toString());
    }

    private static String text(List<FoundIn> all, CharsetFallback lettering) {
        if (all.isEmpty()) {
            return "";
        }
        Page page = new Page(lettering);
        for (FoundIn found : all) {
            page.line(found.entry().date().map(Object::toString).orElse("no date") + "  "
                    + found.entry().title() + " (" + found.entry().file().id() + "), "
                    + found.instrument().name());
            for (Occurrence occurrence : found.occurrences()) {
                hymn(page, found.plan().hymns().get(occurrence.hymn()), occurrence, found.instrument());
            }
            page.blank();
        }
        return page.text();
    }

    private static void hymn(Page page, Hymn hymn, Occurrence occurrence, Instrument instrument) {
        page.line("  " + (hymn.number() + " " + hymn.title()).strip()
                + (hymn.tune().isBlank() ? "" : ", " + hymn.tune()));
        for (int index : occurrence.verses()) {
            Verse verse = hymn.verses().get(index);
            String drawn = new RegistrationText(instrument)
                    .parts(verse.registration()).stream()
                            .map(part -> part.where() + ": " + part.text())
                            .collect(Collectors.joining("; "));
            page.hanging(
                    "    " + page.left(verse.label(), LABEL) + " ",
                    EstimateText.hands(instrument, verse.hands()) + "; "
                            + (drawn.isEmpty() ? RegistrationText.NOTHING : drawn));
        }
    }
}
