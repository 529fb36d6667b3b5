package versewind.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.plan.Hymn;
import versewind.plan.Sought;
import versewind.schema.FileFormat;

/**
 * The plans of a library, to be read a few at a time: first their files, the one edited last at the head, then the head
 * of each. What was read is kept, and read again only when a file has changed.
 */
public final class Catalogue {

    private final JsonFolder plans;
    private final Disk disk;
    private final JournalFiles journals;
    private final Map<PlanFile, PlanEntry> known = new ConcurrentHashMap<>();

    Catalogue(JsonFolder plans, Disk disk, JournalFiles journals) {
        this.journals = journals;
        this.plans = plans;
        this.disk = disk;
    }

    /** The files of all plans, those edited last first; also of plans of which there is only unsaved work. */
    public List<PlanFile> files() throws BadFile {
        Set<String> drafted = new TreeSet<>();
        Map<String, Path> found = new HashMap<>();
        for (Path file : plans.files()) {
            String id = JsonFolder.idOf(file);
            if (FileFormat.isId(id)) {
                found.put(id, file);
            } else {
                Autosaves.idOf(file)
                        .or(() -> JournalFiles.idOf(file).filter(any -> journals.hasSteps(file)))
                        .filter(FileFormat::isId)
                        .ifPresent(drafted::add);
            }
        }
        List<PlanFile> files = new ArrayList<>(found.size());
        for (Map.Entry<String, Path> each : found.entrySet()) {
            String id = each.getKey();
            files.add(new PlanFile(id, each.getValue(), drafted.contains(id), edited(each.getValue())));
        }
        for (String id : drafted) {
            if (!found.containsKey(id)) {
                files.add(new PlanFile(id, plans.path(id), true, edited(Autosaves.pathOf(plans.path(id)))));
            }
        }
        files.sort(Catalogue::lastEditedFirst);
        if (!known.isEmpty()) {
            known.keySet().retainAll(Set.copyOf(files));
        }
        return List.copyOf(files);
    }

    /** Written out, since it is called very often before the compiler of the machine has seen it. */
    private static int lastEditedFirst(PlanFile one, PlanFile other) {
        int later = other.edited().compareTo(one.edited());
        return later != 0 ? later : one.id().compareTo(other.id());
    }

    /** The head of a plan's file; of a broken file, the part before the break. */
    public PlanEntry read(PlanFile file) {
        return known.computeIfAbsent(file, this::readHead);
    }

    /** Whether a plan's file has the number, title or tune of a hymn somewhere; false for one that cannot be read. */
    public boolean mentions(PlanFile file, Hymn hymn) {
        Set<String> texts =
                texts(file).stream().map(text -> Sought.plain(text).strip()).collect(Collectors.toSet());
        return Stream.of(hymn.number(), hymn.title(), hymn.tune())
                .filter(each -> !each.isBlank())
                .anyMatch(each -> texts.contains(Sought.plain(each).strip()));
    }

    /** All texts in a plan's file, whatever field they stand in; of a broken file, those before the break. */
    public List<String> texts(PlanFile file) {
        return Head.texts(file.path());
    }

    private PlanEntry readHead(PlanFile file) {
        Map<String, String> head = Head.of(disk.exists(file.path()) ? file.path() : Autosaves.pathOf(file.path()));
        return new PlanEntry(
                file, Head.titled(head, "title", file.id()), date(head), head.getOrDefault("instrument", ""));
    }

    /** All plans by their ids. */
    public List<PlanEntry> read() throws BadFile {
        return files().stream()
                .map(this::read)
                .sorted(Comparator.comparing(entry -> entry.file().id()))
                .toList();
    }

    private Instant edited(Path file) {
        try {
            return disk.modified(file);
        } catch (IOException gone) {
            return Instant.EPOCH;
        }
    }

    private static Optional<LocalDate> date(Map<String, String> head) {
        try {
            return Optional.ofNullable(head.get("date")).map(LocalDate::parse);
        } catch (DateTimeException noDate) {
            return Optional.empty();
        }
    }
}
