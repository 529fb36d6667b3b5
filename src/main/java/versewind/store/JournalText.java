package versewind.store;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import versewind.plan.Undo;
import versewind.schema.Found;
import versewind.schema.Refused;

/**
 * The text of a journal: a head of fixed length that says who works on the file, then a line for each step. A line
 * begins with its checksum, so that one that did not wholly reach the medium is known, and what follows it is left out.
 *
 * <pre>
 * {"who": "anna", "host": "vestry", "process": 4711, "since": "2026-10-04T09:30:00Z"}
 * 8d2f0a11 ["base", "the file as it was when work began"]
 * 0c9a11be ["edit", 0, 0, ""]
 * 77f3e0d2 ["edit", 512, 14, "Open Diapason 8"]
 * 5b1c22f0 ["undo"]
 * </pre>
 *
 * An edit is made from the text before it: at this place so many characters are gone and others stand. The first one is
 * made from the base, and leads to the plan as it was opened.
 */
final class JournalText {

    /** The length of the head, in bytes. */
    static final int HEAD = 512;

    private static final int CHECKSUM = 8;
    private static final int LONGEST_NAME = 60;
    private static final Path PLACE = Path.of("journal");

    private JournalText() {}

    static byte[] head(Presence presence) {
        String text = "{\"who\": " + name(presence.who()) + ", \"host\": " + name(presence.host()) + ", \"process\": "
                + presence.process() + ", \"since\": "
                + JsonText.text(presence.since().toString()) + "}";
        byte[] head = new byte[HEAD];
        Arrays.fill(head, (byte) ' ');
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        System.arraycopy(bytes, 0, head, 0, Math.min(bytes.length, HEAD - 1));
        head[HEAD - 1] = '\n';
        return head;
    }

    private static String name(String text) {
        return JsonText.text(text.codePoints()
                .filter(c -> !Character.isISOControl(c))
                .limit(LONGEST_NAME)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString());
    }

    /** Who writes a journal; its owner where its head cannot be read. */
    static Presence presence(byte[] journal, String owner, Instant written) {
        byte[] head = Arrays.copyOf(journal, Math.min(journal.length, HEAD));
        try {
            Found root = JsonTree.read(PLACE, head);
            String who = root.at("who").text();
            return new Presence(
                    owner.isEmpty() ? who : owner,
                    root.at("host").text(),
                    root.at("process").whole(0, Integer.MAX_VALUE, ""),
                    Instant.parse(root.at("since").text()));
        } catch (BadFile | Refused | DateTimeException unreadable) {
            return new Presence(owner, "", 0, written);
        }
    }

    /** The first two lines: the file as it was, and the plan as it was opened. */
    static byte[] start(String base, String text) {
        byte[] file = line("[\"base\", " + JsonText.text(base) + "]");
        byte[] plan = edit(base, text);
        byte[] both = Arrays.copyOf(file, file.length + plan.length);
        System.arraycopy(plan, 0, both, file.length, plan.length);
        return both;
    }

    static byte[] undo() {
        return line("[\"undo\"]");
    }

    static byte[] redo() {
        return line("[\"redo\"]");
    }

    /** The step from one text to another. */
    static byte[] edit(String before, String after) {
        int shorter = Math.min(before.length(), after.length());
        int at = 0;
        while (at < shorter && before.charAt(at) == after.charAt(at)) {
            at++;
        }
        if (at > 0 && Character.isHighSurrogate(before.charAt(at - 1))) {
            at--;
        }
        int end = 0;
        while (end < shorter - at
                && before.charAt(before.length() - 1 - end) == after.charAt(after.length() - 1 - end)) {
            end++;
        }
        if (end > 0 && Character.isLowSurrogate(before.charAt(before.length() - end))) {
            end--;
        }
        return line("[\"edit\", " + at + ", " + (before.length() - end - at) + ", "
                + JsonText.text(after.substring(at, after.length() - end)) + "]");
    }

    private static byte[] line(String step) {
        byte[] bytes = step.getBytes(StandardCharsets.UTF_8);
        ByteArrayOutputStream line = new ByteArrayOutputStream(bytes.length + CHECKSUM + 2);
        line.writeBytes(checksum(bytes, 0, bytes.length).getBytes(StandardCharsets.US_ASCII));
        line.write(' ');
        line.writeBytes(bytes);
        line.write('\n');
        return line.toByteArray();
    }

    private static String checksum(byte[] bytes, int from, int to) {
        CRC32 sum = new CRC32();
        sum.update(bytes, from, to - from);
        return String.format("%08x", sum.getValue());
    }

    /**
     * What a journal holds.
     *
     * @param base the file's text when work began; "" if there was none
     * @param steps all texts since
     * @param length so many of its bytes can be relied on
     */
    record Replayed(String base, Undo<String> steps, int length) {}

    /** Takes all steps again; empty where there is none. */
    static Optional<Replayed> replay(byte[] journal) {
        Optional<String> base = Optional.empty();
        Optional<Undo<String>> steps = Optional.empty();
        int from = HEAD;
        try {
            while (from < journal.length) {
                int end = from;
                while (end < journal.length && journal[end] != '\n') {
                    end++;
                }
                int step = from + CHECKSUM + 1;
                if (end == journal.length
                        || step > end
                        || !checksum(journal, step, end)
                                .equals(new String(journal, from, CHECKSUM, StandardCharsets.US_ASCII))) {
                    break;
                }
                List<Found> words = JsonTree.readLine(PLACE, Arrays.copyOfRange(journal, step, end))
                        .items("");
                if (base.isEmpty()) {
                    base = Optional.of(words.get(1).text());
                } else {
                    steps = Optional.of(after(base.get(), steps, words));
                }
                from = end + 1;
            }
        } catch (BadFile | Refused | IndexOutOfBoundsException forged) {
            // The checksum is right and the step is not: nothing after it can be relied on either.
            return replayed(base, steps, from);
        }
        return replayed(base, steps, from);
    }

    /** True if not even the first step was written: the base, what is made from it, and an edit, a line each. */
    static boolean isUnbegun(byte[] journal) {
        int lines = 0;
        for (int i = HEAD; i < journal.length; i++) {
            lines += journal[i] == '\n' ? 1 : 0;
        }
        return lines < 3;
    }

    private static Optional<Replayed> replayed(Optional<String> base, Optional<Undo<String>> steps, int length) {
        return steps.map(all -> new Replayed(base.orElseThrow(), all, length));
    }

    private static Undo<String> after(String base, Optional<Undo<String>> steps, List<Found> words) throws Refused {
        String kind = words.get(0).text();
        if (kind.equals("edit")) {
            String before = steps.map(Undo::now).orElse(base);
            int at = words.get(1).whole(0, before.length(), "");
            int gone = words.get(2).whole(0, before.length() - at, "");
            String after = before.substring(0, at) + words.get(3).text() + before.substring(at + gone);
            return steps.map(all -> all.to(after)).orElseGet(() -> Undo.of(after));
        }
        Undo<String> all = steps.orElseThrow(IndexOutOfBoundsException::new);
        return kind.equals("undo") ? all.undo() : all.redo();
    }
}
