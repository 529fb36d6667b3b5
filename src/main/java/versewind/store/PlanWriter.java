package versewind.store;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import versewind.organ.BoxPosition;
import versewind.organ.Coupler;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Tremulant;
import versewind.plan.Heading;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;

/** Writes a plan's file. */
final class PlanWriter {
    private final Instrument instrument;

    private PlanWriter(Instrument instrument) {
        this.instrument = instrument;
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
        Heading heading = plan.heading();
        Block file = Block.file();
        file.field("format", Written.number(Format.NUMBER));
        file.text("title", heading.title());
        heading.date().ifPresent(date -> file.text("date", date.toString()));
        file.text("instrument", plan.instrument());
        file.field("people", Written.number(heading.people()));
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
        block.row(new Row()
                .text("hands", verse.hands().layout().word())
                .text("right", divisionName(verse.hands().right()))
                .text("left", divisionName(verse.hands().left()))
                .bare());
        Registration registration = verse.registration();
        drawn(block, registration);
        List<String> couplers =
                instrument.couplers().stream().map(Coupler::name).toList();
        List<String> tremulants =
                instrument.tremulants().stream().map(Tremulant::name).toList();
        knobs(block, "couplers", registration.couplers().stream(), couplers);
        boxes(block, registration);
        knobs(block, "tremulants", registration.tremulants().stream(), tremulants);
        block.textUnlessEmpty("piston", verse.piston());
        block.textUnlessEmpty("note", verse.note());
        return block.object();
    }

    private String divisionName(int division) {
        return instrument.divisions().get(division).name();
    }

    /** The stops stand on one line, a division a line where that is too long. */
    private void drawn(Block block, Registration registration) {
        Map<String, List<String>> drawn = new LinkedHashMap<>();
        registration.stops().forEach(i -> {
            Instrument.Knob knob = instrument.stops().get(i);
            drawn.computeIfAbsent(knob.name().division(), division -> new ArrayList<>())
                    .add(knob.name().label());
        });
        Row row = new Row();
        Block rows = block.inner();
        drawn.forEach((division, labels) -> {
            row.add(division, Row.list(labels));
            rows.field(division, Row.list(labels));
        });
        String oneLine = new Row().add("drawn", row.braced()).bare();
        if (block.holds(oneLine)) {
            block.row(oneLine);
        } else {
            block.field("drawn", rows.object());
        }
    }

    private static void knobs(Block block, String field, IntStream drawn, List<String> names) {
        List<String> labels = drawn.mapToObj(names::get).toList();
        if (!labels.isEmpty()) {
            block.field(field, Row.list(labels));
        }
    }

    private void boxes(Block block, Registration registration) {
        Row row = new Row();
        for (int d = 0; d < instrument.divisions().size(); d++) {
            BoxPosition position = registration.boxes().get(d);
            if (instrument.divisions().get(d).isEnclosed() && position != BoxPosition.OPEN) {
                row.text(divisionName(d), position.word());
            }
        }
        if (!row.bare().isEmpty()) {
            block.field("boxes", row.braced());
        }
    }
}
