package versewind.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** Files with one mistake each, what the reader says to it, and whether a schema can see it. */
final class BrokenFiles {
    private static final String RESOURCE = "/versewind/store/broken_files.txt";

    /**
     * A file with one mistake.
     *
     * @param file "plan" or "organ"
     * @param seenBySchema whether the mistake is one of shape, which a schema sees, or of what a name refers to
     * @param text what is in it
     * @param sentence what the reader says after the name of the file
     */
    record Broken(String file, boolean seenBySchema, String text, String sentence) {
        @Override
        public String toString() {
            return sentence;
        }
    }

    private BrokenFiles() {}

    static Stream<Broken> of(String file) {
        return all().filter(broken -> broken.file().equals(file));
    }

    private static Stream<Broken> all() {
        try (InputStream in = BrokenFiles.class.getResourceAsStream(RESOURCE)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Stream.of(text.split("\n\n", -1))
                    .skip(1)
                    .map(each -> broken(List.of(each.strip().split("\n", -1))));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    private static Broken broken(List<String> lines) {
        String file = lines.get(0).substring(0, lines.get(0).indexOf(','));
        String whole = file.equals("plan") ? SmallOrgan.PLAN : SmallOrgan.FILE;
        String other = lines.get(2).equals("(nothing)") ? "" : lines.get(2);
        return new Broken(
                file,
                lines.get(0).endsWith("schema"),
                SmallOrgan.with(whole, lines.get(1).replace('⏎', '\n'), other.replace('⏎', '\n')),
                lines.get(3));
    }
}
