package versewind.terminal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.plan.Heading;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.screen.Effect;
import versewind.screen.Input;
import versewind.sheet.SheetHtml;
import versewind.sound.OrganSound;
import versewind.store.BadFile;
import versewind.store.Draft;
import versewind.store.InstrumentEntry;
import versewind.store.Library;
import versewind.store.OpenPlan;
import versewind.store.PlanEntry;
import versewind.store.SaveOutcome;
import versewind.store.WhenChanged;

/** Does what the editor wants done with files, and says what came of it. */
final class Outside {

    private final Library library;
    private final Drafting drafting;
    private Optional<OpenPlan> open = Optional.empty();

    Outside(Library library, Drafting drafting) {
        this.library = library;
        this.drafting = drafting;
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
        if (effect instanceof Effect.ListPlans) {
            return List.of(new Input.PlansListed(plans()));
        }
        if (effect instanceof Effect.ListInstruments) {
            return List.of(new Input.InstrumentsListed(instruments()));
        }
        if (effect instanceof Effect.OpenPlan wanted) {
            drafting.settle();
            return opened(library.openPlan(wanted.id()));
        }
        if (effect instanceof Effect.CreatePlan wanted) {
            Instrument instrument = library.openInstrument(wanted.instrument());
            return created(wanted.heading(), wanted.instrument(), List.of(), instrument);
        }
        if (effect instanceof Effect.CopyPlan wanted) {
            OpenPlan from = library.openPlan(wanted.id());
            int people = wanted.people().orElse(from.plan().heading().people());
            Heading heading = new Heading(wanted.title(), wanted.date(), people, wanted.notes());
            return created(heading, from.plan().instrument(), from.plan().hymns(), from.instrument());
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
            sound = OrganSound.open(file.instrument());
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

    private List<Input> created(Heading heading, String instrumentId, List<Hymn> hymns, Instrument instrument)
            throws BadFile {
        drafting.settle();
        Plan plan = new Plan(heading, instrumentId, hymns);
        OpenPlan fresh = library.newPlan(library.freePlanId(heading.title()), plan, instrument);
        SaveOutcome outcome = library.savePlan(fresh, WhenChanged.REFUSE);
        if (outcome instanceof SaveOutcome.Saved saved) {
            return opened(fresh.after(saved));
        }
        String why = outcome instanceof SaveOutcome.NotSaved notSaved
                ? notSaved.why()
                : "a file of that name has just been made by somebody else.";
        return List.of(new Input.Failed("The new plan was not saved to " + fresh.path() + ": " + why));
    }

    private List<Input.Listed> plans() throws BadFile {
        Comparator<PlanEntry> latestFirst = Comparator.comparing(
                        (PlanEntry entry) -> entry.date().map(Object::toString).orElse(""))
                .reversed();
        List<PlanEntry> plans = library.plans().stream()
                .sorted(latestFirst.thenComparing(PlanEntry::id))
                .toList();
        return plans.stream()
                .map(entry -> new Input.Listed(entry.id(), title(entry, plans), detail(entry)))
                .toList();
    }

    /** Plans of one title are told apart by the names of their files. */
    private static String title(PlanEntry entry, List<PlanEntry> plans) {
        boolean isAlone = plans.stream()
                        .filter(each -> each.title().equals(entry.title()))
                        .count()
                == 1;
        return isAlone ? entry.title() : entry.title() + " (" + entry.id() + ")";
    }

    private static String detail(PlanEntry entry) {
        String date = entry.date().map(Object::toString).orElse("no date");
        return entry.unsavedWork() ? date + ", unsaved work" : date;
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
