package versewind.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import versewind.calibration.HeardRegistration;
import versewind.organ.Count;
import versewind.organ.FormerNames;
import versewind.organ.FormerNames.Now;
import versewind.organ.Instrument;
import versewind.organ.Quoted;
import versewind.schema.FileFormat;
import versewind.schema.Found;
import versewind.schema.KnownOrgan;
import versewind.schema.ServiceFields;

/**
 * Saves an instrument whose parts have other names, and writes these into its plans.
 *
 * <p>The instrument is written first, and with it what everything was called before; so every plan can be opened
 * whether it has the new names yet or not, and where the program is stopped on the way nothing is lost. A plan that
 * draws what is gone is left as it is: it opens, says so in its notes, and keeps the name in its file until it is
 * saved.
 */
final class ChangingOrgan {

    private final Disk disk;
    private final SafeFile safe;
    private final Organs organs;
    private final JournalFiles journals;
    private final List<JsonFolder> shelves;
    private final Rewriting rewriting;

    ChangingOrgan(
            Disk disk,
            SafeFile safe,
            Organs organs,
            JournalFiles journals,
            List<JsonFolder> shelves,
            Rewriting rewriting) {
        this.rewriting = rewriting;
        this.journals = journals;
        this.disk = disk;
        this.safe = safe;
        this.organs = organs;
        this.shelves = shelves;
    }

    /** Saves the changed instrument, then its plans. */
    OrganOutcome save(OpenOrgan open, Instrument next, FormerNames change) {
        KnownOrgan known = new ChangedCalibration(open.organ(), next, change).organ();
        List<Path> files = filesOf(open);
        if (isConfusing(open.organ().former(), next, change)) {
            Rewritten first = rewrite(files, read -> true);
            List<String> stuck = new ArrayList<>(first.troubles());
            stuck.addAll(unsavedWork(open));
            if (first.left() > 0) {
                stuck.add("it was stopped, with " + first.left() + " to go.");
            }
            if (!stuck.isEmpty()) {
                return OrganOutcome.unsaved(
                        new SaveOutcome.NotSaved(
                                open.path(),
                                "A name that a plan knows from before could not be brought up to date: "
                                        + stuck.get(0)),
                        open);
            }
        }
        SaveOutcome outcome = organs.save(open.with(known));
        if (!(outcome instanceof SaveOutcome.Saved saved)) {
            return OrganOutcome.unsaved(outcome, open);
        }
        Rewritten rewritten = rewrite(files, read -> read.gone().isEmpty());
        return new OrganOutcome(
                outcome,
                new OpenOrgan(known, open.path(), saved.fingerprint()),
                rewritten.ids(),
                rewritten.missing(),
                forgotten(open.organ(), known),
                rewritten.troubles(),
                rewritten.left());
    }

    private static List<String> forgotten(KnownOrgan was, KnownOrgan known) {
        Stream<String> usual = was.experience().usual().stream()
                .map(HeardRegistration::name)
                .filter(name -> known.experience().usual(name).isEmpty())
                .map(name -> "the usual registration " + Quoted.text(name));
        return Stream.of(
                        usual,
                        fewer(was.experience().answers(), known.experience().answers(), "answer"),
                        fewer(was.calibration().kept(), known.calibration().kept(), "reading"))
                .flatMap(each -> each)
                .toList();
    }

    private static Stream<String> fewer(List<?> were, List<?> are, String what) {
        int fewer = were.size() - are.size();
        return fewer == 0 ? Stream.empty() : Stream.of(Count.of(fewer, what));
    }

    /**
     * True if a part now has the former name of another part, so that an old plan would draw the wrong one. What is put
     * back under the name of something gone is no such thing.
     */
    private static boolean isConfusing(FormerNames former, Instrument next, FormerNames change) {
        return isConfusing(former.divisions(), change.divisions(), name -> next.division(name)
                        .isPresent())
                || isConfusing(
                        former.stops(), change.stops(), name -> next.stop(name).isPresent())
                || isConfusing(former.couplers(), change.couplers(), name -> next.coupler(name)
                        .isPresent())
                || isConfusing(former.tremulants(), change.tremulants(), name -> next.tremulant(name)
                        .isPresent());
    }

    private static <T> boolean isConfusing(Map<T, Now<T>> former, Map<T, Now<T>> change, Predicate<T> isThere) {
        return former.entrySet().stream()
                .filter(entry -> isThere.test(entry.getKey()))
                .anyMatch(entry ->
                        entry.getValue().name().isPresent() || change.containsValue(Now.called(entry.getKey())));
    }

    private record Rewritten(List<String> ids, List<String> missing, List<String> troubles, int left) {}

    private Rewritten rewrite(List<Path> files, Predicate<PlanJson.Read> wanted) {
        List<String> ids = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        List<String> troubles = new ArrayList<>();
        int done = 0;
        while (done < files.size() && rewriting.goesOn(done, files.size())) {
            Path file = files.get(done++);
            try {
                byte[] before = FileBytes.read(disk, file);
                PlanJson.Read read = organs.readPlan(file);
                if (!read.gone().isEmpty()) {
                    missing.add(nameOf(file) + ": " + String.join(", ", read.gone()));
                }
                if (!read.outdated() || !wanted.test(read)) {
                    continue;
                }
                SaveOutcome outcome = safe.save(
                        file,
                        PlanJson.bytes(read.plan(), read.organ().instrument()),
                        now -> now.equals(Fingerprint.of(before)),
                        SafeFile.Durability.FORCED);
                if (outcome instanceof SaveOutcome.Saved) {
                    ids.add(nameOf(file));
                } else if (outcome instanceof SaveOutcome.NotSaved notSaved) {
                    troubles.add(nameOf(file) + ": " + notSaved.why());
                } else {
                    troubles.add(nameOf(file) + ": another program has just changed it.");
                }
            } catch (BadFile unreadable) {
                troubles.add(unreadable.getMessage());
            }
        }
        return new Rewritten(ids, missing, troubles, files.size() - done);
    }

    private static String nameOf(Path file) {
        return Autosaves.idOf(file).orElseGet(() -> JsonFolder.idOf(file));
    }

    /** Plans, unsaved work and what lies in the bin, if it is for this instrument. */
    private List<Path> filesOf(OpenOrgan open) {
        String id = JsonFolder.idOf(open.path());
        return shelves.stream().flatMap(shelf -> filesOf(shelf, id)).toList();
    }

    private Stream<Path> filesOf(JsonFolder shelf, String id) {
        try {
            return shelf.inOrder().stream()
                    .filter(file -> FileFormat.isId(JsonFolder.idOf(file))
                            || Autosaves.idOf(file).isPresent())
                    .filter(file -> isFor(file, id));
        } catch (BadFile noFolder) {
            return Stream.empty();
        }
    }

    /** Plans with unsaved work, which cannot be rewritten, if they are for this instrument. */
    private List<String> unsavedWork(OpenOrgan open) {
        String id = JsonFolder.idOf(open.path());
        List<String> unsaved = new ArrayList<>();
        for (JsonFolder shelf : shelves) {
            try {
                for (Path file : shelf.inOrder()) {
                    if (journals.hasSteps(file) && journals.isFor(file, id)) {
                        unsaved.add(JournalFiles.idOf(file).orElseThrow()
                                + " has unsaved changes. Open it, and save or discard them first.");
                    }
                }
            } catch (BadFile noFolder) {
                return unsaved;
            }
        }
        return unsaved;
    }

    /** True if a file is a plan for an instrument; a broken file is reported when it is opened. */
    private boolean isFor(Path file, String id) {
        try {
            Found root = JsonTree.read(file, FileBytes.read(disk, file));
            return root.hasText(ServiceFields.INSTRUMENT.name(), id);
        } catch (BadFile broken) {
            return false;
        }
    }
}
