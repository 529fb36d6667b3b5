package versewind.store;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import versewind.organ.Quoted;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;

/** Reads a plan's file, and the instrument it names. */
final class PlanReader {
    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    /** The field of the time that a movement needs, left out where it is the usual one. */
    static final String SECONDS_A_MOVE = "seconds a move";

    private PlanReader() {}

    /** Finds the instrument that a plan names. */
    @FunctionalInterface
    interface Instruments {
        /**
         * The instrument of a name.
         *
         * @param id where the name was found, a valid one
         */
        KnownOrgan find(LocatedValue id) throws BadFile;
    }

    /**
     * A plan and the instrument it is made for.
     *
     * @param plan the plan in the names of today
     * @param organ the instrument
     * @param outdated whether a name in it is one of former days
     * @param gone what it draws or plays and the instrument has no more
     */
    record Read(Plan plan, KnownOrgan organ, boolean outdated, Set<String> gone) {}

    /**
     * Reads a plan.
     *
     * @param file its name, for the sentence if it is wrong
     * @param bytes what is in it
     * @param instruments where its instrument is found
     */
    static Read read(Path file, byte[] bytes, Instruments instruments) throws BadFile {
        LocatedValue root = JsonTree.read(file, bytes);
        Format.check(root);
        Fields fields =
                root.fields("format", "title", "date", "instrument", "people", SECONDS_A_MOVE, "notes", "hymns");
        ServiceHeading heading = heading(fields);
        String id = instrumentId(fields.at("instrument"));
        List<LocatedValue> list = fields.at("hymns").items();
        KnownOrgan organ = instruments.find(fields.at("instrument"));
        List<Hymn> hymns = new ArrayList<>();
        VerseReader verses = new VerseReader(organ);
        for (LocatedValue each : list) {
            hymns.add(hymn(each, verses));
        }
        return new Read(new Plan(heading, id, hymns), organ, verses.isOutdated(), verses.gone());
    }

    private static ServiceHeading heading(Fields fields) throws BadFile {
        String title = fields.text("title");
        Optional<LocatedValue> found = fields.find("date");
        Optional<LocalDate> date = found.isPresent() ? Optional.of(date(found.get())) : Optional.empty();
        int people = fields.at("people").whole();
        String notes = fields.textOrBlank("notes");
        Optional<LocatedValue> move = fields.find(SECONDS_A_MOVE);
        double moveS = move.isPresent()
                ? move.get().number(ServiceHeading.SHORTEST_MOVE_S, ServiceHeading.LONGEST_MOVE_S)
                : ServiceHeading.USUAL_MOVE_S;
        return fields.at("people").make(() -> new ServiceHeading(title, date, people, notes, moveS));
    }

    private static LocalDate date(LocatedValue found) throws BadFile {
        String written = found.text();
        if (DATE.matcher(written).matches()) {
            try {
                return LocalDate.parse(written);
            } catch (DateTimeException notADay) {
                // The sentence below tells it better than the exception.
            }
        }
        throw found.bad(Quoted.text(written) + " is no date", "Write it like \"2026-10-04\", year, month, day.");
    }

    private static String instrumentId(LocatedValue found) throws BadFile {
        String id = found.text();
        if (!Format.isId(id)) {
            throw found.bad(
                    Quoted.text(id) + " is not the name of an instrument's file",
                    "Write the name of the file in the folder instruments, without its folder and without \".json\".");
        }
        return id;
    }

    private static Hymn hymn(LocatedValue found, VerseReader reader) throws BadFile {
        Fields fields = found.fields("number", "title", "tune", "metre", "key", "tempo", "notes", "verses");
        String number = fields.textOrBlank("number");
        String title = fields.text("title");
        String tune = fields.textOrBlank("tune");
        String metre = fields.textOrBlank("metre");
        String key = fields.textOrBlank("key");
        OptionalInt tempo = optionalWhole(fields, "tempo");
        String notes = fields.textOrBlank("notes");
        List<Verse> verses = new ArrayList<>();
        for (LocatedValue each : fields.at("verses").items()) {
            verses.add(reader.verse(each));
        }
        return fields.near("tempo").make(() -> new Hymn(number, title, tune, metre, key, tempo, notes, verses));
    }

    /** A whole number that may be left out. */
    static OptionalInt optionalWhole(Fields fields, String name) throws BadFile {
        Optional<LocatedValue> found = fields.find(name);
        return found.isPresent() ? OptionalInt.of(found.get().whole()) : OptionalInt.empty();
    }
}
