package versewind.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.plan.Hymn;
import versewind.plan.Mood;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.plan.Verses;
import versewind.schema.Field;
import versewind.schema.HymnFields;
import versewind.schema.OrganNames;
import versewind.schema.Refused;
import versewind.schema.VerseFields;
import versewind.screen.state.Effect;
import versewind.screen.state.FormBox;
import versewind.screen.state.PlanChanges;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.RowForm;
import versewind.screen.state.State;

/** The forms of a hymn, the current one and a new one. */
final class HymnForm {

    /** What is asked of a new hymn; the rest is edited later. */
    private static final List<Field<Hymn, ?>> OF_NEW = List.of(HymnFields.NUMBER, HymnFields.TITLE, HymnFields.TUNE);

    private static final int NUMBER = OF_NEW.indexOf(HymnFields.NUMBER);
    private static final int TITLE = OF_NEW.indexOf(HymnFields.TITLE);
    private static final int SUNG = OF_NEW.size();
    private static final Pattern VERSES = Pattern.compile("(\\d{1,3})\\s*(v|verses?)?\\.?", Pattern.CASE_INSENSITIVE);
    private static final int USUAL_VERSES = 4;
    private static final String MOOD = "To sound";

    private HymnForm() {}

    static FormBox of(PlanEdit work, Hymn hymn) {
        RowForm<Hymn> row = row(HymnFields.HEAD.fields(), hymn);
        int mood = row.asked().size();
        List<FormBox.Field> fields = new ArrayList<>(row.fields());
        fields.add(FormBox.Field.of(
                MOOD, moodOf(hymn), "how every verse is to sound: " + moods() + "; blank: each its own"));
        return FormBox.of("Hymn", fields, (form, closed) -> {
                    if (form.isBlank(TITLE)) {
                        throw new FormBox.Wrong(TITLE, "A hymn needs a title.");
                    }
                    boolean isInOne = !form.isBlank(mood) && !form.text(mood).equals(moodOf(hymn));
                    Hymn after =
                            row.typed(form).withVerses(isInOne ? inMood(hymn, typedMood(form, mood)) : hymn.verses());
                    return PlanChanges.edit(
                            closed, work, work.plan().withHymn(work.place().hymn(), after), work.place());
                })
                .at(NUMBER);
    }

    /** The mood of all verses, if they have one. */
    private static String moodOf(Hymn hymn) {
        List<Mood> all = hymn.verses().stream().map(Verse::mood).distinct().toList();
        return all.size() == 1 ? all.get(0).word() : "";
    }

    private static String moods() {
        return Stream.of(Mood.values()).map(Mood::word).collect(Collectors.joining(", "));
    }

    private static List<Verse> inMood(Hymn hymn, Mood mood) {
        return hymn.verses().stream()
                .map(verse -> PlayingCommands.inMood(verse, mood))
                .toList();
    }

    private static Mood typedMood(FormBox form, int field) {
        try {
            return VerseFields.MOOD.parse(form.text(field));
        } catch (Refused refused) {
            throw new FormBox.Wrong(field, MOOD + ": " + refused.problemAndRemedy());
        }
    }

    /** A hymn that comes after the current one; it is looked up what was done with it before. */
    static FormBox ofNew(PlanEdit work) {
        RowForm<Hymn> row = row(OF_NEW, new Hymn("", "", "", "", "", OptionalInt.empty(), "", List.of()));
        List<FormBox.Field> fields = new ArrayList<>(row.fields());
        fields.add(FormBox.Field.of("Verses", Integer.toString(USUAL_VERSES), "how many; an introduction is added"));
        return FormBox.of("New hymn", fields, (form, closed) -> {
            Matcher verses = VERSES.matcher(form.text(SUNG));
            int sung = verses.matches() ? Integer.parseInt(verses.group(1)) : Integer.MAX_VALUE;
            if (sung > Verses.MOST_NEW) {
                throw new FormBox.Wrong(SUNG, "Verses: enter a whole number from 0 to " + Verses.MOST_NEW + ".");
            }
            Hymn made = row.typed(named(form))
                    .withVerses(Verses.ofNewHymn(work.instrument(), sung))
                    .locking(work.plan().locks());
            int at = work.hymn().isPresent() ? work.place().hymn() + 1 : 0;
            State after = PlanChanges.edit(closed, work, work.plan().inserting(at, made), new VersePlace(at, 0));
            return (closed.isSpoken() ? PlanChanges.told(closed, after, added(made)) : after)
                    .wants(effects -> effects.findHymn(work.id(), made, Effect.Telling.IN_A_SENTENCE));
        });
    }

    /** "Hymn 12 added, 4 verses and 1 introduction.". */
    private static String added(Hymn hymn) {
        String name = hymn.number().isBlank() ? hymn.title() : "Hymn " + hymn.number();
        return name + " added, " + Verses.counted(hymn.verses().stream()) + ".";
    }

    private static RowForm<Hymn> row(List<Field<Hymn, ?>> asked, Hymn hymn) {
        return new RowForm<>(HymnFields.HEAD, asked, hymn, OrganNames.NONE);
    }

    /** A hymn without a title is called by its number. */
    private static FormBox named(FormBox form) {
        if (!form.isBlank(TITLE)) {
            return form;
        }
        if (form.isBlank(NUMBER)) {
            throw new FormBox.Wrong(TITLE, "A hymn needs a title or a number.");
        }
        return form.with(TITLE, Hymn.titleOf(form.text(NUMBER)));
    }
}
