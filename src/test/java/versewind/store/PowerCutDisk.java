package versewind.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import versewind.organ.Stop;

/**
 * A disk in memory that stops at a given step, and tells everything that may be on the medium then.
 *
 * <p>What is written is on the medium for sure only after it was forced: a file's contents after {@link #force}, a name
 * after {@link #forceFolder}. Names reach it in the order they were changed. What was not forced may be there, be
 * empty, or be half there.
 */
final class PowerCutDisk implements Disk {

    /** The end of the program; nothing in it catches this. */
    static final class PowerCut extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private static final class Contents {
        private byte[] now = new byte[0];
        private Optional<byte[]> forced = Optional.empty();
    }

    /** What happens at the step at which the disk stops. */
    private interface Stop {
        void happen() throws IOException;
    }

    private final Map<Path, Contents> names = new TreeMap<>();
    private final Map<Path, Contents> durableNames = new TreeMap<>();
    private final List<Consumer<Map<Path, Contents>>> changes = new ArrayList<>();
    private final Set<Path> protectedFiles = new LinkedHashSet<>();
    private final Set<Path> held = new LinkedHashSet<>();
    private final Stop stop;
    private int stepsLeft;
    private boolean stopped;

    /** After the power is gone nothing happens any more, not even what would tidy up. */
    private boolean dead;

    private PowerCutDisk(Map<Path, byte[]> files, int steps, Stop stop) {
        files.forEach((path, bytes) -> {
            Contents contents = new Contents();
            contents.now = bytes;
            contents.forced = Optional.of(bytes);
            names.put(path, contents);
        });
        durableNames.putAll(names);
        this.stepsLeft = steps;
        this.stop = stop;
    }

    /** A disk that works. */
    static PowerCutDisk working(Map<Path, byte[]> files) {
        return new PowerCutDisk(files, Integer.MAX_VALUE, () -> {});
    }

    /** A disk on which the power is cut after a number of steps. */
    static PowerCutDisk cutAfter(int steps, Map<Path, byte[]> files) {
        return new PowerCutDisk(files, steps, () -> {
            throw new PowerCut();
        });
    }

    /** A disk that refuses one step, after a number of others. */
    static PowerCutDisk refusingAfter(int steps, Map<Path, byte[]> files) {
        return new PowerCutDisk(files, steps, () -> {
            throw new IOException("No space left on device");
        });
    }

    PowerCutDisk protecting(Path file) {
        protectedFiles.add(file);
        return this;
    }

    boolean hasStopped() {
        return stopped;
    }

    /** What the programs on the computer see. */
    Map<Path, byte[]> seen() {
        return state(names, contents -> contents.now);
    }

    /** Everything that may be on the medium if the power goes now. */
    List<Map<Path, byte[]>> possible() {
        List<Map<Path, byte[]>> states = new ArrayList<>();
        for (int reached = 0; reached <= changes.size(); reached++) {
            Map<Path, Contents> there = new TreeMap<>(durableNames);
            changes.subList(0, reached).forEach(change -> change.accept(there));
            states.add(state(there, contents -> contents.now));
            states.add(state(there, contents -> contents.forced.orElseGet(() -> new byte[0])));
            states.add(state(there, PowerCutDisk::halfForced));
        }
        return states;
    }

    /** What was forced is there, and of what came after it a part. */
    private static byte[] halfForced(Contents contents) {
        int forced = contents.forced.map(bytes -> bytes.length).orElse(0);
        return Arrays.copyOf(contents.now, Math.min(contents.now.length, Math.max(forced, contents.now.length / 2)));
    }

    private static byte[] half(byte[] bytes) {
        return Arrays.copyOf(bytes, bytes.length / 2);
    }

    private static Map<Path, byte[]> state(Map<Path, Contents> names, Function<Contents, byte[]> bytesOf) {
        Map<Path, byte[]> state = new TreeMap<>();
        names.forEach((path, contents) -> state.put(path, bytesOf.apply(contents)));
        return state;
    }

    private void step() throws IOException {
        if (dead) {
            throw new PowerCut();
        }
        if (stepsLeft-- == 0) {
            stopped = true;
            try {
                stop.happen();
            } catch (PowerCut cut) {
                dead = true;
                throw cut;
            }
        }
    }

    private void change(Consumer<Map<Path, Contents>> change) {
        change.accept(names);
        changes.add(change);
    }

    private Contents at(Path file) throws IOException {
        Optional<Contents> contents = Optional.ofNullable(names.get(file));
        Supplier<IOException> missing = () -> new NoSuchFileException(file.toString());
        return contents.orElseThrow(missing);
    }

    @Override
    public boolean exists(Path file) {
        return names.containsKey(file);
    }

    @Override
    public boolean isWritable(Path file) {
        return !protectedFiles.contains(file);
    }

    @Override
    public byte[] read(Path file, int limit) throws IOException {
        step();
        byte[] all = at(file).now;
        return Arrays.copyOf(all, Math.min(limit, all.length));
    }

    @Override
    public Instant modified(Path file) throws IOException {
        step();
        at(file);
        return Instant.EPOCH;
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        step();
        return names.keySet().stream()
                .filter(path -> folder.equals(path.getParent()))
                .toList();
    }

    @Override
    public void pause() {
        // the other program is not there any more
    }

    @Override
    public void makeFolder(Path folder) throws IOException {
        step();
    }

    @Override
    public Path follow(Path file) throws IOException {
        step();
        return file;
    }

    @Override
    public void create(Path file, Optional<Path> like) throws IOException {
        step();
        if (names.containsKey(file)) {
            throw new FileAlreadyExistsException(file.toString());
        }
        Contents contents = new Contents();
        change(there -> there.put(file, contents));
    }

    @Override
    public Appending append(Path file, Optional<Path> like) throws IOException {
        create(file, like);
        held.add(file);
        return new End(file);
    }

    @Override
    public Optional<Turn> hold(Path file) throws IOException {
        step();
        return names.containsKey(file) && held.add(file)
                ? Optional.of(() -> {
                    delete(file);
                    held.remove(file);
                })
                : Optional.empty();
    }

    /** The end of a file, for as long as it is held. */
    private final class End implements Appending {
        private final Path file;

        End(Path file) {
            this.file = file;
        }

        @Override
        public void append(byte[] bytes) throws IOException {
            byte[] before = at(file).now;
            int half = before.length + bytes.length / 2;
            step();
            byte[] after = Arrays.copyOf(before, before.length + bytes.length);
            System.arraycopy(bytes, 0, after, before.length, bytes.length);
            at(file).now = Arrays.copyOf(after, half);
            step();
            at(file).now = after;
        }

        @Override
        public void cut(long length) throws IOException {
            step();
            at(file).now = Arrays.copyOf(at(file).now, (int) length);
        }

        @Override
        public void force() throws IOException {
            PowerCutDisk.this.force(file);
        }

        @Override
        public void close() {
            held.remove(file);
        }
    }

    @Override
    public boolean isHeld(Path file) {
        return held.contains(file);
    }

    @Override
    public byte[] readOwn(Path file, int limit) throws IOException {
        return read(file, limit);
    }

    @Override
    public String owner(Path file) {
        return "anna";
    }

    @Override
    public long sizeOfOwn(Path file) {
        return exists(file) ? names.get(file).now.length : 0;
    }

    @Override
    public boolean isInside(Path file, Path folder) {
        return file.startsWith(folder);
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        step();
        at(file).now = half(bytes);
        step();
        at(file).now = bytes.clone();
    }

    @Override
    public void force(Path file) throws IOException {
        step();
        at(file).forced = Optional.of(at(file).now);
    }

    @Override
    public void move(Path from, Path to) throws IOException {
        step();
        Contents contents = at(from);
        change(there -> {
            there.remove(from);
            there.put(to, contents);
        });
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        step();
        durableNames.clear();
        durableNames.putAll(names);
        changes.clear();
    }

    @Override
    public void delete(Path file) throws IOException {
        step();
        change(there -> there.remove(file));
    }
}
