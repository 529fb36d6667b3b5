package versewind.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.Player;
import versewind.schema.FileFormat;
import versewind.schema.Found;
import versewind.schema.KnownOrgan;
import versewind.schema.OrganNames;
import versewind.schema.PlayerFields;
import versewind.schema.Refused;

/**
 * A folder with instruments in {@code instruments/} and plans in {@code plans/}, one file each, named by its id, and
 * who plays new plans in {@code player.json}.
 *
 * <p>A plan may also lie elsewhere: its instrument is looked for in {@code ../instruments/} beside its own folder
 * first, then in this folder's.
 */
public final class Library {
    private static final String PLAYER = "player.json";

    private final Path folder;
    private final Disk disk;
    private final SafeFile safe;
    private final Organs organs;
    private final JournalFiles journals;
    private final KeptWork kept;
    private final Versions versions;
    private final JsonFolder plans;
    private final Catalogue catalogue;
    private final JsonFolder binned;
    private final Bin bin;

    /** The library in a folder, which may be empty or not there yet. */
    public Library(Path folder) {
        this(folder, new SystemDisk(), Optional.empty());
    }

    Library(Path folder, Disk disk) {
        this(folder, disk, Optional.empty());
    }

    private Library(Path folder, Disk disk, Optional<Path> elsewhere) {
        this.folder = folder;
        this.disk = disk;
        this.safe = new SafeFile(disk, folder);
        this.organs = new Organs(folder, disk, safe);
        this.journals = new JournalFiles(disk, elsewhere);
        this.versions = new Versions(disk, safe);
        this.plans = new JsonFolder(folder.resolve("plans"), disk, "plan");
        this.catalogue = new Catalogue(plans, disk, journals);
        this.binned = new JsonFolder(folder.resolve("bin"), disk, "plan");
        this.bin = new Bin(folder, plans, binned, disk, journals, versions);
        this.kept = new KeptWork(disk, journals, organs, bin);
    }

    /**
     * The library in a folder, which is made with instruments and plans to begin with if it is not there yet.
     *
     * @param examples the folder whose instruments and plans are copied; without one nothing is made before it is
     *     needed
     */
    public static Library founded(Path folder, Optional<Path> examples) throws BadFile {
        if (examples.isPresent() && !Files.exists(folder)) {
            LibrarySetup.of(folder, examples.get());
        }
        return new Library(folder);
    }

    /** The same library, whose edits go to another folder where they cannot be kept beside their plan. */
    public Library keepingElsewhere(Path elsewhere) {
        return new Library(folder, disk, Optional.of(elsewhere));
    }

    /** The plans, to be listed. */
    public Catalogue catalogue() {
        return catalogue;
    }

    /** Who plays new plans: with pedals, where nothing else was ever chosen. */
    public Player player() throws BadFile {
        Path path = folder.resolve(PLAYER);
        if (!disk.exists(path)) {
            return Player.WITH_PEDALS;
        }
        try {
            Found root = JsonTree.read(path, FileBytes.read(disk, path));
            FileFormat.require(root);
            return PlayerFields.TABLE.read(root, OrganNames.NONE);
        } catch (Refused wrong) {
            throw BadFile.of(path, wrong);
        }
    }

    /** Writes who plays new plans. */
    public SaveOutcome savePlayer(Player player) {
        byte[] bytes = JsonText.bytes(PlayerFields.TABLE, player, OrganNames.NONE);
        return safe.save(folder.resolve(PLAYER), bytes, now -> true, SafeFile.Durability.FORCED);
    }

    /** Where plans go that are no longer wanted. */
    public Bin bin() {
        return bin;
    }

    /**
     * Puts a copy of a plan's file into the bin, for when it is written over.
     *
     * @return where the copy lies
     */
    public Path keepCopy(OpenPlan open) throws BadFile {
        byte[] bytes = FileBytes.read(disk, open.path());
        String name = open.path().getFileName().toString().replaceFirst("\\.json$", "");
        Path copy = binned.path(binned.freeId(name));
        try {
            disk.makeFolder(copy.toAbsolutePath().getParent());
        } catch (IOException trouble) {
            throw BadFile.whole(copy, "the folder of the bin could not be made", SafeFile.sentence(trouble));
        }
        SaveOutcome outcome = safe.save(copy, bytes, Fingerprint.NO_FILE::equals, SafeFile.Durability.FORCED);
        if (outcome instanceof SaveOutcome.NotSaved failed) {
            throw BadFile.whole(copy, "the plan as it was could not be kept", failed.why());
        }
        return copy;
    }

    /** Gives a saved plan another title, and its file the name that goes with it. */
    public Renaming renamePlan(String id, String title) throws BadFile {
        return Renaming.of(this, plans, bin, id, title);
    }

    /** The instruments, by their ids. Reads the head of each file only. */
    public List<InstrumentEntry> instruments() throws BadFile {
        return organs.entries();
    }

    /** The folder of its plans. */
    public Path plansFolder() {
        return folder.resolve("plans").toAbsolutePath().normalize();
    }

    /** Whether a plan lies in it. */
    public boolean holds(Path plan) {
        return plansFolder().equals(plan.toAbsolutePath().normalize().getParent());
    }

    /**
     * Opens a plan of this library, or one that lies elsewhere.
     *
     * @param idOrPath "harvest", or the path of a file: "plans/harvest.json"
     */
    public OpenPlan openPlan(String idOrPath) throws BadFile {
        return openPlan(plans.find(idOrPath));
    }

    /** Opens the plan in a file, to be worked on. Where there is only unsaved work, it is the plan. */
    public OpenPlan openPlan(Path path) throws BadFile {
        if (!disk.exists(path) && kept.of(path, Optional.empty()).orElse(null) instanceof Autosave.Kept work) {
            return new OpenPlan(work.plan(), work.organ(), path, Fingerprint.NO_FILE, Optional.of(work));
        }
        OpenPlan open = readPlan(path);
        return new OpenPlan(
                open.plan(), open.organ(), path, open.fingerprint(), kept.of(path, Optional.of(open.plan())));
    }

    /** Reads the plan in a file, without a look at unsaved work. */
    public OpenPlan readPlan(Path path) throws BadFile {
        byte[] bytes = FileBytes.read(disk, path);
        PlanJson.Read read = PlanJson.read(path, bytes, (id, found) -> organs.of(path, id, found));
        return new OpenPlan(read.plan(), read.organ(), path, Fingerprint.of(bytes), Optional.empty());
    }

    /**
     * Reads the plan in a file if its text is wanted; one with escaped characters is read in any case.
     *
     * @param wanted whether the text of the file, not yet understood, is worth reading
     */
    public Optional<OpenPlan> readPlan(Path path, Predicate<String> wanted) throws BadFile {
        String text = new String(FileBytes.read(disk, path), StandardCharsets.UTF_8);
        return text.indexOf('\\') >= 0 || wanted.test(text) ? Optional.of(readPlan(path)) : Optional.empty();
    }

    /** Begins the journal of a plan that is worked on. */
    public Journal journal(OpenPlan open) {
        return Journal.of(journals, open);
    }

    /**
     * Takes up unsaved work that was left over, in the journal of the plan.
     *
     * @return the plan as it was when that work began, to be saved again
     */
    public OpenPlan restore(OpenPlan open, Autosave.Kept work, Journal journal) throws BadFile {
        try {
            return kept.restore(open, work, journal);
        } catch (IOException trouble) {
            throw BadFile.whole(work.file(), "the unsaved work could not be restored", SafeFile.sentence(trouble));
        }
    }

    /** Moves unsaved work that was left over to the bin. */
    public void discard(Autosave work) throws BadFile {
        kept.discard(work);
    }

    /** The last versions of a plan that were saved before the one in its file, the latest first. */
    public List<Version> versions(String id) {
        return versions.of(plans.path(id));
    }

    /** Where the version of a plan or an organ is kept that its file held; empty where it could not be kept. */
    public Optional<Path> keptVersion(Path file, Fingerprint held) {
        try {
            return versions.kept(file, held);
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    /** Keeps an organ's file among its versions, for when it is written over. */
    public void keepVersion(OpenOrgan open) throws BadFile {
        Optional<String> trouble = versions.keep(open.path());
        if (trouble.isPresent()) {
            throw BadFile.whole(open.path(), "the organ as it was could not be kept", trouble.get());
        }
    }

    /** Who else has a plan open now. */
    public List<Presence> others(OpenPlan open) {
        return journals.others(open.path(), Optional.empty());
    }

    /** Reads an earlier version of a plan. */
    public Plan readVersion(String id, Version version) throws BadFile {
        try {
            byte[] bytes = disk.readOwn(version.file(), JsonTree.LARGEST_FILE + 1);
            Path path = plans.path(id);
            return PlanJson.read(version.file(), bytes, (name, found) -> organs.of(path, name, found))
                    .plan();
        } catch (IOException trouble) {
            throw BadFile.whole(version.file(), "the version could not be read", SafeFile.sentence(trouble));
        }
    }

    /** Reads a plan that comes from elsewhere than a file; its instrument is one of this library. */
    public OpenPlan readPlan(InputStream in) throws BadFile {
        Path name = Path.of("standard input");
        byte[] bytes = FileBytes.read(in, name);
        PlanJson.Read read = PlanJson.read(name, bytes, (id, found) -> organs.of(plans.path("plan"), id, found));
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
        return organs.open(idOrPath);
    }

    /** Opens the instrument that a plan is made for, to be written again. */
    public OpenOrgan openOrganOf(OpenPlan open) throws BadFile {
        return organs.openOf(open);
    }

    /** Lets others see that an instrument is open to be changed. */
    public OrganHold hold(OpenOrgan open) {
        return OrganHold.of(journals, open.path());
    }

    /** Saves an instrument to its file, unless another program has changed it since it was read. */
    public SaveOutcome saveOrgan(OpenOrgan open) {
        return organs.save(open);
    }

    /**
     * Saves an instrument that was changed, and writes the new names into the plans of this library that are made for
     * it.
     *
     * @param open as it was read
     * @param next as it is now
     * @param change what became of everything that has another name or is gone
     * @param rewriting is asked before each plan
     */
    public OrganOutcome saveChangedOrgan(OpenOrgan open, Instrument next, FormerNames change, Rewriting rewriting) {
        return new ChangingOrgan(disk, safe, organs, journals, List.of(plans, binned), rewriting)
                .save(open, next, change);
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
     * Saves a plan to its file, and keeps what that held among the versions.
     *
     * @throws IllegalArgumentException if the plan is not made for its instrument
     */
    public SaveOutcome savePlan(OpenPlan open, WhenChanged whenChanged) {
        byte[] bytes = PlanJson.bytes(open.plan(), open.instrument());
        return save(open, bytes, whenChanged);
    }

    private SaveOutcome save(OpenPlan open, byte[] bytes, WhenChanged whenChanged) {
        Path path = open.path();
        try {
            PlanJson.read(path, bytes, (id, found) -> open.organ());
        } catch (BadFile unreadable) {
            return SaveOutcome.NotSaved.asItWouldNotOpen(path, unreadable);
        }
        return switch (whenChanged) {
            case REFUSE -> {
                versions.keep(path);
                yield safe.save(path, bytes, now -> now.equals(open.fingerprint()), SafeFile.Durability.FORCED);
            }
            case OVERWRITE -> {
                if (disk.exists(path)) {
                    try {
                        organs.readPlan(path);
                    } catch (BadFile unreadable) {
                        yield new SaveOutcome.NotSaved(
                                path,
                                "The file there now cannot be read, so it was not overwritten. Save under another"
                                        + " name.");
                    }
                }
                Optional<String> trouble = versions.keep(path);
                yield trouble.isPresent()
                        ? new SaveOutcome.NotSaved(path, "The other version could not be kept. " + trouble.get())
                        : safe.save(path, bytes, now -> true, SafeFile.Durability.FORCED);
            }
        };
    }

    /**
     * The file of a new instrument of this library.
     *
     * @throws IllegalArgumentException if no file can have this id
     */
    public Path newInstrument(String id) {
        return organs.shelf().newPath(id);
    }

    /** Writes an instrument to a new file, in this library or elsewhere; what is there already is left as it is. */
    public SaveOutcome saveNewInstrument(Path path, Instrument instrument) {
        return organs.saveNew(path, instrument);
    }

    /**
     * Writes a text that was made from a plan, such as a sheet. A file that is there already is replaced only if it is
     * empty or was made the same way.
     *
     * @param mark what stands in every text that is made this way
     * @param plan whose mode a new file has
     */
    public SaveOutcome saveMade(Path path, String text, String mark, Path plan) {
        return safe.saveMade(path, text, mark, plan);
    }

    /** An id for a new plan of this title: ASCII, lower case, hyphens, and no other plan's. */
    public String freePlanId(String title) {
        return plans.freeId(title);
    }

    /** An id for a new instrument of this name: ASCII, lower case, hyphens, and no other instrument's. */
    public String freeInstrumentId(String name) {
        return organs.shelf().freeId(name);
    }
}
