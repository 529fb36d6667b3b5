package versewind.terminal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import versewind.calibration.Experience;
import versewind.calibration.MeterReading;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;
import versewind.plan.BroughtHymn;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Player;
import versewind.plan.ServiceHeading;
import versewind.plan.Undo;
import versewind.plan.VersePlace;
import versewind.schema.KnownOrgan;
import versewind.schema.OrganDraft;
import versewind.screen.library.LibraryEvent;
import versewind.screen.plan.FileEvent;
import versewind.screen.state.Chooser;
import versewind.screen.state.Effect;
import versewind.screen.state.Effects;
import versewind.screen.state.Event;
import versewind.sound.Transfer;
import versewind.store.BadFile;
import versewind.store.Bin;
import versewind.store.InstrumentEntry;
import versewind.store.Library;
import versewind.store.OpenPlan;
import versewind.store.Renaming;
import versewind.store.SaveOutcome;
import versewind.store.WhenChanged;

/** Does with files and threads what the editor wants done, and says what came of it. */
final class EffectRunner implements Effects {

    private static final List<Event> NOTHING = List.of();

    private final Library library;
    private final Browsing browsing;
    private final BackgroundSearch proposing;
    private final Planning planning;
    private final Workshop workshop;
    private final Runnable repaint;
    private Optional<Bin.Binned> binned = Optional.empty();
    private boolean ended;

    EffectRunner(
            Library library,
            JournalWriter journal,
            Browsing browsing,
            BackgroundSearch proposing,
            Consumer<Event> tell,
            Runnable repaint) {
        this.library = library;
        this.browsing = browsing;
        this.proposing = proposing;
        this.planning = new Planning(library, journal);
        this.workshop = new Workshop(library, tell);
        this.repaint = repaint;
    }

    /** Whether the program is to end. */
    boolean hasEnded() {
        return ended;
    }

    /** What comes of something that reads files, or which of them cannot be read. */
    private static List<Event> reading(Read read) {
        try {
            return read.events();
        } catch (BadFile bad) {
            return List.of(new Event.Failed(bad.getMessage()));
        }
    }

    private interface Read {
        List<Event> events() throws BadFile;
    }

    /** A plan that has been read becomes the one that is worked on, and can be painted. */
    List<Event> read(OpenPlan file) {
        return planning.read(file);
    }

    /** What must follow before it is worked on. */
    List<Event> begun(OpenPlan file) {
        return planning.begun(file);
    }

    @Override
    public List<Event> save(Plan plan, List<Effect> then) {
        return List.of(planning.save(plan, then, WhenChanged.REFUSE));
    }

    @Override
    public List<Event> saveOver(Plan plan, List<Effect> then) {
        return List.of(planning.save(plan, then, WhenChanged.OVERWRITE));
    }

    @Override
    public List<Event> saveUnder(Plan plan) {
        return List.of(planning.saveUnder(plan));
    }

    @Override
    public List<Event> writeSheet(String file, String sheet, String mark) {
        return List.of(planning.write(file, sheet, mark));
    }

    @Override
    public List<Event> keepDraft(Undo<Plan> history) {
        return planning.keep(history);
    }

    @Override
    public List<Event> dropDraft() {
        return planning.drop();
    }

    @Override
    public List<Event> restoreWork() {
        return reading(planning::restoreWork);
    }

    @Override
    public List<Event> discardWork() {
        return reading(planning::discardWork);
    }

    @Override
    public List<Event> onlyLook() {
        return planning.onlyLook();
    }

    @Override
    public List<Event> saveMerged(Plan plan, List<Effect> then) {
        return List.of(planning.saveMerged(plan, then));
    }

    @Override
    public List<Event> listVersions(String id) {
        return List.of(planning.versions(id));
    }

    @Override
    public List<Event> openVersion(String id, int index) {
        return reading(() -> planning.openedVersion(id, index));
    }

    @Override
    public List<Event> proposeVerse(Plan plan, VersePlace place) {
        planning.open().ifPresent(file -> proposing.forVerse(file.organ(), plan, place));
        return NOTHING;
    }

    @Override
    public List<Event> propose(Plan plan, OptionalInt hymn) {
        planning.open().ifPresent(file -> proposing.forService(file.organ(), plan, hymn));
        return NOTHING;
    }

    @Override
    public List<Event> stopProposing() {
        proposing.stop();
        return NOTHING;
    }

    @Override
    public List<Event> listPlans() {
        workshop.close();
        browsing.list();
        return planning.besideLibrary();
    }

    @Override
    public List<Event> assessPlans(List<String> ids) {
        browsing.assess(ids);
        return NOTHING;
    }

    @Override
    public List<Event> findLadders(List<Effect.LadderOf> wanted) {
        planning.open().ifPresent(file -> browsing.climb(file.organ(), wanted));
        return NOTHING;
    }

    @Override
    public List<Event> listInstruments() {
        return reading(() -> {
            List<Chooser.Row> listed = new ArrayList<>();
            for (InstrumentEntry entry : library.instruments()) {
                listed.add(new Chooser.Row(entry.id(), entry.name(), entry.place()));
            }
            return List.of(new LibraryEvent.InstrumentsListed(listed));
        });
    }

    @Override
    public List<Event> openPlan(String id) {
        workshop.close();
        return reading(() -> planning.opened(library.openPlan(id)));
    }

    @Override
    public List<Event> beginPlan(String instrument) {
        return reading(() -> List.of(planning.blank(instrument)));
    }

    @Override
    public List<Event> createPlan(ServiceHeading heading, String instrument) {
        return reading(() -> {
            List<Event> events = new ArrayList<>(planning.created(
                    heading,
                    instrument,
                    List.of(),
                    library.openOrgan(instrument).organ()));
            Player player = heading.player();
            if (player != library.player() && library.savePlayer(player) instanceof SaveOutcome.NotSaved failed) {
                events.add(Refusal.of(failed));
            }
            return events;
        });
    }

    @Override
    public List<Event> copyPlan(String id, String title, Optional<LocalDate> date, OptionalInt people, String notes) {
        return reading(() -> {
            OpenPlan from = library.openPlan(id);
            ServiceHeading was = from.plan().heading();
            ServiceHeading heading = was.withTitle(title)
                    .withDate(date)
                    .withPeople(people.orElse(was.people()))
                    .withNotes(notes);
            List<Hymn> hymns = from.plan().unanswered().hymns();
            return planning.created(heading, from.plan().instrument(), hymns, from.organ());
        });
    }

    @Override
    public List<Event> movePlan(String id, String instrument) {
        return reading(() -> {
            OpenPlan from = library.openPlan(id);
            KnownOrgan to = library.openOrgan(instrument).organ();
            ServiceHeading heading = from.plan().heading();
            Transfer transfer = new Transfer(from.organ().sound(), to.sound(), heading.people());
            List<BroughtHymn> brought =
                    from.plan().hymns().stream().map(transfer::of).toList();
            List<Event> events = new ArrayList<>(planning.created(
                    heading, instrument, brought.stream().map(BroughtHymn::hymn).toList(), to));
            if (events.stream().anyMatch(FileEvent.PlanOpened.class::isInstance)) {
                events.add(new LibraryEvent.ServiceMoved(brought.stream()
                        .flatMap(hymn -> hymn.replacements().stream())
                        .distinct()
                        .toList()));
            }
            return events;
        });
    }

    @Override
    public List<Event> searchPlans(String typed) {
        browsing.search(typed);
        return NOTHING;
    }

    @Override
    public List<Event> renamePlan(String id, String title) {
        return reading(() -> {
            Renaming renaming = library.renamePlan(id, title);
            String said = renaming.trouble().isEmpty()
                    ? "Renamed to \"" + title + "\", in " + renaming.id() + ".json."
                    : "Not renamed. " + renaming.trouble();
            return List.of(new LibraryEvent.LibraryChanged(said, Optional.of(renaming.id())));
        });
    }

    @Override
    public List<Event> binPlan(String id) {
        return reading(() -> {
            Bin.Binned there = library.bin().put(id);
            binned = Optional.of(there);
            return List.of(new LibraryEvent.LibraryChanged(
                    "Moved to " + there.path() + ". Ctrl-Z brings it back.", Optional.empty()));
        });
    }

    @Override
    public List<Event> bringBack() {
        if (binned.isEmpty()) {
            return List.of(new LibraryEvent.LibraryChanged(
                    "Nothing has gone to the bin since the program was started.", Optional.empty()));
        }
        return reading(() -> {
            String id = library.bin().bringBack(binned.get());
            binned = Optional.empty();
            return List.of(new LibraryEvent.LibraryChanged("Brought back as " + id + ".json.", Optional.of(id)));
        });
    }

    @Override
    public List<Event> readHymns(String id) {
        return reading(() -> {
            Plan plan = library.openPlan(id).plan();
            List<Chooser.Row> listed = new ArrayList<>();
            for (Hymn hymn : plan.hymns()) {
                String title = (hymn.number() + " " + hymn.title()).strip();
                listed.add(new Chooser.Row(Integer.toString(listed.size()), title, hymn.tune()));
            }
            return List.of(new LibraryEvent.HymnsRead(id, plan.heading().title(), listed));
        });
    }

    @Override
    public List<Event> bringHymn(String id, int index, Effect.Bringing as) {
        return reading(() -> {
            OpenPlan from = library.openPlan(id);
            return List.of(
                    index < from.plan().hymns().size()
                            ? new LibraryEvent.HymnBrought(from.plan().hymns().get(index), from.instrument(), as)
                            : new Event.Failed("The plan has been changed just now, and has no such hymn any more."));
        });
    }

    @Override
    public List<Event> findHymn(String except, Hymn hymn, Effect.Telling telling) {
        browsing.find(except, hymn, telling);
        return NOTHING;
    }

    @Override
    public List<Event> recalibrate(List<MeterReading> readings) {
        return reading(() -> planning.recalibrated(readings));
    }

    @Override
    public List<Event> keepExperience(Experience next, Optional<Experience> before) {
        return reading(() -> planning.kept(next, before));
    }

    @Override
    public List<Event> openUsual() {
        return workshop.usual();
    }

    @Override
    public List<Event> keepExperienceOfOrgan(Experience experience) {
        return List.of(workshop.kept(experience));
    }

    @Override
    public List<Event> openOrgan(String id) {
        return reading(() -> List.of(workshop.open(id, "")));
    }

    @Override
    public List<Event> saveOrgan(Instrument next, FormerNames change, List<Effect> then) {
        return List.of(workshop.beginSaving(next, change, then));
    }

    @Override
    public List<Event> stopSaving() {
        workshop.stopSaving();
        return NOTHING;
    }

    @Override
    public List<Event> makeOrgan(Instrument organ) {
        return reading(() -> List.of(workshop.make(organ)));
    }

    @Override
    public List<Event> keepOrganDraft(OrganDraft draft) {
        return workshop.keep(draft);
    }

    @Override
    public List<Event> dropOrganDraft() {
        workshop.drop();
        return NOTHING;
    }

    @Override
    public List<Event> repaint() {
        repaint.run();
        return NOTHING;
    }

    @Override
    public List<Event> quit() {
        workshop.close();
        ended = true;
        return NOTHING;
    }
}
