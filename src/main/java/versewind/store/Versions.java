package versewind.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The last ten versions of a plan before that in its file: {@code plans/.versions/NAME/2026-10-04T09-30-00Z.json}; of
 * an organ, those that were written over on the command line.
 */
final class Versions {

    private static final int MOST = 10;
    private static final String FOLDER = ".versions";

    private final Disk disk;
    private final SafeFile safe;

    Versions(Disk disk, SafeFile safe) {
        this.disk = disk;
        this.safe = safe;
    }

    /** The versions of a plan, the latest first. */
    List<Version> of(Path plan) {
        try {
            if (!isOurs(plan)) {
                return List.of();
            }
            return disk.list(folder(plan)).stream()
                    .flatMap(Versions::version)
                    .sorted(Comparator.comparing(Version::saved).reversed())
                    .toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    private static Path folder(Path plan) {
        return plan.resolveSibling(FOLDER).resolve(JsonFolder.stem(plan));
    }

    /** False where a link leads to versions that lie elsewhere than beside their plan; true where none are yet. */
    private boolean isOurs(Path plan) {
        Path beside = plan.toAbsolutePath().getParent();
        return Stream.of(folder(plan).getParent(), folder(plan))
                .filter(disk::exists)
                .allMatch(folder -> disk.isInside(folder.resolve("any"), beside));
    }

    private static Stream<Version> version(Path file) {
        try {
            return Stream.of(
                    new Version(file, Instant.parse(JsonFolder.idOf(file).replaceAll("(?<=T.*)-", ":"))));
        } catch (DateTimeException another) {
            return Stream.empty();
        }
    }

    /**
     * Keeps what a plan's file holds now, before it is replaced.
     *
     * @return why that could not be done
     */
    Optional<String> keep(Path plan) {
        try {
            if (!disk.exists(plan)) {
                return Optional.empty();
            }
            byte[] now = disk.read(plan, JsonTree.LARGEST_FILE + 1);
            List<Version> before = of(plan);
            if (!before.isEmpty() && isSame(before.get(0), now)) {
                return Optional.empty();
            }
            if (!isOurs(plan)) {
                return Optional.of("The folder " + FOLDER + " is a link that leads elsewhere.");
            }
            disk.makeFolder(folder(plan));
            String name = disk.modified(plan).toString().replace(":", "-") + ".json";
            Path file = folder(plan).resolve(name);
            SaveOutcome outcome = safe.save(file, now, any -> true, SafeFile.Durability.FORCED, plan);
            if (outcome instanceof SaveOutcome.NotSaved failed) {
                return Optional.of(failed.why());
            }
            for (Version old : before.subList(Math.min(before.size(), MOST - 1), before.size())) {
                disk.delete(old.file());
            }
            return Optional.empty();
        } catch (IOException trouble) {
            return Optional.of(SafeFile.sentence(trouble));
        }
    }

    /** Where it is kept what a file held. */
    Optional<Path> kept(Path plan, Fingerprint held) throws IOException {
        for (Version each : of(plan)) {
            if (held.equals(Fingerprint.of(disk.readOwn(each.file(), JsonTree.LARGEST_FILE + 1)))) {
                return Optional.of(each.file());
            }
        }
        return Optional.empty();
    }

    private boolean isSame(Version version, byte[] now) throws IOException {
        return Fingerprint.of(disk.readOwn(version.file(), JsonTree.LARGEST_FILE + 1))
                .equals(Fingerprint.of(now));
    }

    /** Has the versions follow a plan that gets another name. */
    void move(Path from, Path to) throws IOException {
        if (disk.exists(folder(from)) && !disk.exists(folder(to)) && isOurs(from) && isOurs(to)) {
            disk.makeFolder(folder(to).getParent());
            disk.move(folder(from), folder(to));
        }
    }
}
