package versewind.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.screen.Command;
import versewind.screen.Event;
import versewind.store.BadFile;
import versewind.store.Bin;
import versewind.store.InstrumentEntry;
import versewind.store.Library;
import versewind.store.OpenPlan;
import versewind.store.Renaming;

/** Fetches from the library what is chosen from there, and puts its plans in order. */
final class Librarian {

    private final Library library;
    private Optional<Bin.Binned> binned = Optional.empty();

    Librarian(Library library) {
        this.library = library;
    }

    /** The hymns of a plan, to choose one of. */
    Event hymns(String id) throws BadFile {
        Plan plan = library.openPlan(id).plan();
        List<Event.Listed> listed = new ArrayList<>();
        for (Hymn hymn : plan.hymns()) {
            String title = (hymn.number() + " " + hymn.title()).strip();
            listed.add(new Event.Listed(Integer.toString(listed.size()), title, hymn.tune()));
        }
        return new Event.HymnsRead(id, plan.heading().title(), listed);
    }

    Event hymn(String id, int index) throws BadFile {
        OpenPlan from = library.openPlan(id);
        return index < from.plan().hymns().size()
                ? new Event.HymnBrought(from.plan().hymns().get(index), from.instrument())
                : new Event.Failed("The plan has been changed just now, and has no such hymn any more.");
    }

    /** The organs, to choose one of. */
    Event instruments() throws BadFile {
        List<Event.Listed> listed = new ArrayList<>();
        for (InstrumentEntry entry : library.instruments()) {
            listed.add(new Event.Listed(entry.id(), entry.name(), entry.place()));
        }
        return new Event.InstrumentsListed(listed);
    }

    Event renamed(String id, String title) throws BadFile {
        Renaming renaming = library.renamePlan(id, title);
        return new Event.LibraryChanged(
                renaming.trouble().isEmpty()
                        ? "Renamed to \"" + title + "\", in " + renaming.id() + ".json."
                        : "Not renamed. " + renaming.trouble(),
                Optional.of(renaming.id()));
    }

    Event binned(String id) throws BadFile {
        Bin.Binned there = library.bin().put(id);
        binned = Optional.of(there);
        return new Event.LibraryChanged(
                "Moved to " + there.path() + ". "
                        + Command.BRING_BACK.keys().get(0).name() + " brings it back.",
                Optional.empty());
    }

    Event broughtBack() throws BadFile {
        if (binned.isEmpty()) {
            return new Event.LibraryChanged(
                    "Nothing has gone to the bin since the program was started.", Optional.empty());
        }
        String id = library.bin().bringBack(binned.get());
        binned = Optional.empty();
        return new Event.LibraryChanged("Brought back as " + id + ".json.", Optional.of(id));
    }
}
