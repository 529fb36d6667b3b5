package versewind.terminal;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Sought;
import versewind.plan.Verses;
import versewind.rules.Advice;
import versewind.rules.Assessment;
import versewind.rules.DynamicSteps;
import versewind.schema.KnownOrgan;
import versewind.screen.desk.DeskScreen;
import versewind.screen.library.LibraryEvent;
import versewind.screen.state.Chooser;
import versewind.screen.state.Effect;
import versewind.screen.state.Event;
import versewind.screen.toolkit.ShortWords;
import versewind.sound.OrganSound;
import versewind.store.BadFile;
import versewind.store.Catalogue;
import versewind.store.InstrumentEntry;
import versewind.store.Library;
import versewind.store.OpenPlan;
import versewind.store.PlanEntry;
import versewind.store.PlanFile;

/**
 * Reads the plans of the library in the background, those edited last first, and tells of them a few at a time, so that
 * neither the first screen nor a key has to wait for all of them. Everything is done by one thread.
 */
final class Browsing implements AutoCloseable {

    /** As many as fit on an ordinary screen, so that there is soon one to look at. */
    static final int FIRST_PLANS = 20;

    private static final int MORE_PLANS = 400;

    /** So many plans with a hymn are enough. */
    private static final int MOST_FOUND = 30;

    private final Library library;
    private final Catalogue catalogue;
    private final Consumer<Event> tell;
    private final IdentityHashMap<KnownOrgan, OrganSound> sounds = new IdentityHashMap<>();
    private final ExecutorService reader = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "library");
        thread.setDaemon(true);
        return thread;
    });

    /** Which reading counts; an earlier one is given up. */
    private final AtomicInteger searching = new AtomicInteger();

    private final AtomicInteger reading = new AtomicInteger();

    /** Which ladders are wanted. */
    private final AtomicInteger climbing = new AtomicInteger();

    /** What was read before there was a screen, for the first list alone. */
    private final AtomicReference<LookAhead> ahead = new AtomicReference<>();

    Browsing(Library library, Consumer<Event> tell) {
        this.library = library;
        this.catalogue = library.catalogue();
        this.tell = tell;
    }

    /** Tells of what was read ahead, when it is asked for the first time. */
    void lookedAhead(LookAhead looked) {
        ahead.set(looked);
    }

    /** Tells of all plans, soon; what is still being read of an earlier time is given up. */
    void list() {
        int number = reading.incrementAndGet();
        reader.execute(() -> {
            try {
                LookAhead looked = ahead.getAndSet(null);
                tell(looked == null ? catalogue.files() : looked.files(), 0, number);
            } catch (BadFile bad) {
                tell.accept(new Event.Failed(bad.getMessage()));
            }
        });
    }

    /** Tells of some plans and leaves the rest for later, so that other questions are answered in between. */
    private void tell(List<PlanFile> files, int from, int number) {
        if (number != reading.get()) {
            return;
        }
        int to = Math.min(files.size(), from + (from == 0 ? FIRST_PLANS : MORE_PLANS));
        List<LibraryEvent.ListedPlan> plans = new ArrayList<>();
        for (PlanFile file : files.subList(from, to)) {
            plans.add(listed(catalogue.read(file)));
        }
        LibraryEvent.PlansListed.Part part =
                from == 0 ? LibraryEvent.PlansListed.Part.FIRST : LibraryEvent.PlansListed.Part.MORE;
        tell.accept(new LibraryEvent.PlansListed(plans, files.size(), part));
        if (to < files.size()) {
            reader.execute(() -> tell(files, to, number));
        }
    }

    private static LibraryEvent.ListedPlan listed(PlanEntry entry) {
        LibraryEvent.ListedPlan.Condition condition = !entry.hasHead()
                ? LibraryEvent.ListedPlan.Condition.UNREADABLE
                : entry.file().unsavedWork()
                        ? LibraryEvent.ListedPlan.Condition.UNSAVED_WORK
                        : LibraryEvent.ListedPlan.Condition.SAVED;
        LocalDateTime edited = LocalDateTime.ofInstant(entry.file().edited(), ZoneId.systemDefault());
        return LibraryEvent.ListedPlan.of(
                entry.file().id(), entry.title(), entry.date(), entry.instrument(), edited, condition);
    }

    /** Tells which plans hold some words anywhere, and a text that has the first of them; soon. */
    void search(String typed) {
        int number = searching.incrementAndGet();
        reader.execute(() -> {
            Map<String, String> where = new HashMap<>();
            Sought sought = Sought.of(typed);
            try {
                Map<String, InstrumentEntry> organs =
                        library.instruments().stream().collect(Collectors.toMap(InstrumentEntry::id, organ -> organ));
                for (PlanFile file : catalogue.files()) {
                    if (number != searching.get()) {
                        return;
                    }
                    List<String> texts = new ArrayList<>(catalogue.texts(file));
                    Optional.ofNullable(organs.get(catalogue.read(file).instrument()))
                            .ifPresent(organ -> texts.addAll(List.of(organ.name(), organ.place())));
                    if (sought.isIn(String.join("\n", texts))) {
                        Sought first = new Sought(sought.words().subList(0, 1));
                        texts.stream().filter(first::isIn).findFirst().ifPresent(text -> where.put(file.id(), text));
                    }
                }
            } catch (BadFile bad) {
                tell.accept(new Event.Failed(bad.getMessage()));
            }
            tell.accept(new LibraryEvent.PlansFound(typed, where));
        });
    }

    /** Tells in which plans there is a hymn like another, soon: the plans edited last first. */
    void find(String except, Hymn like, Effect.Telling telling) {
        reader.execute(() -> {
            List<Chooser.Row> found = new ArrayList<>();
            try {
                for (PlanFile file : catalogue.files()) {
                    if (!file.id().equals(except) && found.size() < MOST_FOUND && catalogue.mentions(file, like)) {
                        addHymns(file.id(), like, found);
                    }
                }
            } catch (BadFile unreadable) {
                tell.accept(new Event.Failed(unreadable.getMessage()));
            }
            tell.accept(new LibraryEvent.HymnsFound(like, found, telling));
        });
    }

    /** Adds the hymns of a plan that are like another; a plan that cannot be read has none. */
    private void addHymns(String id, Hymn like, List<Chooser.Row> found) {
        try {
            OpenPlan open = library.openPlan(id);
            ServiceHeading heading = open.plan().heading();
            for (int i = 0; i < open.plan().hymns().size(); i++) {
                Hymn hymn = open.plan().hymns().get(i);
                if (hymn.isLike(like)) {
                    String when = heading.date()
                            .map(day -> ", " + ShortWords.day(day))
                            .orElse("");
                    found.add(new Chooser.Row(
                            id + "\n" + i,
                            heading.title() + when,
                            open.instrument().name() + ", " + Verses.counted(hymn.verses().stream())));
                }
            }
        } catch (BadFile broken) {
            // The list of plans says what is wrong with it.
        }
    }

    /** Tells how some plans stand, soon. */
    void assess(List<String> ids) {
        for (String id : ids) {
            reader.execute(() -> tell.accept(assessed(id)));
        }
    }

    private Event assessed(String id) {
        try {
            OpenPlan open = library.openPlan(id);
            Plan plan = open.plan();
            OrganSound sound = sounds.computeIfAbsent(open.organ(), KnownOrgan::sound);
            int verses =
                    plan.hymns().stream().mapToInt(hymn -> hymn.verses().size()).sum();
            int wanting = Assessment.of(plan, sound).wantingAttention().size();
            return new LibraryEvent.PlanAssessed(
                    id, verses, wanting, Advice.on(sound).cautions(plan), "");
        } catch (BadFile bad) {
            return new LibraryEvent.PlanAssessed(id, 0, 0, 0, bad.getMessage());
        } catch (IllegalArgumentException unknownMaterial) {
            return new LibraryEvent.PlanAssessed(id, 0, 0, 0, unknownMaterial.getMessage());
        }
    }

    /** Tells what makes some verses stronger and softer, soon; what was asked before and is not begun is given up. */
    void climb(KnownOrgan organ, List<Effect.LadderOf> wanted) {
        int number = climbing.incrementAndGet();
        for (Effect.LadderOf of : wanted) {
            reader.execute(() -> {
                if (number == climbing.get()) {
                    OrganSound sound = sounds.computeIfAbsent(organ, KnownOrgan::sound);
                    tell.accept(new DeskScreen.LadderFound(
                            of, DynamicSteps.of(sound, of.verse(), of.people(), of.tempo(), DynamicSteps.AT_DESK)));
                }
            });
        }
    }

    @Override
    public void close() {
        reading.incrementAndGet();
        reader.shutdownNow();
    }
}
