package versewind.store;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import versewind.organ.BoxPosition;
import versewind.organ.FormerNames;
import versewind.organ.FormerNames.Now;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Nearest;
import versewind.organ.Quoted;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.organ.StopName;
import versewind.plan.Feedback;
import versewind.plan.HandsAndFeet;
import versewind.plan.HeardAs;
import versewind.plan.Locks;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Silenced;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.rules.Rule;

/**
 * Reads the verses of a plan for one instrument. A name of former days is taken for what it is called today; what is gone is
 * left out and stands in the note of the verse, so that it is not lost.
 */
final class VerseReader {
    private final Instrument instrument;
    private final FormerNames former;
    private final Set<String> gone = new LinkedHashSet<>();
    private final Set<String> goneHere = new LinkedHashSet<>();
    private boolean outdated;

    VerseReader(KnownOrgan organ) {
        this.instrument = organ.instrument();
        this.former = organ.former();
    }

    /** Whether any name that was read is one of former days. */
    boolean isOutdated() {
        return outdated;
    }

    /** What was read and is gone, each once. */
    Set<String> gone() {
        return Collections.unmodifiableSet(gone);
    }

    /** What a name of former days means today: empty if it is gone, which is noted. */
    private <T> Optional<T> today(Now<T> now, T written, String words) {
        outdated |= !now.name().equals(Optional.of(written));
        if (now.name().isEmpty()) {
            gone.add(words);
            goneHere.add(words);
        }
        return now.name();
    }

    private String noted(String note) {
        String said = goneHere.isEmpty()
                ? note
                : (note + (note.matches("(?s).*[\\p{L}\\d]") ? "." : "") + " No longer on the organ: "
                                + String.join(", ", goneHere) + ".")
                        .strip();
        goneHere.clear();
        return said;
    }

    Verse verse(LocatedValue found) throws BadFile {
        Fields fields = found.fields(
                "kind",
                "label",
                "mode",
                "singing",
                "people",
                "hands",
                "right",
                "left",
                "drawn",
                "couplers",
                "boxes",
                "tremulants",
                "piston",
                "note",
                "mood",
                "always",
                "never",
                "silenced",
                "heard",
                "present");
        VerseKind kind = fields.at("kind").choice(List.of(VerseKind.values()), VerseKind::word);
        String label = fields.text("label");
        Mode mode = fields.at("mode").choice(List.of(Mode.values()), Mode::word);
        Singing singing = fields.at("singing").choice(List.of(Singing.values()), Singing::word);
        OptionalInt people = PlanReader.optionalWhole(fields, "people");
        HandsAndFeet hands = hands(fields);
        Registration registration = registration(fields);
        String piston = fields.textOrBlank("piston");
        Optional<LocatedValue> moodFound = fields.find("mood");
        Mood mood = moodFound.isPresent() ? moodFound.get().choice(List.of(Mood.values()), Mood::word) : Mood.PLAIN;
        Locks locks = locks(fields);
        String note = noted(fields.textOrBlank("note"));
        List<Silenced> silenced = silenced(fields.entries("silenced"));
        Optional<Feedback> answer = answer(fields);
        return fields.near("people")
                .make(() -> new Verse(
                        kind,
                        label,
                        mode,
                        singing,
                        people,
                        hands,
                        registration,
                        piston,
                        note,
                        mood,
                        locks,
                        silenced,
                        answer));
    }

    private Locks locks(Fields fields) throws BadFile {
        Optional<LocatedValue> always = fields.find("always");
        Optional<LocatedValue> never = fields.find("never");
        IndexSet in = always.isPresent() ? stops(always.get()) : IndexSet.EMPTY;
        IndexSet out = never.isPresent() ? stops(never.get()) : IndexSet.EMPTY;
        IndexSet both = in.minus(in.minus(out));
        if (!both.isEmpty()) {
            StopName name = instrument
                    .stops()
                    .get(both.stream().findFirst().orElseThrow())
                    .name();
            throw never.orElseThrow()
                    .bad(
                            Quoted.text(name.label()) + " of " + Quoted.plain(name.division())
                                    + " is to be drawn always and never",
                            "Take it out of one of the two.");
        }
        return new Locks(in, out);
    }

    private static Optional<Feedback> answer(Fields fields) throws BadFile {
        Optional<LocatedValue> found = fields.find("heard");
        if (found.isEmpty()) {
            Optional<LocatedValue> alone = fields.find("present");
            if (alone.isPresent()) {
                throw alone.get().bad("nothing is said of what was heard", "Write \"heard\" too, or leave this out.");
            }
            return Optional.empty();
        }
        HeardAs heard = found.get().choice(List.of(HeardAs.values()), HeardAs::word);
        int present = fields.at("present").whole();
        return Optional.of(fields.at("present").make(() -> new Feedback(heard, present)));
    }

    private static List<Silenced> silenced(Map<String, LocatedValue> entries) throws BadFile {
        List<Silenced> silenced = new ArrayList<>();
        for (Map.Entry<String, LocatedValue> entry : entries.entrySet()) {
            String rule = entry.getKey();
            if (Rule.ofWord(rule).isEmpty()) {
                throw entry.getValue()
                        .bad(
                                "there is no rule called " + Quoted.text(rule),
                                Nearest.sentence(
                                        rule,
                                        Stream.of(Rule.values()).map(Rule::word).toList(),
                                        "The rules are"));
            }
            silenced.add(new Silenced(rule, entry.getValue().text()));
        }
        return silenced;
    }

    HandsAndFeet hands(Fields fields) throws BadFile {
        HandsAndFeet.Layout layout =
                fields.at("hands").choice(List.of(HandsAndFeet.Layout.values()), HandsAndFeet.Layout::word);
        return new HandsAndFeet(layout, manual(fields.at("right")), manual(fields.at("left")));
    }

    private int manual(LocatedValue found) throws BadFile {
        Optional<String> name = division(found, found.text());
        if (name.isEmpty()) {
            return instrument.mainDivision();
        }
        int division = instrument.division(name.get()).getAsInt();
        if (instrument.divisions().get(division).isPedal()) {
            throw found.bad("a hand cannot play the pedal", "Name the division of a manual.");
        }
        return division;
    }

    Registration registration(Fields fields) throws BadFile {
        List<String> couplers = instrument.couplerNames();
        List<String> tremulants = instrument.tremulantNames();
        Registration drawn = new Registration(
                stops(fields.at("drawn")),
                knobs(fields.items("couplers"), couplers, name -> former.coupler(instrument, name), "coupler"),
                knobs(fields.items("tremulants"), tremulants, name -> former.tremulant(instrument, name), "tremulant"),
                Registration.silent(instrument).boxes());
        for (Map.Entry<String, LocatedValue> entry : fields.entries("boxes").entrySet()) {
            LocatedValue found = entry.getValue();
            Optional<String> name = division(found, entry.getKey());
            if (name.isEmpty()) {
                continue;
            }
            int division = instrument.division(name.get()).getAsInt();
            if (former.boxes().contains(name.get())) {
                today(Now.gone(), name.get(), "the box of " + name.get());
                continue;
            }
            if (!instrument.divisions().get(division).isEnclosed()) {
                throw found.bad(Quoted.plain(entry.getKey()) + " does not stand in a box", "Leave out its position.");
            }
            drawn = drawn.withBox(division, found.choice(List.of(BoxPosition.values()), BoxPosition::word));
        }
        return drawn;
    }

    private IndexSet stops(LocatedValue found) throws BadFile {
        List<Integer> drawn = new ArrayList<>();
        for (Map.Entry<String, LocatedValue> entry : found.entries().entrySet()) {
            Optional<String> division = division(entry.getValue(), entry.getKey());
            Set<String> seen = new HashSet<>();
            for (LocatedValue each : entry.getValue().items()) {
                StopName written = new StopName(entry.getKey(), each.text());
                Optional<Now<StopName>> now = former.stop(instrument, written);
                if (now.isEmpty()) {
                    throw noStop(each, division.orElse(entry.getKey()));
                }
                requireOnce(seen, each.text(), each);
                today(now.get(), written, written.toString())
                        .map(name -> instrument.stop(name).getAsInt())
                        .filter(stop -> !drawn.contains(stop))
                        .ifPresent(drawn::add);
            }
        }
        return IndexSet.of(drawn.stream().mapToInt(Integer::intValue));
    }

    private BadFile noStop(LocatedValue found, String division) throws BadFile {
        List<String> labels = instrument.division(division).isPresent()
                ? instrument.divisions().get(instrument.division(division).getAsInt()).stops().stream()
                        .map(Stop::label)
                        .toList()
                : List.of();
        return found.bad(
                "the organ has no stop " + Quoted.text(found.text()) + " in " + Quoted.plain(division),
                Nearest.sentence(found.text(), labels, Quoted.plain(division) + " has"));
    }

    private IndexSet knobs(
            List<LocatedValue> found, List<String> names, Function<String, Optional<Now<String>>> former, String thing)
            throws BadFile {
        List<Integer> drawn = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (LocatedValue each : found) {
            String name = each.text();
            Optional<Now<String>> now = former.apply(name);
            if (now.isEmpty()) {
                throw each.bad(
                        "the organ has no " + thing + " " + Quoted.text(name),
                        Nearest.sentence(name, names, "The " + thing + "s are"));
            }
            requireOnce(seen, name, each);
            today(now.get(), name, name).map(names::indexOf).ifPresent(drawn::add);
        }
        return IndexSet.of(drawn.stream().mapToInt(Integer::intValue));
    }

    private static void requireOnce(Set<String> seen, String name, LocatedValue found) throws BadFile {
        if (!seen.add(name)) {
            throw found.bad(Quoted.text(name) + " stands here twice", "Take one of the two out.");
        }
    }

    /** The division of today that is meant; empty where it is gone, which is noted. */
    private Optional<String> division(LocatedValue found, String name) throws BadFile {
        Optional<Now<String>> division = former.division(instrument, name);
        if (division.isEmpty()) {
            List<String> names = instrument.divisionNames();
            throw found.bad(
                    "the organ has no division " + Quoted.text(name),
                    Nearest.sentence(name, names, "The divisions are"));
        }
        return today(division.get(), name, name);
    }
}
