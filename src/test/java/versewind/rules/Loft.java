package versewind.rules;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import versewind.Shipped;
import versewind.organ.BoxPosition;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.StopName;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.sound.OrganSound;
import versewind.sound.RandomOrgans;

/** A shipped organ, exactly as estimated, at which stops are drawn by their names. */
final class Loft {

    static final Loft CATHEDRAL = new Loft("ostmere-cathedral");
    static final Loft CHAPEL = new Loft("foundlings-chapel");
    static final Loft VILLAGE = new Loft("little-corvening");
    static final Loft PIEVE = new Loft("montefalda");
    static final Loft ABBEY = new Loft("ambrelow");

    private static final Map<Instrument, OrganSound> SOUNDS = new HashMap<>();

    private final Instrument organ;

    private Loft(String id) {
        organ = Shipped.instrument(id);
    }

    Instrument organ() {
        return organ;
    }

    ChorusFaults faults() {
        return ChorusFaults.on(OrganFacts.of(sound()));
    }

    /** Stops as "Great: Principal 4", couplers and tremulants by their names, a box as "Swell closed". */
    Registration draw(String... knobs) {
        return drawMore(Registration.silent(organ), knobs);
    }

    /** A registration with more drawn. */
    Registration drawMore(Registration before, String... knobs) {
        Registration drawn = before;
        for (String knob : knobs) {
            drawn = with(drawn, knob);
        }
        return drawn;
    }

    private Registration with(Registration drawn, String knob) {
        int colon = knob.indexOf(": ");
        if (colon > 0) {
            StopName name = new StopName(knob.substring(0, colon), knob.substring(colon + 2));
            return drawn.toggleStop(organ.stop(name).orElseThrow());
        }
        if (organ.coupler(knob).isPresent()) {
            return drawn.toggleCoupler(organ.coupler(knob).getAsInt());
        }
        if (organ.tremulant(knob).isPresent()) {
            return drawn.toggleTremulant(organ.tremulant(knob).getAsInt());
        }
        int space = knob.indexOf(' ');
        return drawn.withBox(
                organ.division(knob.substring(0, space)).orElseThrow(),
                BoxPosition.valueOf(knob.substring(space + 1).toUpperCase(Locale.ROOT)));
    }

    /** The names of everything drawn, boxes left out. */
    List<String> names(Registration drawn) {
        return Stream.of(
                        drawn.stops().stream()
                                .mapToObj(i -> organ.stops().get(i).name().toString()),
                        drawn.couplers().stream()
                                .mapToObj(i -> organ.couplers().get(i).name()),
                        drawn.tremulants().stream()
                                .mapToObj(i -> organ.tremulants().get(i).name()))
                .flatMap(each -> each)
                .toList();
    }

    /** A verse of an ordinary congregation, played with both hands on one manual, feet resting. */
    Verse verse(String manual, String... knobs) {
        return new Verse(
                VerseKind.VERSE,
                "V1",
                Mode.CONGREGATION,
                Singing.ORDINARY,
                OptionalInt.empty(),
                hands(Layout.MANUALS_ONLY, manual, manual),
                draw(knobs),
                "",
                "");
    }

    /** The same with the bass on the pedal. */
    Verse withPedal(String manual, String... knobs) {
        return verse(manual, knobs).withHands(hands(Layout.FOUR_PARTS, manual, manual));
    }

    /** An introduction with its melody on a manual of its own. */
    Verse soloed(String right, String left, String... knobs) {
        return Verses.blank(organ, VerseKind.INTRODUCTION)
                .withMode(Mode.MELODY_SOLOED)
                .withHands(hands(Layout.MELODY_SOLOED, right, left))
                .withRegistration(draw(knobs));
    }

    HandsAndFeet hands(Layout layout, String right, String left) {
        return new HandsAndFeet(
                layout,
                organ.division(right).orElseThrow(),
                organ.division(left).orElseThrow());
    }

    /** A service of one hymn at 90 beats a minute. */
    Plan plan(int people, Verse... verses) {
        Hymn hymn = new Hymn("1", "The first", "", "", "", OptionalInt.of(90), "", List.of(verses));
        return new Plan(new ServiceHeading("A service", Optional.empty(), people, ""), "organ", List.of(hymn));
    }

    Advice advice() {
        return Advice.on(sound());
    }

    OrganSound sound() {
        return SOUNDS.computeIfAbsent(organ, each -> RandomOrgans.certain(OrganSound.open(each)));
    }

    /** What is found in a hymn by one rule. */
    List<Finding> found(Rule rule, int people, Verse... verses) {
        return advice().findings(plan(people, verses)).stream()
                .filter(finding -> finding.rule() == rule)
                .toList();
    }

    /** The sentences of what is found in a hymn by one rule. */
    List<String> says(Rule rule, int people, Verse... verses) {
        return found(rule, people, verses).stream().map(Finding::sentence).toList();
    }

    /** What the rules of choruses say of a verse. */
    List<String> sentences(Verse verse) {
        return faults().in(verse).stream().map(ChorusFault::sentence).toList();
    }
}
