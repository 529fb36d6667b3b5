package versewind.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.sound.OrganSound;
import versewind.store.OpenPlan;

/** Sheets of shipped plans, and of plans with odd words in them. */
final class Sheets {

    static final SheetOptions LADDER = new SheetOptions(
            SheetOptions.Type.USUAL,
            SheetOptions.Content.WHOLE,
            SheetOptions.Steps.SHOWN,
            SheetOptions.Reader.ORGANIST);
    static final SheetOptions LARGE = new SheetOptions(
            SheetOptions.Type.LARGE,
            SheetOptions.Content.WHOLE,
            SheetOptions.Steps.LEFT_OUT,
            SheetOptions.Reader.ORGANIST);
    static final SheetOptions CHANGES = new SheetOptions(
            SheetOptions.Type.USUAL,
            SheetOptions.Content.CHANGES,
            SheetOptions.Steps.LEFT_OUT,
            SheetOptions.Reader.ORGANIST);

    static final SheetOptions DEPUTY = new SheetOptions(
            SheetOptions.Type.USUAL,
            SheetOptions.Content.WHOLE,
            SheetOptions.Steps.LEFT_OUT,
            SheetOptions.Reader.DEPUTY);

    private Sheets() {}

    private record Wanted(String plan, SheetOptions wishes) {}

    private static final Map<Wanted, Sheet> MADE = new HashMap<>();

    /** Every sheet is made once: the ladder of a large organ takes its time. */
    static Sheet shipped(String plan, SheetOptions wishes) {
        Wanted wanted = new Wanted(plan, wishes);
        if (!MADE.containsKey(wanted)) {
            MADE.put(wanted, made(plan, wishes));
        }
        return MADE.get(wanted);
    }

    private static Sheet made(String plan, SheetOptions wishes) {
        OpenPlan open = Shipped.plan(plan);
        return Sheet.of(open.plan(), OrganSound.open(open.instrument()), wishes);
    }

    static Instrument organ() {
        return Shipped.instrument("st-tethwin");
    }

    static Sheet of(Hymn... hymns) {
        Plan plan = new Plan(new ServiceHeading("Evensong", Optional.empty(), 80, ""), "st-tethwin", List.of(hymns));
        return Sheet.of(plan, OrganSound.open(organ()), SheetOptions.USUAL);
    }

    static Hymn hymn(String number, Verse... verses) {
        return new Hymn(number, "Title of " + number, "", "", "", OptionalInt.empty(), "", List.of(verses));
    }

    static Verse verse(String label, String piston, Registration drawn) {
        return Verses.blank(organ(), VerseKind.VERSE)
                .withLabel(label)
                .withPiston(piston)
                .withRegistration(drawn);
    }

    /** A sheet on which every word that can be typed is one that means harm. */
    static Sheet odd(String word) {
        Verse verse = verse(word, word, Registration.full(organ())).withNote(word);
        Hymn hymn = new Hymn(word, word, word, word, word, OptionalInt.of(60), word, List.of(verse, verse));
        Plan plan = new Plan(new ServiceHeading(word, Optional.empty(), 80, word), "st-tethwin", List.of(hymn));
        return Sheet.of(plan, OrganSound.open(organ()), LADDER);
    }
}
