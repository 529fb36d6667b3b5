package versewind.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import versewind.plan.Plan;
import versewind.plan.Undo;

/**
 * The file in which one process keeps every edit of one plan until the plan is saved. As long as it is open, others see
 * that the plan is. No other process writes it, or takes it away before this one has ended.
 */
public final class Journal {

    /** A journal that has grown by so many bytes begins anew, without the steps before. */
    private static final long LONG = 4L * 1024 * 1024;

    private final JournalFiles files;
    private Optional<JournalFiles.Made> file = Optional.empty();
    private OpenPlan open;
    private long length;
    private long beginning;

    /** As the last line has it. */
    private String text = "";

    /** What a reader finds in the file: a line may say "undo" only if that leads here to where it leads there. */
    private Undo<Plan> written;

    private Journal(JournalFiles files, OpenPlan open) {
        this.files = files;
        this.open = open;
        this.written = Undo.of(open.plan());
    }

    /** Begins the journal of a plan; where no file can be made, the first step tries again. */
    static Journal of(JournalFiles files, OpenPlan open) {
        Journal journal = new Journal(files, open);
        try {
            journal.begin(files.make(open.path()));
        } catch (IOException notHere) {
            return journal;
        }
        return journal;
    }

    /** Where it is, if it could be made. */
    public synchronized Optional<Path> path() {
        return file.map(JournalFiles.Made::path);
    }

    /** True if it is not beside its plan, since nothing could be written there. */
    public synchronized boolean isElsewhere() {
        return file.filter(JournalFiles.Made::isElsewhere).isPresent();
    }

    /** Who else has the plan open now. */
    public List<Presence> others() {
        return files.others(open.path(), path());
    }

    /**
     * Writes the step that led to a history, and returns when whoever reads the file sees it.
     *
     * @throws IOException if it could not be written, neither beside the plan nor elsewhere; the next call tries again
     *     with all that is not yet there
     */
    public synchronized void record(Undo<Plan> now) throws IOException {
        try {
            if (file.isEmpty()) {
                begin(files.make(open.path()));
            } else if (length > beginning + LONG || !files.hasLength(file.get(), length)) {
                goOnIn(files.make(open.path()));
            }
            write(now);
        } catch (IOException notHere) {
            goOnElsewhere(now, notHere);
        }
    }

    private void goOnElsewhere(Undo<Plan> now, IOException notHere) throws IOException {
        if (isElsewhere()) {
            throw notHere;
        }
        try {
            goOnIn(files.makeElsewhere(open.path()));
            write(now);
        } catch (IOException nowhere) {
            notHere.addSuppressed(nowhere);
            throw notHere;
        }
    }

    /** A file that cannot even say who made it is no use. */
    private void begin(JournalFiles.Made made) throws IOException {
        byte[] head = JournalText.head(JournalFiles.us());
        try {
            made.file().append(head);
        } catch (IOException trouble) {
            files.remove(made);
            throw trouble;
        }
        file = Optional.of(made);
        length = head.length;
    }

    /** The old file goes only when the new one has all that is needed. */
    private void goOnIn(JournalFiles.Made made) throws IOException {
        Optional<JournalFiles.Made> old = file;
        long oldLength = length;
        begin(made);
        try {
            writeStart();
            force();
        } catch (IOException trouble) {
            files.remove(made);
            file = old;
            length = oldLength;
            throw trouble;
        }
        old.ifPresent(files::remove);
    }

    /** The file as it was, and the plan that the next step is made from. */
    private void writeStart() throws IOException {
        String from = PlanJson.text(written.now(), open.instrument());
        append(JournalText.start(open.fingerprint().text(), from));
        beginning = length;
        text = from;
        written = Undo.of(written.now());
    }

    private void write(Undo<Plan> now) throws IOException {
        if (length == JournalText.HEAD) {
            writeStart();
        }
        String next = PlanJson.text(now.now(), open.instrument());
        if (isStep(written.now(), now.after(), written.before(), now.now())) {
            append(JournalText.undo());
            written = written.undo();
        } else if (isStep(written.now(), now.before(), written.after(), now.now())) {
            append(JournalText.redo());
            written = written.redo();
        } else if (!next.equals(text)) {
            append(JournalText.edit(text, next));
            written = written.to(now.now());
        }
        text = next;
    }

    /** True if a step back or forth leads from one plan to the other, here and in the file. */
    private static boolean isStep(Plan from, Optional<Plan> wayBack, Optional<Plan> there, Plan to) {
        return wayBack.equals(Optional.of(from)) && there.equals(Optional.of(to));
    }

    /** What is half written is cut off again, so that the next line can be read. */
    private void append(byte[] bytes) throws IOException {
        Disk.Appending end = file.orElseThrow().file();
        try {
            end.append(bytes);
            length += bytes.length;
        } catch (IOException trouble) {
            try {
                end.cut(length);
            } catch (IOException more) {
                trouble.addSuppressed(more);
            }
            throw trouble;
        }
    }

    /** Goes on with work that was left over: everything in that journal is now in this one too, and on the medium. */
    synchronized void adopt(byte[] journal, JournalText.Replayed replayed, OpenPlan restored, Undo<Plan> now)
            throws IOException {
        if (file.isEmpty()) {
            begin(files.make(restored.path()));
        }
        cutTo(JournalText.HEAD);
        append(Arrays.copyOfRange(journal, JournalText.HEAD, replayed.length()));
        open = restored;
        beginning = length;
        text = replayed.steps().now();
        Undo<String> texts = now.map(plan -> PlanJson.text(plan, open.instrument()));
        if (texts.now().equals(text)
                && begins(texts.past(), replayed.steps().past())
                && begins(texts.future(), replayed.steps().future())) {
            written = now;
        } else {
            append(JournalText.edit(text, texts.now()));
            text = texts.now();
            written = Undo.of(now.now());
        }
        force();
    }

    private static boolean begins(List<String> first, List<String> all) {
        return first.equals(all.subList(0, Math.min(first.size(), all.size())));
    }

    private void cutTo(long whole) throws IOException {
        file.orElseThrow().file().cut(whole);
        length = whole;
    }

    /** The plan is saved, or is again as it was saved: there is nothing to keep. */
    public synchronized void clear(OpenPlan saved) throws IOException {
        open = saved;
        written = Undo.of(saved.plan());
        if (file.isPresent() && length > JournalText.HEAD) {
            cutTo(JournalText.HEAD);
        }
    }

    /** A trouble of the disk as a sentence. */
    public static String sentence(IOException trouble) {
        return SafeFile.sentence(trouble);
    }

    /** Has all steps written to the medium. */
    public void force() throws IOException {
        Optional<JournalFiles.Made> now;
        synchronized (this) {
            now = file;
        }
        if (now.isPresent()) {
            now.get().file().force();
        }
    }

    /** Lets go of the plan. Steps that are not saved stay, for the next time the plan is opened. */
    public synchronized void close() {
        if (file.isEmpty()) {
            return;
        }
        JournalFiles.Made made = file.get();
        file = Optional.empty();
        if (length == JournalText.HEAD) {
            files.remove(made);
        } else {
            JournalFiles.leave(made);
        }
    }
}
