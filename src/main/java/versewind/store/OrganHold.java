package versewind.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.organ.Instrument;
import versewind.organ.Quoted;
import versewind.schema.DraftLine;
import versewind.schema.FileFormat;
import versewind.schema.Found;
import versewind.schema.OrganDraft;
import versewind.schema.Refused;
import versewind.schema.RowKind;

/**
 * That an organ is open to be changed here, so that others see it, and the draft of what is changed, until it is saved.
 * Its file is a journal like those of plans; the texts in it are drafts.
 */
public final class OrganHold implements AutoCloseable {

    /** A file that has grown by so many bytes begins anew. */
    private static final long LONG = 4L * 1024 * 1024;

    private final JournalFiles files;
    private final Path organ;
    private Optional<JournalFiles.Made> made = Optional.empty();
    private Optional<Path> takenUp = Optional.empty();
    private long length;
    private String text = "";

    private OrganHold(JournalFiles files, Path organ) {
        this.files = files;
        this.organ = organ;
    }

    /** Where no file can be made, others do not see it, and the first draft tries again. */
    static OrganHold of(JournalFiles files, Path organ) {
        OrganHold hold = new OrganHold(files, organ);
        try {
            hold.begin();
        } catch (IOException notHere) {
            return hold;
        }
        return hold;
    }

    private void begin() throws IOException {
        JournalFiles.Made next = files.make(organ);
        made = Optional.of(next);
        length = 0;
        text = "";
        append(JournalText.head(JournalFiles.us()));
    }

    private void append(byte[] bytes) throws IOException {
        made.orElseThrow().file().append(bytes);
        length += bytes.length;
    }

    /** Who else has it open. */
    public List<Presence> others() {
        return files.others(organ, made.map(JournalFiles.Made::path));
    }

    /**
     * Keeps a draft of the organ.
     *
     * @throws IOException if it could not be written; the next call tries again
     */
    public void keep(OpenOrgan open, OrganDraft draft) throws IOException {
        String next = new String(OrganDraftFile.bytes(draft, open.fingerprint()), StandardCharsets.UTF_8);
        if (made.isEmpty() || length > LONG || !files.hasLength(made.get(), length)) {
            Optional<JournalFiles.Made> old = made;
            begin();
            append(JournalText.start("", next));
            old.ifPresent(files::remove);
        } else {
            append(text.isEmpty() ? JournalText.start("", next) : JournalText.edit(text, next));
        }
        text = next;
    }

    /** The latest draft that was left over by somebody whose program was cut off, if it can be read and is another. */
    public Optional<OrganDraft> left(OpenOrgan open) {
        for (JournalFiles.Found each : files.left(organ)) {
            Optional<OrganDraft> draft = read(each.path(), open);
            if (draft.equals(Optional.of(OrganDraft.of(open.organ().instrument())))) {
                files.delete(each.path());
            } else if (draft.isPresent()) {
                takenUp = Optional.of(each.path());
                return draft;
            }
        }
        return Optional.empty();
    }

    private Optional<OrganDraft> read(Path file, OpenOrgan open) {
        try {
            Optional<JournalText.Replayed> steps = JournalText.replay(files.read(file));
            return steps.isEmpty()
                    ? Optional.empty()
                    : Optional.of(OrganDraftFile.read(
                            file, steps.get().steps().now().getBytes(StandardCharsets.UTF_8), open.fingerprint()));
        } catch (BadFile | IOException unreadable) {
            return Optional.empty();
        }
    }

    /** There is nothing to keep: the draft is saved, or not wanted, and so is the one that was taken up. */
    public void drop() throws IOException {
        takenUp.ifPresent(files::delete);
        takenUp = Optional.empty();
        if (made.isPresent() && length > JournalText.HEAD) {
            made.get().file().cut(JournalText.HEAD);
            length = JournalText.HEAD;
            text = "";
        }
    }

    @Override
    public void close() {
        made.ifPresent(length > JournalText.HEAD ? JournalFiles::leave : files::remove);
        made = Optional.empty();
    }

    /**
     * The file in which the draft of an instrument is kept until it is saved: its lines as they were typed, and of
     * which instrument's file it began as the draft.
     */
    static final class OrganDraftFile {
        private OrganDraftFile() {}

        static byte[] bytes(OrganDraft draft, Fingerprint began) {
            List<Object> lines = new ArrayList<>();
            for (DraftLine line : draft.lines()) {
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("part", line.part().word());
                line.origin().ifPresent(origin -> row.put("origin", origin));
                row.put("values", line.values());
                lines.add(row);
            }
            Map<String, Object> file = new LinkedHashMap<>();
            file.put("format", FileFormat.NUMBER);
            file.put("of", began.digest());
            file.put("lines", lines);
            return JsonText.bytes(file);
        }

        /** Reads a draft; of one that began as another file, nothing is known of where its lines come from. */
        static OrganDraft read(Path path, byte[] bytes, Fingerprint now) throws BadFile {
            try {
                return draft(JsonTree.read(path, bytes), now);
            } catch (Refused wrong) {
                throw BadFile.of(path, wrong);
            }
        }

        private static OrganDraft draft(Found root, Fingerprint now) throws Refused {
            FileFormat.require(root);
            boolean same = root.hasText("of", now.digest());
            List<DraftLine> lines = new ArrayList<>();
            for (Found each : root.at("lines").items("")) {
                RowKind part = part(each.at("part"));
                Optional<Found> origin = each.find("origin");
                OptionalInt place = same && origin.isPresent()
                        ? OptionalInt.of(origin.get().whole(0, Instrument.MOST_STOPS, ""))
                        : OptionalInt.empty();
                List<String> values = new ArrayList<>();
                for (Found value : each.at("values").items("")) {
                    values.add(value.text());
                }
                // fields that were added at the end of a row since the draft was kept are blank
                values.addAll(Collections.nCopies(Math.max(0, part.fields().size() - values.size()), ""));
                lines.add(each.make(() -> new DraftLine(part, place, values)));
            }
            for (RowKind part : RowKind.values()) {
                if (!part.isRepeated() && lines.stream().noneMatch(line -> line.part() == part)) {
                    throw root.bad("a line is missing: " + part.word(), "Delete the file.");
                }
            }
            return new OrganDraft(lines);
        }

        private static RowKind part(Found found) throws Refused {
            for (RowKind part : RowKind.values()) {
                if (part.word().equals(found.text())) {
                    return part;
                }
            }
            throw found.bad("there is no such line as " + Quoted.text(found.text()), "Delete the file.");
        }
    }
}
