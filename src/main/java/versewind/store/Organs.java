package versewind.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import versewind.organ.Instrument;
import versewind.organ.Nearest;
import versewind.organ.Quoted;
import versewind.schema.FileFormat;
import versewind.schema.Found;
import versewind.schema.KnownOrgan;
import versewind.schema.Refused;
import versewind.stoplist.ReadOrgan;

/** The instruments of a library: listed, opened, found for a plan, saved. */
final class Organs {

    private static final String INSTRUMENTS = "instruments";

    private final Disk disk;
    private final SafeFile safe;
    private final JsonFolder shelf;
    private final Map<Path, ReadOrgan> read = new ConcurrentHashMap<>();

    /** An instrument, and what its file held when it was read: plans of one organ read it once. */
    private record ReadOrgan(Fingerprint fingerprint, KnownOrgan organ) {}

    Organs(Path library, Disk disk, SafeFile safe) {
        this.disk = disk;
        this.safe = safe;
        this.shelf = new JsonFolder(library.resolve(INSTRUMENTS), disk, "organ");
    }

    JsonFolder shelf() {
        return shelf;
    }

    /** The instruments, by their ids. Reads the head of each file only. */
    List<InstrumentEntry> entries() throws BadFile {
        List<InstrumentEntry> entries = new ArrayList<>();
        for (Path file : shelf.inOrder()) {
            String id = JsonFolder.idOf(file);
            if (FileFormat.isId(id)) {
                Map<String, String> head = Head.of(file);
                entries.add(
                        new InstrumentEntry(id, file, Head.titled(head, "name", id), head.getOrDefault("place", "")));
            }
        }
        return List.copyOf(entries);
    }

    /** Opens an instrument, by its id or the path of its file, to be written again. */
    OpenOrgan open(String idOrPath) throws BadFile {
        return open(shelf.find(idOrPath));
    }

    /** Opens the instrument that a plan is made for, to be written again. */
    OpenOrgan openOf(OpenPlan plan) throws BadFile {
        String id = plan.plan().instrument();
        for (JsonFolder each : shelvesFor(plan.path())) {
            if (disk.exists(each.path(id))) {
                requireInside(each.path(id));
                return open(each.path(id));
            }
        }
        return open(id);
    }

    private OpenOrgan open(Path path) throws BadFile {
        byte[] bytes = FileBytes.read(disk, path);
        return new OpenOrgan(InstrumentJson.read(path, bytes), path, Fingerprint.of(bytes));
    }

    /** The plan in a file, for the instrument that it names. */
    PlanJson.Read readPlan(Path path) throws BadFile {
        return PlanJson.read(path, FileBytes.read(disk, path), (id, found) -> of(path, id, found));
    }

    /** The instrument that a plan names. */
    KnownOrgan of(Path plan, String id, Found found) throws BadFile, Refused {
        List<JsonFolder> shelves = shelvesFor(plan);
        for (JsonFolder each : shelves) {
            if (disk.exists(each.path(id))) {
                requireInside(each.path(id));
                return known(each.path(id));
            }
        }
        Set<Path> places = new LinkedHashSet<>();
        Set<String> ids = new TreeSet<>();
        for (JsonFolder each : shelves) {
            places.add(each.path(id).toAbsolutePath().normalize());
            ids.addAll(each.ids());
        }
        throw found.bad(
                "the instrument " + Quoted.text(id) + " is missing: there is no "
                        + places.stream().map(Path::toString).collect(Collectors.joining(" and no ")),
                Nearest.sentence(id, ids, "The instruments are"));
    }

    /** A plan that somebody hands on cannot have a file read that lies elsewhere than among the organs. */
    private void requireInside(Path file) throws BadFile {
        Path here = file.toAbsolutePath();
        try {
            Path target = disk.follow(here);
            if (!target.equals(here) && !disk.isInside(target, here.getParent())) {
                throw BadFile.whole(
                        file,
                        "this link leads out of the folder, to " + Quoted.plain(target.toString()),
                        "Put the file itself here.");
            }
        } catch (IOException trouble) {
            throw BadFile.whole(file, "the link could not be followed", SafeFile.sentence(trouble));
        }
    }

    private List<JsonFolder> shelvesFor(Path plan) {
        Path beside = plan.resolveSibling("..").resolve(INSTRUMENTS).normalize();
        return List.of(new JsonFolder(beside, disk, "organ"), shelf);
    }

    private KnownOrgan known(Path path) throws BadFile {
        byte[] bytes = FileBytes.read(disk, path);
        Fingerprint now = Fingerprint.of(bytes);
        ReadOrgan before = read.get(path);
        if (before != null && before.fingerprint().equals(now)) {
            return before.organ();
        }
        KnownOrgan organ = InstrumentJson.read(path, bytes);
        read.put(path, new ReadOrgan(now, organ));
        return organ;
    }

    /** Saves an instrument to its file, unless another program has changed it since it was read. */
    SaveOutcome save(OpenOrgan open) {
        return save(open.path(), InstrumentJson.bytes(open.organ()), open.fingerprint()::equals);
    }

    /** Writes an instrument to a new file; what is there already is left as it is. */
    SaveOutcome saveNew(Path path, Instrument instrument) {
        return save(path, InstrumentJson.bytes(instrument), Fingerprint.NO_FILE::equals);
    }

    private SaveOutcome save(Path path, byte[] bytes, Predicate<Fingerprint> mayReplace) {
        try {
            InstrumentJson.read(path, bytes);
        } catch (BadFile unreadable) {
            return SaveOutcome.NotSaved.asItWouldNotOpen(path, unreadable);
        }
        return safe.save(path, bytes, mayReplace, SafeFile.Durability.FORCED);
    }
}
