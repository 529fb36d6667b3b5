package versewind.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** That an organ is open to be changed here, so that others see it. */
public final class OrganHold implements AutoCloseable {

    private final JournalFiles files;
    private final Path organ;
    private final Optional<JournalFiles.Made> made;

    private OrganHold(JournalFiles files, Path organ, Optional<JournalFiles.Made> made) {
        this.files = files;
        this.organ = organ;
        this.made = made;
    }

    /** Where no file can be made, others do not see it. */
    static OrganHold of(JournalFiles files, Path organ) {
        files.left(organ);
        try {
            JournalFiles.Made made = files.make(organ);
            made.file().append(JournalText.head(files.us()));
            return new OrganHold(files, organ, Optional.of(made));
        } catch (IOException notHere) {
            return new OrganHold(files, organ, Optional.empty());
        }
    }

    /** Who else has it open. */
    public List<Presence> others() {
        return files.others(organ, made.map(JournalFiles.Made::path));
    }

    @Override
    public void close() {
        made.ifPresent(files::remove);
    }
}
