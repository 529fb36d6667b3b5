package versewind.store;

import java.nio.charset.StandardCharsets;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;

/** Writes a plan's file. */
final class PlanWriter {
    private final DrawnWriter drawn;

    private PlanWriter(Instrument instrument) {
        this.drawn = new DrawnWriter(instrument);
    }

    /**
     * The bytes of the file.
     *
     * @throws IllegalArgumentException if the plan is not made for this instrument
     */
    static byte[] bytes(Plan plan, Instrument instrument) {
        if (!plan.fits(instrument)) {
            throw new IllegalArgumentException("the plan draws what " + instrument + " does not have");
        }
        if (!Format.isId(plan.instrument())) {
            throw new IllegalArgumentException("\"" + plan.instrument() + "\" is not the name of an instrument's file");
        }
        return (new PlanWriter(instrument).plan(plan) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private String plan(Plan plan) {
        ServiceHeading heading = plan.heading();
        Block file = Block.file();
        file.field("format", Written.number(Format.NUMBER));
        file.text("title", heading.title());
        heading.date().ifPresent(date -> file.text("date", date.toString()));
        file.text("instrument", plan.instrument());
        file.field("people", Written.number(heading.people()));
        if (heading.moveS() != ServiceHeading.USUAL_MOVE_S) {
            file.field(PlanReader.SECONDS_A_MOVE, Written.number(heading.moveS()));
        }
        file.textUnlessEmpty("notes", heading.notes());
        Block hymns = file.inner();
        plan.hymns().forEach(hymn -> hymns.row(hymn(hymns.inner(), hymn)));
        return file.field("hymns", hymns.list()).object();
    }

    private String hymn(Block block, Hymn hymn) {
        block.textUnlessEmpty("number", hymn.number());
        block.text("title", hymn.title());
        block.textUnlessEmpty("tune", hymn.tune());
        block.textUnlessEmpty("metre", hymn.metre());
        block.textUnlessEmpty("key", hymn.key());
        hymn.tempo().ifPresent(tempo -> block.field("tempo", Written.number(tempo)));
        block.textUnlessEmpty("notes", hymn.notes());
        Block verses = block.inner();
        hymn.verses().forEach(verse -> verses.row(verse(verses.inner(), verse)));
        return block.field("verses", verses.list()).object();
    }

    private String verse(Block block, Verse verse) {
        Row who = new Row()
                .text("kind", verse.kind().word())
                .text("label", verse.label())
                .text("mode", verse.mode().word())
                .text("singing", verse.singing().word());
        verse.people().ifPresent(people -> who.number("people", people));
        block.row(who.bare());
        drawn.hands(block, verse.hands());
        drawn.registration(block, verse.registration());
        block.textUnlessEmpty("piston", verse.piston());
        block.textUnlessEmpty("note", verse.note());
        if (verse.mood() != Mood.PLAIN) {
            block.text("mood", verse.mood().word());
        }
        drawn.stopsUnlessNone(block, "always", verse.locks().always());
        drawn.stopsUnlessNone(block, "never", verse.locks().never());
        if (!verse.silenced().isEmpty()) {
            Block silenced = block.inner();
            verse.silenced().forEach(each -> silenced.text(each.rule(), each.note()));
            block.field("silenced", silenced.object());
        }
        verse.answer()
                .ifPresent(answer -> block.row(new Row()
                        .text("heard", answer.heard().word())
                        .number("present", answer.present())
                        .bare()));
        return block.object();
    }
}
