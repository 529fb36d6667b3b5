package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.plan.Plan;
import versewind.plan.PlanMerge;
import versewind.plan.Undo;
import versewind.plan.VersePlace;
import versewind.screen.Desk;
import versewind.screen.plan.FileEvent;
import versewind.screen.state.Event;
import versewind.store.Library;
import versewind.store.WhenChanged;

/** Two people at one plan: both sides' edits are in the file, or a conflict is shown. */
class TogetherTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void a_library() throws IOException {
        for (Path file : List.of(Path.of("plans/wedding.json"), Path.of("instruments/ambrelow.json"))) {
            Files.createDirectories(folder.resolve(file).getParent());
            Files.write(folder.resolve(file), Files.readAllBytes(file));
        }
    }

    @Test
    void a_version_that_cannot_be_kept_is_told() throws Exception {
        Person anna = new Person(new HashSet<>());
        anna.edit(new VersePlace(0, 0), "one");
        assertThat(anna.saved()).isEqualTo("Saved.");
        Path versions = folder.resolve("plans/.versions");
        try (var files = Files.walk(versions)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
        Files.writeString(versions, "a file where the folder should be");
        anna.edit(new VersePlace(0, 0), "two");
        assertThat(anna.saved()).isEqualTo("Saved, but the version before could not be kept.");
    }

    /** One of them, with an editor of her own. */
    private final class Person {
        private final Planning planning;
        private final Set<VersePlace> conflicts;
        private Undo<Plan> history;

        Person(Set<VersePlace> conflicts) throws Exception {
            this.conflicts = conflicts;
            Library library = new Library(folder);
            planning = new Planning(library, new JournalWriter(library, event -> {}));
            FileEvent.PlanOpened opened = (FileEvent.PlanOpened)
                    planning.opened(library.openPlan("wedding")).get(0);
            history = Undo.of(opened.plan());
        }

        void edit(VersePlace place, String note) {
            history = history.to(
                    history.now().withVerse(place, history.now().verse(place).withNote(note)));
            planning.keep(history);
        }

        String saved() {
            Event outcome = planning.save(history.now(), List.of(), WhenChanged.REFUSE);
            return outcome.on(Desk.with("wedding", 80, 24).state()).notice().text();
        }

        void save(Random random) {
            Event outcome = planning.save(history.now(), List.of(), WhenChanged.REFUSE);
            while (outcome instanceof FileEvent.Conflicting conflicting) {
                Plan chosen = conflicting.merge().plan();
                for (PlanMerge.Conflict each : conflicting.merge().conflicts()) {
                    conflicts.add(new VersePlace(
                            each.hymn().orElseThrow(), each.verse().orElseThrow()));
                    chosen = random.nextBoolean() ? each.taken(chosen) : chosen;
                }
                outcome = planning.saveMerged(chosen, List.of());
            }
            if (outcome instanceof FileEvent.Merged merged) {
                history = history.to(merged.plan());
            } else {
                assertThat(outcome).isInstanceOf(FileEvent.Saved.class);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void every_edit_of_both_is_in_the_file_unless_it_was_edited_again_or_a_conflict_was_shown(long seed)
            throws Exception {
        Random random = new Random(seed);
        Set<VersePlace> conflicts = new HashSet<>();
        List<Person> people = List.of(new Person(conflicts), new Person(conflicts));
        Map<VersePlace, String> last = new HashMap<>();
        Plan plan = people.get(0).history.now();
        for (int i = 0; i < 60; i++) {
            Person person = people.get(random.nextInt(2));
            if (random.nextInt(5) == 0) {
                person.save(random);
            } else {
                int hymn = random.nextInt(plan.hymns().size());
                int verse = random.nextInt(plan.hymns().get(hymn).verses().size());
                VersePlace place = new VersePlace(hymn, verse);
                person.edit(place, "note " + i);
                last.put(place, "note " + i);
            }
        }
        people.get(0).save(random);
        people.get(1).save(random);

        Plan saved = new Library(folder).openPlan("wedding").plan();
        assertThat(last.size()).isGreaterThan(5);
        last.forEach((place, note) -> {
            if (!conflicts.contains(place)) {
                assertThat(saved.verse(place).note()).isEqualTo(note);
            }
        });
    }

    @Test
    void whoever_comes_second_is_told_of_the_first_and_the_first_is_not_disturbed() throws Exception {
        new Person(new HashSet<>());
        Library library = new Library(folder);
        Planning second = new Planning(library, new JournalWriter(library, event -> {}));

        List<Event> events = second.opened(library.openPlan("wedding"));

        assertThat(((FileEvent.PlanOpened) events.get(0)).left()).isEmpty();
        assertThat(((FileEvent.OpenElsewhere) events.get(1)).others())
                .singleElement()
                .asString()
                .contains("open in another window");
    }
}
