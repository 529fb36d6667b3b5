package versewind.cli;

import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.organ.NotationException;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.organ.Worded;
import versewind.plan.HandsAndFeet;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;

/**
 * The options that say who sings, and where hands and feet play.
 *
 * @param typed the options typed
 * @param organ the organ
 * @param text names of the organ's parts
 */
record PlayingOptions(Typed typed, Instrument organ, RegistrationText text) {

    static final String DRAW = "--draw";
    static final String PEOPLE = "--people";
    private static final String SINGING = "--singing";
    private static final String MODE = "--mode";
    static final String HANDS = "--hands";
    private static final String RIGHT = "--right";
    private static final String LEFT = "--left";

    static PlayingOptions of(Typed typed, Instrument instrument) {
        return new PlayingOptions(typed, instrument, new RegistrationText(instrument));
    }

    /** A command with these options. */
    static Command addTo(Command command) {
        return command.option(MODE, "WHOM", "Who sings: " + words(SungBy.values()) + ".")
                .option(SINGING, "HOW", "How they sing: " + words(Singing.values()) + ".")
                .option(
                        HANDS,
                        "LAYOUT",
                        "Hands and feet: " + words(HandsAndFeet.Layout.values())
                                + "; if not given, hands only where nothing is drawn for the feet.")
                .option(RIGHT, "DIVISION", "Where the right hand plays; the main division if not given.")
                .option(LEFT, "DIVISION", "Where the left hand plays; with the right if not given.");
    }

    static String words(Worded... values) {
        return Stream.of(values).map(Worded::word).collect(Collectors.joining(", "));
    }

    /** The number of people typed, if any. */
    OptionalInt people() throws UsageException {
        return typed.whole(PEOPLE, 1, Verse.MOST_PEOPLE);
    }

    /** A verse played as typed; where nothing was typed it stays as it is. */
    Verse on(Verse verse) throws NotationException {
        HandsAndFeet hands = verse.hands();
        HandsAndFeet.Layout layout = typed.choice(HANDS, HandsAndFeet.Layout.values(), supposed(hands.layout()));
        int right = manual(RIGHT, hands.right());
        int left = manual(LEFT, typed.has(RIGHT) ? right : hands.left());
        return verse.withSungBy(typed.choice(MODE, SungBy.values(), verse.sungBy()))
                .withSinging(typed.choice(SINGING, Singing.values(), verse.singing()))
                .withHands(new HandsAndFeet(layout, right, left));
    }

    /** The layout where none was typed: without feet where a typed registration gives them nothing to play. */
    private HandsAndFeet.Layout supposed(HandsAndFeet.Layout layout) throws NotationException {
        return typed.has(DRAW) && layout.usesPedal() && isPedalSilent(drawn()) ? layout.withoutPedal() : layout;
    }

    private boolean isPedalSilent(Registration drawn) {
        return drawn.stops().stream().noneMatch(stop -> OptionalInt.of(
                                organ.stops().get(stop).division())
                        .equals(organ.pedalDivision()))
                && drawn.couplers().stream().noneMatch(coupler -> organ.division(
                                organ.couplers().get(coupler).keyboard())
                        .equals(organ.pedalDivision()));
    }

    /** The registration typed in the notation of registrations. */
    Registration drawn() throws NotationException {
        return text.parse(typed.value(DRAW).orElse(""));
    }

    private int manual(String option, int otherwise) throws NotationException {
        return typed.has(option) ? text.manual(typed.value(option).orElse("")) : otherwise;
    }
}
