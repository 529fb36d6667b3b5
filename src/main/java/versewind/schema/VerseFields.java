package versewind.schema;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import versewind.organ.IndexSet;
import versewind.organ.NameList;
import versewind.organ.Nearest;
import versewind.organ.Quoted;
import versewind.organ.Registration;
import versewind.organ.StopName;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Locks;
import versewind.plan.Mood;
import versewind.plan.Played;
import versewind.plan.Share;
import versewind.plan.Silenced;
import versewind.plan.Singing;
import versewind.plan.Sung;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.rules.Rule;
import versewind.schema.Field.Layout;

/** The fields of a verse. */
public final class VerseFields {
    static final Kind<Integer> PEOPLE_COUNT = Kinds.whole(1, Verse.MOST_PEOPLE);
    static final Kind<Integer> IN_TEN_COUNT = Kinds.whole(1, 10);

    public static final Table<Verse> TABLE =
            Table.block("One verse of a hymn and what is drawn for it.", "people", VerseFields::verse, VerseFields::of);

    public static final Field<Verse, VerseKind> KIND =
            TABLE.add("kind", Kinds.choice(VerseKind.values()), "what part of the hymn it is");

    public static final Field<Verse, String> LABEL = TABLE.add(
                    "label", Kinds.TEXT, "what stands before the verse on the desk, as V2")
            .blank("")
            .laid(Layout.BESIDE);

    public static final Field<Verse, Boolean> OPTIONAL = TABLE.add(
                    "optional", Kinds.FLAG, "whether the verse may be left out")
            .orElse(false)
            .laid(Layout.BESIDE);

    public static final Field<Verse, SungBy> MODE =
            TABLE.add("mode", Kinds.choice(SungBy.values()), "singers").laid(Layout.BESIDE);

    public static final Field<Verse, Singing> SINGING = TABLE.add(
                    "singing", Kinds.choice(Singing.values()), "how strongly they sing")
            .blank(Singing.ORDINARY)
            .laid(Layout.BESIDE);

    public static final Field<Verse, Optional<Integer>> PEOPLE = TABLE.ifAny(
                    "people",
                    PEOPLE_COUNT,
                    "people present in this verse, or singers of a small choir, if not as in the service")
            .column("singers")
            .laid(Layout.BESIDE);

    public static final Field<Verse, Optional<Integer>> IN_TEN = TABLE.ifAny(
                    "in ten", IN_TEN_COUNT, "how many of every ten people present sing, if not as in the service")
            .column("singing in ten")
            .label("Singing")
            .laid(Layout.BESIDE);

    private static final PlayedFields<Verse> PLAYED = new PlayedFields<>(TABLE);

    public static final Field<Verse, String> PISTON =
            TABLE.text("piston", "the piston that sets it, as G3 or 2/G3, or those of divisions, as Great 3, Swell 2");

    public static final Field<Verse, String> NOTE = TABLE.text("note", "a note for the desk");

    public static final Field<Verse, Mood> MOOD =
            TABLE.add("mood", Kinds.choice(Mood.values()), "how it is to sound").orElse(Mood.PLAIN);

    public static final Field<Verse, IndexSet> ALWAYS = TABLE.add(
                    "always", PlayedFields.STOPS, "stops that must be drawn, by division")
            .orElse(IndexSet.EMPTY)
            .laid(Layout.FIT);

    public static final Field<Verse, IndexSet> NEVER = TABLE.add(
                    "never", PlayedFields.STOPS, "stops that must not be drawn, by division")
            .orElse(IndexSet.EMPTY)
            .laid(Layout.FIT);

    public static final Field<Verse, Locks.Kept> KEEP = TABLE.add(
                    "keep", Kinds.choice(Locks.Kept.values()), "what proposals leave as it is")
            .orElse(Locks.Kept.NOTHING);

    public static final Field<Verse, List<Silenced>> SILENCED = TABLE.add(
                    "silenced", new Rules(), "findings that are ignored here: the rule, and why")
            .orElse(List.of())
            .laid(Layout.BLOCK);

    public static final Field<Verse, Optional<HeardAs>> HEARD = TABLE.ifAny(
            "heard", Kinds.choice(HeardAs.values()), "how the organ was to the singers, as it was felt afterwards");

    public static final Field<Verse, Optional<Integer>> PRESENT = TABLE.ifAny(
                    "present", PEOPLE_COUNT, "number of people that were present then")
            .laid(Layout.BESIDE);

    public static final Field<Verse, Optional<Registration>> PLAYED_THEN =
            TABLE.ifAny("played", PlayedFields.whole(), "what was drawn then, if not as planned");

    private VerseFields() {}

    private static Object of(Verse verse, String field) {
        return switch (field) {
            case "kind" -> verse.kind();
            case "label" -> verse.label();
            case "optional" -> verse.isOptional();
            case "mode" -> verse.sungBy();
            case "singing" -> verse.singing();
            case "people" -> boxed(verse.people());
            case "in ten" -> boxed(verse.sung().share().ofVerse());
            case "piston" -> verse.piston();
            case "note" -> verse.note();
            case "mood" -> verse.mood();
            case "always" -> verse.locks().always();
            case "never" -> verse.locks().never();
            case "keep" -> verse.locks().kept();
            case "silenced" -> verse.silenced();
            case "heard" -> verse.answer().map(Feedback::heard);
            case "present" -> verse.answer().map(Feedback::present);
            case "played" -> verse.answer().flatMap(Feedback::played);
            default -> PlayedFields.of(verse.hands(), verse.registration(), field);
        };
    }

    static Optional<Integer> boxed(OptionalInt number) {
        return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
    }

    static OptionalInt unboxed(Optional<Integer> number) {
        return number.isPresent() ? OptionalInt.of(number.get()) : OptionalInt.empty();
    }

    private static Verse verse(Values values) throws Refused {
        Verse verse = new Verse(
                values.get(KIND),
                values.get(LABEL),
                values.get(OPTIONAL),
                new Sung(
                        values.get(MODE),
                        values.get(SINGING),
                        unboxed(values.get(PEOPLE)),
                        new Share(unboxed(values.get(IN_TEN)), Share.USUAL_IN_TEN)),
                new Played(PLAYED.played(values), PLAYED.registration(values)),
                values.names().pistons(values.get(PISTON)),
                values.get(NOTE),
                values.get(MOOD),
                locks(values),
                values.get(SILENCED),
                answer(values));
        return verse.withNote(note(verse.note(), values.names().takeGone()));
    }

    /** A note that also names what is no longer on the organ, so that it is not lost. */
    private static String note(String note, Set<String> gone) {
        if (gone.isEmpty()) {
            return note;
        }
        boolean isOpen = !note.isEmpty() && Character.isLetterOrDigit(note.codePointBefore(note.length()));
        return (note + (isOpen ? "." : "") + " No longer on the organ: " + String.join(", ", gone) + ".").strip();
    }

    private static Locks locks(Values values) throws Refused {
        IndexSet always = values.get(ALWAYS);
        IndexSet never = values.get(NEVER);
        IndexSet both = always.minus(always.minus(never));
        if (!both.isEmpty()) {
            int first = both.stream().findFirst().orElseThrow();
            StopName name = values.names().organ().stops().get(first).name();
            throw values.found(NEVER)
                    .bad(
                            Quoted.plain(name.label()) + " (" + Quoted.plain(name.division())
                                    + ") is locked in and out",
                            "Delete it from one of the two.");
        }
        return new Locks(always, never, values.get(KEEP));
    }

    private static Optional<Feedback> answer(Values values) throws Refused {
        Optional<HeardAs> heard = values.get(HEARD);
        Optional<Integer> present = values.get(PRESENT);
        if (heard.isPresent() && present.isEmpty()) {
            throw values.object().missing(PRESENT);
        }
        Optional<Registration> played = values.get(PLAYED_THEN);
        if (heard.isEmpty() && (present.isPresent() || played.isPresent())) {
            throw values.found(present.isPresent() ? PRESENT : PLAYED_THEN)
                    .bad("\"heard\" is missing", "Add it, or leave this out too.");
        }
        return heard.map(as -> new Feedback(as, present.orElseThrow(), played));
    }

    /** Rules by their words, each with the reason why it is ignored. */
    private static final class Rules extends Kind<List<Silenced>> {
        Rules() {
            super("Write ", "as \"gap: on purpose\"");
        }

        @Override
        List<Silenced> read(Found found, OrganNames names) throws Refused {
            List<Silenced> silenced = new ArrayList<>();
            for (Map.Entry<String, Found> entry :
                    found.entries(found.isTyped() ? remedy() : "").entrySet()) {
                String rule = entry.getKey();
                if (Rule.ofWord(rule).isEmpty()) {
                    throw entry.getValue()
                            .bad("unknown rule " + Quoted.text(rule), Nearest.sentence(rule, words(), "The rules are"));
                }
                silenced.add(new Silenced(rule, entry.getValue().text()));
            }
            return silenced;
        }

        @Override
        Object plain(List<Silenced> silenced, OrganNames names) {
            Map<String, String> reasons = new LinkedHashMap<>();
            silenced.forEach(each -> reasons.put(each.rule(), each.note()));
            return reasons;
        }

        @Override
        Object shaped(String typed) {
            Map<String, String> reasons = new LinkedHashMap<>();
            for (String part : NameList.parts(typed, ";")) {
                String rule = NameList.head(part, ":");
                String why = part.substring(Math.min(rule.length() + 1, part.length()));
                if (reasons.put(NameList.name(rule), NameList.name(why)) != null) {
                    return part.strip();
                }
            }
            return reasons;
        }

        @Override
        String typed(List<Silenced> silenced, OrganNames names) {
            return silenced.stream()
                    .map(each -> NameList.escaped(each.rule()) + ": " + NameList.escaped(each.note()))
                    .collect(Collectors.joining("; "));
        }

        @Override
        public List<String> words() {
            return List.of(Rule.values()).stream().map(Rule::word).toList();
        }
    }
}
