package versewind.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.workshop.OrganDraft;

/**
 * A folder with instruments in {@code instruments/} and plans in {@code plans/}, one file each, named by its id.
 *
 * <p>A plan may also lie elsewhere: its instrument is looked for in {@code ../instruments/} beside its own folder first,
 * then in this folder's.
 */
public final class Library {
    private static final String INSTRUMENTS = "instruments";

    private final Disk disk;
    private final SafeFile safe;
    private final Shelf plans;
    private final Shelf instruments;
    private final Catalogue catalogue;
    private final Shelf binned;
    private final Bin bin;
    private final Map<Path, ReadOrgan> readOrgans = new ConcurrentHashMap<>();

    /** An instrument, and what its file held when it was read: plans of one organ read it once. */
    private record ReadOrgan(Fingerprint fingerprint, KnownOrgan organ) {}

    /** The library in a folder, which may be empty or not there yet. */
    public Library(Path folder) {
        this(folder, new SystemDisk());
    }

    Library(Path folder, Disk disk) {
        this.disk = disk;
        this.safe = new SafeFile(disk);
        this.plans = new Shelf(folder.resolve("plans"), disk, "plan");
        this.instruments = new Shelf(folder.resolve(INSTRUMENTS), disk, "organ");
        this.catalogue = new Catalogue(plans, disk);
        this.binned = new Shelf(folder.resolve("bin"), disk, "plan");
        this.bin = new Bin(plans, binned, disk);
    }

    /**
     * The library in a folder, which is made with instruments and plans to begin with if it is not there yet.
     *
     * @param examples the folder whose instruments and plans are copied; without one nothing is made before it is needed
     */
    public static Library founded(Path folder, Optional<Path> examples) throws BadFile {
        if (examples.isPresent() && !Files.exists(folder)) {
            Founding.of(folder, examples.get());
        }
        return new Library(folder);
    }

    /** The plans, to be listed. */
    public Catalogue catalogue() {
        return catalogue;
    }

    /** Where plans go that are no longer wanted. */
    public Bin bin() {
        return bin;
    }

    /** Gives a saved plan another title, and its file the name that goes with it. */
    public Renaming renamePlan(String id, String title) throws BadFile {
        return Renaming.of(this, plans, bin, id, title);
    }

    /** The instruments, by their ids. Reads the head of each file only. */
    public List<InstrumentEntry> instruments() throws BadFile {
        List<InstrumentEntry> entries = new ArrayList<>();
        for (Path file : instruments.inOrder()) {
            String id = Shelf.idOf(file);
            if (Format.isId(id)) {
                Map<String, String> head = Head.of(file);
                entries.add(
                        new InstrumentEntry(id, file, Head.titled(head, "name", id), head.getOrDefault("place", "")));
            }
        }
        return List.copyOf(entries);
    }

    /**
     * Opens a plan of this library, or one that lies elsewhere.
     *
     * @param idOrPath "harvest", or the path of a file: "plans/harvest.json"
     */
    public OpenPlan openPlan(String idOrPath) throws BadFile {
        return openPlan(plans.find(idOrPath));
    }

    /** Opens the plan in a file. Where there is only unsaved work, it is the plan. */
    public OpenPlan openPlan(Path path) throws BadFile {
        Path draftPath = Drafts.pathOf(path);
        if (!disk.exists(path) && disk.exists(draftPath)) {
            PlanReader.Read read = readPlan(draftPath);
            return new OpenPlan(read.plan(), read.organ(), path, Fingerprint.NO_FILE, draftOf(path));
        }
        byte[] bytes = FileBytes.read(disk, path);
        PlanReader.Read read = PlanReader.read(path, bytes, id -> instrumentOf(path, id));
        Optional<Draft> draft = draftOf(path).filter(each -> !isSame(each, read.plan()));
        return new OpenPlan(read.plan(), read.organ(), path, Fingerprint.of(bytes), draft);
    }

    /** Reads a plan that comes from elsewhere than a file; its instrument is one of this library. */
    public OpenPlan readPlan(InputStream in) throws BadFile {
        Path name = Path.of("standard input");
        byte[] bytes = FileBytes.read(in, name);
        PlanReader.Read read = PlanReader.read(name, bytes, id -> instrumentOf(plans.path("plan"), id));
        return new OpenPlan(read.plan(), read.organ(), name, Fingerprint.NO_FILE, Optional.empty());
    }

    /**
     * Opens an instrument of this library, or one that lies elsewhere.
     *
     * @param idOrPath "marlow-fen", or the path of a file: "instruments/marlow-fen.json"
     */
    public Instrument openInstrument(String idOrPath) throws BadFile {
        return openOrgan(idOrPath).organ().instrument();
    }

    /** Opens an instrument, with what is known of it, to be written again. */
    public OpenOrgan openOrgan(String idOrPath) throws BadFile {
        return openOrgan(instruments.find(idOrPath));
    }

    private OpenOrgan openOrgan(Path path) throws BadFile {
        byte[] bytes = FileBytes.read(disk, path);
        return new OpenOrgan(InstrumentReader.readKnown(path, bytes), path, Fingerprint.of(bytes));
    }

    /** Opens the instrument that a plan is made for, to be written again. */
    public OpenOrgan openOrganOf(OpenPlan open) throws BadFile {
        for (Shelf each : List.of(besideOf(open.path()), instruments)) {
            Path path = each.path(open.plan().instrument());
            if (disk.exists(path)) {
                return openOrgan(path);
            }
        }
        return openOrgan(open.plan().instrument());
    }

    private Shelf besideOf(Path plan) {
        return new Shelf(plan.resolveSibling("..").resolve(INSTRUMENTS).normalize(), disk, "organ");
    }

    /** Saves an instrument to its file, unless somebody else has changed that since it was read. */
    public SaveOutcome saveOrgan(OpenOrgan open) {
        byte[] bytes = InstrumentWriter.bytes(open.organ());
        try {
            InstrumentReader.read(open.path(), bytes);
        } catch (BadFile unreadable) {
            return wouldNotOpen(open.path(), unreadable);
        }
        return safe.save(open.path(), bytes, now -> now.equals(open.fingerprint()), SafeFile.Durability.FORCED);
    }

    /**
     * Saves an instrument that was changed, and writes the new names into the plans of this library that are made for it.
     *
     * @param open as it was read
     * @param next as it is now
     * @param change what became of everything that has another name or is gone
     */
    public OrganOutcome saveChangedOrgan(OpenOrgan open, Instrument next, FormerNames change) {
        return new ChangingOrgan(disk, safe, List.of(plans, binned), this::readPlan).save(open, next, change);
    }

    /** Keeps the draft of an instrument beside its file, in place of what was kept before. */
    public SaveOutcome keepOrganDraft(OpenOrgan open, OrganDraft draft) {
        return safe.save(
                Drafts.pathOf(open.path()),
                OrganDraftFile.bytes(draft, open.fingerprint()),
                now -> true,
                SafeFile.Durability.QUICK);
    }

    /** The draft that was kept beside an instrument's file, if there is one that can be read. */
    public Optional<OrganDraft> organDraftOf(OpenOrgan open) {
        Path path = Drafts.pathOf(open.path());
        if (!disk.exists(path)) {
            return Optional.empty();
        }
        try {
            OrganDraft draft = OrganDraftFile.read(path, FileBytes.read(disk, path), open.fingerprint());
            return Optional.of(draft)
                    .filter(each -> !each.equals(OrganDraft.of(open.organ().instrument())));
        } catch (BadFile unreadable) {
            return Optional.empty();
        }
    }

    /** Takes away the draft that was kept beside an instrument's file. */
    public void dropOrganDraft(OpenOrgan open) {
        dropDraft(open.path());
    }

    /**
     * A plan that has no file yet; nothing is written until it is saved.
     *
     * @param id from {@link #freePlanId}
     * @throws IllegalArgumentException if no file can have this id
     */
    public OpenPlan newPlan(String id, Plan plan, KnownOrgan organ) {
        return new OpenPlan(plan, organ, plans.newPath(id), Fingerprint.NO_FILE, Optional.empty());
    }

    /**
     * Saves a plan to its file, and drops the work that was kept beside it.
     *
     * @throws IllegalArgumentException if the plan is not made for its instrument
     */
    public SaveOutcome savePlan(OpenPlan open, WhenChanged whenChanged) {
        byte[] bytes = PlanWriter.bytes(open.plan(), open.instrument());
        SaveOutcome outcome = save(open, bytes, whenChanged);
        if (outcome instanceof SaveOutcome.Saved) {
            dropDraft(open.path());
        }
        return outcome;
    }

    private SaveOutcome save(OpenPlan open, byte[] bytes, WhenChanged whenChanged) {
        Path path = open.path();
        try {
            PlanReader.read(path, bytes, id -> open.organ());
        } catch (BadFile unreadable) {
            return wouldNotOpen(path, unreadable);
        }
        return switch (whenChanged) {
            case REFUSE -> safe.save(path, bytes, now -> now.equals(open.fingerprint()), SafeFile.Durability.FORCED);
            case OVERWRITE -> {
                if (disk.exists(path)) {
                    try {
                        readPlan(path);
                    } catch (BadFile unreadable) {
                        yield new SaveOutcome.NotSaved(
                                path,
                                "What is there now cannot be read, and is left as it is. Save under another name.");
                    }
                }
                yield safe.save(path, bytes, now -> true, SafeFile.Durability.FORCED);
            }
        };
    }

    /**
     * Writes an instrument to a new file of this library.
     *
     * @param id from {@link #freeInstrumentId}
     * @throws IllegalArgumentException if no file can have this id
     */
    public SaveOutcome saveNewInstrument(String id, Instrument instrument) {
        return saveNewInstrument(instruments.newPath(id), instrument);
    }

    /** Writes an instrument to a new file, in this library or elsewhere; what is there already is left as it is. */
    public SaveOutcome saveNewInstrument(Path path, Instrument instrument) {
        byte[] bytes = InstrumentWriter.bytes(instrument);
        try {
            InstrumentReader.read(path, bytes);
        } catch (BadFile unreadable) {
            return wouldNotOpen(path, unreadable);
        }
        return safe.save(path, bytes, Fingerprint.NO_FILE::equals, SafeFile.Durability.FORCED);
    }

    /**
     * Writes a text that was made from a plan, such as a sheet. A file that is there already is replaced only if it is
     * empty or was made the same way.
     *
     * @param mark what stands in every text that is made this way
     */
    public SaveOutcome saveMade(Path path, String text, String mark) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        Fingerprint there = Fingerprint.NO_FILE;
        if (disk.exists(path)) {
            try {
                byte[] old = FileBytes.read(disk, path);
                if (old.length > 0 && !new String(old, StandardCharsets.UTF_8).contains(mark)) {
                    return new SaveOutcome.NotSaved(
                            path, "There is a file of another kind under this name. Choose another.");
                }
                there = Fingerprint.of(old);
            } catch (BadFile unreadable) {
                return new SaveOutcome.NotSaved(
                        path, "It cannot be replaced: " + unreadable.problem() + "." + " Choose another name.");
            }
        }
        return safe.save(path, bytes, there::equals, SafeFile.Durability.FORCED);
    }

    static SaveOutcome wouldNotOpen(Path path, BadFile unreadable) {
        return new SaveOutcome.NotSaved(
                path, "It would not open again, as " + unreadable.problem() + ". " + unreadable.remedy());
    }

    /** Keeps unsaved work beside a plan's file, in place of what was kept before. Fast: does not wait for the medium. */
    public SaveOutcome keepDraft(OpenPlan open) {
        if (open.draft().filter(Draft.Unreadable.class::isInstance).isPresent()) {
            try {
                setAsideUnreadable(open.path());
            } catch (IOException trouble) {
                return new SaveOutcome.NotSaved(Drafts.pathOf(open.path()), SafeFile.sentence(trouble));
            }
        }
        return safe.save(
                Drafts.pathOf(open.path()),
                PlanWriter.bytes(open.plan(), open.instrument()),
                now -> true,
                SafeFile.Durability.QUICK);
    }

    /** Work that cannot be read may still be saved by hand: it gets another name rather than being written over. */
    private void setAsideUnreadable(Path path) throws IOException {
        if (draftOf(path).filter(Draft.Unreadable.class::isInstance).isEmpty()) {
            return;
        }
        int number = 1;
        while (disk.exists(Drafts.asidePathOf(path, number))) {
            number++;
        }
        disk.move(Drafts.pathOf(path), Drafts.asidePathOf(path, number));
    }

    /** The unsaved work that was kept beside a plan's file. */
    public Optional<Draft> draftOf(Path path) {
        Path draft = Drafts.pathOf(path);
        if (!disk.exists(draft)) {
            return Optional.empty();
        }
        try {
            PlanReader.Read read = readPlan(draft);
            return Optional.of(new Draft.Kept(read.plan(), read.organ(), disk.modified(draft)));
        } catch (BadFile why) {
            return Optional.of(new Draft.Unreadable(why));
        } catch (IOException gone) {
            return Optional.empty();
        }
    }

    /** Takes away the unsaved work that was kept beside a plan's file, if there is any. */
    public void dropDraft(Path path) {
        try {
            disk.delete(Drafts.pathOf(path));
        } catch (IOException cannot) {
            // Work that is left over is offered again the next time; that is better than to stop here.
            return;
        }
    }

    /** An id for a new plan of this title: ASCII, lower case, hyphens, and no other plan's. */
    public String freePlanId(String title) {
        return plans.freeId(title);
    }

    /** An id for a new instrument of this name: ASCII, lower case, hyphens, and no other instrument's. */
    public String freeInstrumentId(String name) {
        return instruments.freeId(name);
    }

    private PlanReader.Read readPlan(Path path) throws BadFile {
        return PlanReader.read(path, FileBytes.read(disk, path), id -> instrumentOf(path, id));
    }

    private KnownOrgan readOrgan(Path path) throws BadFile {
        byte[] bytes = FileBytes.read(disk, path);
        Fingerprint now = Fingerprint.of(bytes);
        ReadOrgan before = readOrgans.get(path);
        if (before != null && before.fingerprint().equals(now)) {
            return before.organ();
        }
        KnownOrgan organ = InstrumentReader.readKnown(path, bytes);
        readOrgans.put(path, new ReadOrgan(now, organ));
        return organ;
    }

    private KnownOrgan instrumentOf(Path plan, Found id) throws BadFile {
        Shelf beside = besideOf(plan);
        for (Shelf each : List.of(beside, instruments)) {
            if (disk.exists(each.path(id.text()))) {
                return readOrgan(each.path(id.text()));
            }
        }
        Set<Path> places = new LinkedHashSet<>();
        Set<String> ids = new TreeSet<>();
        for (Shelf each : List.of(beside, instruments)) {
            places.add(each.path(id.text()).toAbsolutePath().normalize());
            ids.addAll(each.ids());
        }
        throw id.bad(
                "the instrument " + Quoted.text(id.text()) + " is missing: there is no "
                        + places.stream().map(Path::toString).collect(Collectors.joining(" and no ")),
                Nearest.sentence(id.text(), ids, "The instruments there are"));
    }

    private static boolean isSame(Draft draft, Plan plan) {
        return draft instanceof Draft.Kept kept && kept.plan().equals(plan);
    }
}
