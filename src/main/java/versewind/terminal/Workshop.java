package versewind.terminal;

import java.util.List;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.screen.Effect;
import versewind.screen.Event;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.OpenOrgan;
import versewind.store.OrganOutcome;
import versewind.store.SaveOutcome;
import versewind.workshop.OrganDraft;

/** Opens, writes and makes the organs that are changed in the editor. */
final class Workshop {

    private final Library library;
    private Optional<OpenOrgan> open = Optional.empty();

    Workshop(Library library) {
        this.library = library;
    }

    Event open(String id) throws BadFile {
        OpenOrgan organ = library.openOrgan(id);
        open = Optional.of(organ);
        return new Event.OrganOpened(id, organ.organ().instrument(), "", library.organDraftOf(organ));
    }

    /** Keeps a draft beside the organ's file; says so if that cannot be done. */
    Optional<Event> keep(OrganDraft draft) {
        return open.map(organ -> library.keepOrganDraft(organ, draft))
                .filter(SaveOutcome.NotSaved.class::isInstance)
                .map(SaveOutcome.NotSaved.class::cast)
                .map(failed -> new Event.Failed("Unsaved work is not kept: " + failed.why()));
    }

    void drop() {
        open.ifPresent(library::dropOrganDraft);
    }

    Event save(Effect.SaveOrgan wanted) {
        if (open.isEmpty()) {
            return new Event.Failed("No organ is open.");
        }
        OrganOutcome outcome = library.saveChangedOrgan(open.get(), wanted.next(), wanted.change());
        if (outcome.saved() instanceof SaveOutcome.NotSaved failed) {
            return Refusal.of(failed);
        }
        if (outcome.saved() instanceof SaveOutcome.ChangedOnDisk changed) {
            return new Event.Failed(
                    changed.path() + " was changed by somebody else since it was opened. Leave it and open it again.");
        }
        open = Optional.of(outcome.open());
        drop();
        return new Event.OrganSaved(outcome.open().organ().instrument(), told(outcome), wanted.then());
    }

    /** What became of the plans: those that miss something first. */
    private static String told(OrganOutcome outcome) {
        if (!outcome.troubles().isEmpty()) {
            return "Saved, but a plan could not be brought up to date: "
                    + outcome.troubles().get(0);
        }
        if (!outcome.missing().isEmpty()) {
            return "Saved. Plans that miss something say so in their notes: " + String.join("; ", outcome.missing());
        }
        List<String> plans = outcome.rewritten().stream().distinct().toList();
        return plans.isEmpty() ? "Saved." : "Saved, and the new names in " + String.join(", ", plans) + ".";
    }

    Event make(Instrument organ) throws BadFile {
        String id = library.freeInstrumentId(organ.name());
        SaveOutcome outcome = library.saveNewInstrument(id, organ);
        if (outcome instanceof SaveOutcome.NotSaved failed) {
            return Refusal.of(failed);
        }
        if (outcome instanceof SaveOutcome.ChangedOnDisk) {
            return new Event.Failed("A file of that name has just been made by somebody else. Try again.");
        }
        Event.OrganOpened opened = (Event.OrganOpened) open(id);
        return new Event.OrganOpened(
                id,
                opened.organ(),
                "Written to " + id + ".json. What the list does not tell is supposed: look at the room, at the end.",
                Optional.empty());
    }
}
