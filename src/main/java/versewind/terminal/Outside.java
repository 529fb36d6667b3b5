package versewind.terminal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.plan.Heading;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.screen.Command;
import versewind.screen.Effect;
import versewind.screen.Input;
import versewind.sheet.SheetHtml;
import versewind.sound.Fit;
import versewind.sound.OrganSound;
import versewind.sound.Reading;
import versewind.store.BadFile;
import versewind.store.Bin;
import versewind.store.Draft;
import versewind.store.InstrumentEntry;
import versewind.store.KnownOrgan;
import versewind.store.Library;
import versewind.store.OpenOrgan;
import versewind.store.OpenPlan;
import versewind.store.Renaming;
import versewind.store.SaveOutcome;
import versewind.store.WhenChanged;

/** Does what the editor wants done with files, and says what came of it. */
final class Outside {

    private final Library library;
    private final Drafting drafting;
    private final Browsing browsing;
    private final Proposing proposing;
    private final Workshop workshop;
    private Optional<OpenPlan> open = Optional.empty();
    private Optional<Bin.Binned> binned = Optional.empty();

    Outside(Library library, Drafting drafting, Browsing browsing, Proposing proposing) {
        this.library = library;
        this.drafting = drafting;
        this.browsing = browsing;
        this.proposing = proposing;
        this.workshop = new Workshop(library);
    }

    /** Does it, and says what came of it; effects that belong to the terminal are none of its business. */
    List<Input> perform(Effect effect) {
        try {
            return performed(effect);
        } catch (BadFile bad) {
            return List.of(new Input.Failed(bad.getMessage()));
        }
    }

    private List<Input> performed(Effect effect) throws BadFile {
        if (effect instanceof Effect.Save save) {
            return List.of(save(save.plan(), save.then(), WhenChanged.REFUSE));
        }
        if (effect instanceof Effect.SaveOver save) {
            return List.of(save(save.plan(), save.then(), WhenChanged.OVERWRITE));
        }
        if (effect instanceof Effect.KeepDraft draft) {
            open.ifPresent(file -> drafting.keep(file.with(draft.plan())));
            return List.of();
        }
        if (effect instanceof Effect.DropDraft) {
            drafting.forget();
            open.ifPresent(file -> library.dropDraft(file.path()));
            return List.of();
        }
        if (effect instanceof Effect.WriteSheet sheet) {
            return List.of(write(sheet.html()));
        }
        if (effect instanceof Effect.Propose wanted) {
            open.ifPresent(file -> proposing.start(file, wanted));
            return List.of();
        }
        if (effect instanceof Effect.StopProposing) {
            proposing.stop();
            return List.of();
        }
        if (effect instanceof Effect.ListPlans) {
            drafting.settle();
            browsing.list();
            return List.of();
        }
        if (effect instanceof Effect.AssessPlans wanted) {
            browsing.assess(wanted.ids());
            return List.of();
        }
        if (effect instanceof Effect.FindLadders ladders) {
            open.ifPresent(file -> browsing.climb(file.organ(), ladders.wanted()));
            return List.of();
        }
        if (effect instanceof Effect.ReadHymns wanted) {
            return List.of(hymns(wanted.plan()));
        }
        if (effect instanceof Effect.BringHymn wanted) {
            return List.of(hymn(wanted.plan(), wanted.hymn()));
        }
        if (effect instanceof Effect.SaveUnder wanted) {
            return List.of(saveUnder(wanted.plan()));
        }
        if (effect instanceof Effect.RenamePlan wanted) {
            return List.of(renamed(library.renamePlan(wanted.id(), wanted.title()), wanted.title()));
        }
        if (effect instanceof Effect.BinPlan wanted) {
            binned = Optional.of(library.bin().put(wanted.id()));
            return List.of(new Input.LibraryChanged(
                    "Moved to " + binned.get().path() + ". "
                            + Command.BRING_BACK.keys().get(0).name() + " brings it back.",
                    Optional.empty()));
        }
        if (effect instanceof Effect.BringBack) {
            return List.of(broughtBack());
        }
        if (effect instanceof Effect.ListInstruments) {
            return List.of(new Input.InstrumentsListed(instruments()));
        }
        if (effect instanceof Effect.OpenPlan wanted) {
            drafting.settle();
            return opened(library.openPlan(wanted.id()));
        }
        if (effect instanceof Effect.Recalibrate wanted) {
            return open.isPresent() ? recalibrated(open.get(), wanted.readings()) : List.of();
        }
        if (effect instanceof Effect.OpenOrgan wanted) {
            drafting.settle();
            return List.of(workshop.open(wanted.id()));
        }
        if (effect instanceof Effect.SaveOrgan wanted) {
            return List.of(workshop.save(wanted));
        }
        if (effect instanceof Effect.MakeOrgan wanted) {
            return List.of(workshop.make(wanted.organ()));
        }
        if (effect instanceof Effect.KeepOrganDraft draft) {
            return workshop.keep(draft.draft()).map(List::of).orElse(List.of());
        }
        if (effect instanceof Effect.DropOrganDraft) {
            workshop.drop();
            return List.of();
        }
        if (effect instanceof Effect.CloseOrgan) {
            return List.of(new Input.OrganClosed());
        }
        if (effect instanceof Effect.CreatePlan wanted) {
            KnownOrgan organ = library.openOrgan(wanted.instrument()).organ();
            return created(wanted.heading(), wanted.instrument(), List.of(), organ);
        }
        if (effect instanceof Effect.CopyPlan wanted) {
            OpenPlan from = library.openPlan(wanted.id());
            int people = wanted.people().orElse(from.plan().heading().people());
            Heading heading = new Heading(
                    wanted.title(),
                    wanted.date(),
                    people,
                    wanted.notes(),
                    from.plan().heading().moveS());
            return created(
                    heading, from.plan().instrument(), from.plan().unanswered().hymns(), from.organ());
        }
        return List.of();
    }

    private Input save(Plan plan, List<Effect> then, WhenChanged whenChanged) {
        if (open.isEmpty()) {
            return new Input.Failed("No plan is open.");
        }
        drafting.forget();
        OpenPlan wanted = open.get().with(plan);
        SaveOutcome outcome = library.savePlan(wanted, whenChanged);
        if (outcome instanceof SaveOutcome.Saved saved) {
            open = Optional.of(wanted.after(saved));
            return new Input.Saved(plan, then);
        }
        drafting.keep(wanted);
        if (outcome instanceof SaveOutcome.ChangedOnDisk) {
            return new Input.SaveRefused(plan, then);
        }
        SaveOutcome.NotSaved notSaved = (SaveOutcome.NotSaved) outcome;
        return new Input.Failed("Not saved to " + notSaved.path() + ": " + notSaved.why());
    }

    private List<Input> recalibrated(OpenPlan plan, List<Reading> readings) throws BadFile {
        OpenOrgan organ = library.openOrganOf(plan);
        if (!organ.organ().equals(plan.organ())) {
            return List.of(new Input.Failed("The organ's file was changed by somebody else since the plan was opened."
                    + " Open the plan again, then take the reading."));
        }
        OpenOrgan fitted = organ.with(organ.organ().fittedTo(readings));
        SaveOutcome outcome = library.saveOrgan(fitted);
        if (outcome instanceof SaveOutcome.NotSaved failed) {
            return List.of(new Input.Failed("Not saved to " + failed.path() + ": " + failed.why()));
        }
        if (outcome instanceof SaveOutcome.ChangedOnDisk changed) {
            return List.of(new Input.Failed(changed.path() + " was changed just now by somebody else. Try again."));
        }
        open = Optional.of(plan.with(fitted.organ()));
        return List.of(new Input.Recalibrated(
                fitted.organ().sound(), Fit.outliers(fitted.organ().soundBeforeReadings(), readings)));
    }

    private Input write(String sheet) {
        if (open.isEmpty()) {
            return new Input.Failed("No plan is open.");
        }
        Path plan = open.get().path();
        Path file = plan.resolveSibling(id(plan) + ".html");
        SaveOutcome outcome = library.saveMade(file, sheet, SheetHtml.MADE_BY);
        if (outcome instanceof SaveOutcome.Saved) {
            return new Input.Done("The sheet is written to " + file + ".");
        }
        String why = outcome instanceof SaveOutcome.NotSaved notSaved
                ? notSaved.why()
                : "Somebody else has just changed it. Try again.";
        return new Input.Failed("The sheet is not written to " + file + ": " + why);
    }

    /** A plan that has been read becomes the one that is worked on. */
    List<Input> opened(OpenPlan file) {
        OrganSound sound;
        try {
            sound = file.organ().sound();
        } catch (IllegalArgumentException unknownMaterial) {
            return List.of(new Input.Failed(
                    file.instrument().name() + " cannot be estimated: " + unknownMaterial.getMessage()));
        }
        open = Optional.of(file);
        Optional<Plan> draft = file.draft()
                .flatMap(each -> each instanceof Draft.Kept kept ? Optional.of(kept.plan()) : Optional.empty());
        List<Input> inputs = new ArrayList<>();
        inputs.add(new Input.PlanOpened(id(file.path()), file.plan(), file.instrument(), sound, draft));
        file.draft().ifPresent(each -> {
            if (each instanceof Draft.Unreadable unreadable) {
                inputs.add(new Input.Failed("Unsaved work was kept, but cannot be read: "
                        + unreadable.why().getMessage()));
            }
        });
        return inputs;
    }

    private List<Input> created(Heading heading, String instrumentId, List<Hymn> hymns, KnownOrgan organ)
            throws BadFile {
        drafting.settle();
        Plan plan = new Plan(heading, instrumentId, hymns);
        OpenPlan fresh = library.newPlan(library.freePlanId(heading.title()), plan, organ);
        SaveOutcome outcome = library.savePlan(fresh, WhenChanged.REFUSE);
        if (outcome instanceof SaveOutcome.Saved saved) {
            return opened(fresh.after(saved));
        }
        return List.of(notMade(fresh, outcome));
    }

    private Input hymns(String id) throws BadFile {
        Plan plan = library.openPlan(id).plan();
        List<Input.Listed> listed = new ArrayList<>();
        for (Hymn hymn : plan.hymns()) {
            String title = (hymn.number() + " " + hymn.title()).strip();
            listed.add(new Input.Listed(Integer.toString(listed.size()), title, hymn.tune()));
        }
        return new Input.HymnsRead(id, plan.heading().title(), listed);
    }

    private Input hymn(String id, int index) throws BadFile {
        OpenPlan from = library.openPlan(id);
        return index < from.plan().hymns().size()
                ? new Input.HymnBrought(from.plan().hymns().get(index), from.instrument())
                : new Input.Failed("The plan has been changed just now, and has no such hymn any more.");
    }

    private static Input renamed(Renaming renaming, String title) {
        return new Input.LibraryChanged(
                renaming.trouble().isEmpty()
                        ? "Renamed to \"" + title + "\", in " + renaming.id() + ".json."
                        : "Not renamed. " + renaming.trouble(),
                Optional.of(renaming.id()));
    }

    private Input broughtBack() throws BadFile {
        if (binned.isEmpty()) {
            return new Input.LibraryChanged(
                    "Nothing has gone to the bin since the program was started.", Optional.empty());
        }
        String id = library.bin().bringBack(binned.get());
        binned = Optional.empty();
        return new Input.LibraryChanged("Brought back as " + id + ".json.", Optional.of(id));
    }

    /** The plan goes on in a file of its own; the old one stays as it was last saved. */
    private Input saveUnder(Plan plan) {
        if (open.isEmpty()) {
            return new Input.Failed("No plan is open.");
        }
        drafting.forget();
        OpenPlan old = open.get();
        OpenPlan fresh = library.newPlan(library.freePlanId(plan.heading().title()), plan, old.organ());
        SaveOutcome outcome = library.savePlan(fresh, WhenChanged.REFUSE);
        if (outcome instanceof SaveOutcome.Saved saved) {
            library.dropDraft(old.path());
            open = Optional.of(fresh.after(saved));
            return new Input.SavedUnder(id(saved.path()), plan);
        }
        drafting.keep(old.with(plan));
        return notMade(fresh, outcome);
    }

    private static Input notMade(OpenPlan fresh, SaveOutcome outcome) {
        String why = outcome instanceof SaveOutcome.NotSaved notSaved
                ? notSaved.why()
                : "a file of that name has just been made by somebody else.";
        return new Input.Failed("The new plan was not saved to " + fresh.path() + ": " + why);
    }

    private List<Input.Listed> instruments() throws BadFile {
        List<Input.Listed> listed = new ArrayList<>();
        for (InstrumentEntry entry : library.instruments()) {
            listed.add(new Input.Listed(entry.id(), entry.name(), entry.place()));
        }
        return listed;
    }

    private static String id(Path path) {
        String name = path.getFileName().toString();
        return name.endsWith(".json") ? name.substring(0, name.length() - ".json".length()) : name;
    }
}
