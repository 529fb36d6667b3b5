package versewind.terminal;

import java.util.List;
import versewind.screen.Effect;
import versewind.screen.Event;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.OpenPlan;
import versewind.store.WhenChanged;

/** Does what the editor wants done with files, and says what came of it. */
final class EffectRunner {

    private final Library library;
    private final Planning planning;
    private final Librarian librarian;
    private final AutosaveWriter drafting;
    private final Browsing browsing;
    private final BackgroundSearch proposing;
    private final Workshop workshop;

    EffectRunner(Library library, AutosaveWriter drafting, Browsing browsing, BackgroundSearch proposing) {
        this.library = library;
        this.drafting = drafting;
        this.browsing = browsing;
        this.proposing = proposing;
        this.planning = new Planning(library, drafting);
        this.librarian = new Librarian(library);
        this.workshop = new Workshop(library);
    }

    /** Does it, and says what came of it; effects that belong to the terminal are none of its business. */
    List<Event> perform(Effect effect) {
        try {
            return performed(effect);
        } catch (BadFile bad) {
            return List.of(new Event.Failed(bad.getMessage()));
        }
    }

    private List<Event> performed(Effect effect) throws BadFile {
        if (effect instanceof Effect.Save save) {
            return List.of(planning.save(save.plan(), save.then(), WhenChanged.REFUSE));
        }
        if (effect instanceof Effect.SaveOver save) {
            return List.of(planning.save(save.plan(), save.then(), WhenChanged.OVERWRITE));
        }
        if (effect instanceof Effect.KeepDraft draft) {
            planning.keep(draft.plan());
            return List.of();
        }
        if (effect instanceof Effect.DropDraft) {
            planning.drop();
            return List.of();
        }
        if (effect instanceof Effect.WriteSheet sheet) {
            return List.of(planning.write(sheet.html()));
        }
        if (effect instanceof Effect.Propose wanted) {
            planning.open().ifPresent(file -> proposing.start(file, wanted));
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
            planning.open().ifPresent(file -> browsing.climb(file.organ(), ladders.wanted()));
            return List.of();
        }
        if (effect instanceof Effect.ReadHymns wanted) {
            return List.of(librarian.hymns(wanted.plan()));
        }
        if (effect instanceof Effect.BringHymn wanted) {
            return List.of(librarian.hymn(wanted.plan(), wanted.hymn()));
        }
        if (effect instanceof Effect.SaveUnder wanted) {
            return List.of(planning.saveUnder(wanted.plan()));
        }
        if (effect instanceof Effect.RenamePlan wanted) {
            return List.of(librarian.renamed(wanted.id(), wanted.title()));
        }
        if (effect instanceof Effect.BinPlan wanted) {
            return List.of(librarian.binned(wanted.id()));
        }
        if (effect instanceof Effect.BringBack) {
            return List.of(librarian.broughtBack());
        }
        if (effect instanceof Effect.ListInstruments) {
            return List.of(librarian.instruments());
        }
        if (effect instanceof Effect.OpenPlan wanted) {
            drafting.settle();
            return planning.opened(library.openPlan(wanted.id()));
        }
        if (effect instanceof Effect.Recalibrate wanted) {
            return planning.recalibrated(wanted.readings());
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
            return List.of(new Event.OrganClosed());
        }
        if (effect instanceof Effect.CreatePlan wanted) {
            return planning.created(wanted);
        }
        if (effect instanceof Effect.CopyPlan wanted) {
            return planning.copied(wanted);
        }
        return List.of();
    }

    /** A plan that has been read becomes the one that is worked on. */
    List<Event> opened(OpenPlan file) {
        return planning.opened(file);
    }
}
