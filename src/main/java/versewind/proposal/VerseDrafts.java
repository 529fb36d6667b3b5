package versewind.proposal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.rules.BuildingLine;
import versewind.rules.BuildingStep;
import versewind.rules.OrganFacts;
import versewind.rules.StopClass;

/**
 * The drafts for a verse: the rungs of the order of building up, for every way to play it, with the boxes in
 * some positions. Nothing is drawn that the order does not have, but for colours: strings for soft verses, and what
 * sings a tune that is soloed.
 */
final class VerseDrafts {

    private static final List<BoxPosition> LEADING =
            List.of(BoxPosition.OPEN, BoxPosition.THREE_QUARTERS, BoxPosition.HALF);
    private static final List<BoxPosition> FOLLOWING =
            List.of(BoxPosition.OPEN, BoxPosition.THREE_QUARTERS, BoxPosition.HALF, BoxPosition.CLOSED);

    private final OrganFacts organ;
    private final Requirement requirement;
    private final Map<Draft, Sketch> sketches = new LinkedHashMap<>();

    private VerseDrafts(OrganFacts organ, Requirement requirement) {
        this.organ = organ;
        this.requirement = requirement;
    }

    /** All drafts for a verse, each once. */
    static List<Sketch> of(OrganFacts organ, Requirement requirement) {
        VerseDrafts drafts = new VerseDrafts(organ, requirement);
        requirement.hands().forEach(drafts::addAll);
        if (drafts.sketches.isEmpty()) {
            requirement.hands().forEach(drafts::addSingleStops);
        }
        return List.copyOf(drafts.sketches.values());
    }

    private void addAll(HandsAndFeet hands) {
        BuildingLine line = line(hands);
        if (hands.layout().isSoloed()) {
            new SoloVoices(organ, requirement.locks().never(), hands).all().forEach(solo -> addSolo(hands, line, solo));
        } else {
            addLine(hands, line);
        }
    }

    private BuildingLine line(HandsAndFeet hands) {
        return new BuildingLine(organ, hands, requirement.locks().never(), requirement.usual());
    }

    private void addLine(HandsAndFeet hands, BuildingLine line) {
        for (int index = 0; index < line.rungs().size(); index++) {
            BuildingLine.Rung rung = line.rungs().get(index);
            if (isAboveOtherManuals(hands, rung)) {
                break;
            }
            String place = "step " + rung.number() + " of " + line.steps();
            Sound sound = new Sound(hands.right(), rung.step(), "", Voice.NONE, rung.words(), place, index);
            add(hands, rung.stops().plus(underRight(hands, rung)), rung.couplers(), sound);
        }
        if (!line.rungs().isEmpty()) {
            addBothEightFours(hands, line);
            addStrings(hands, line);
        }
    }

    /** For a verse that is gentle or plain the 8 and 4 ft of two manuals together, before any 2 ft. */
    private void addBothEightFours(HandsAndFeet hands, BuildingLine line) {
        Optional<BuildingLine.Addition> second = line.additions().stream()
                .filter(each -> each.step() == BuildingStep.SECOND_CHORUS
                        && !each.couplers().isEmpty())
                .findFirst();
        if (second.isEmpty() || requirement.mood().compareTo(Mood.PLAIN) > 0) {
            return;
        }
        boolean isGentle = requirement.mood() == Mood.GENTLE;
        for (int index = 0; index < line.rungs().size(); index++) {
            BuildingLine.Rung rung = line.rungs().get(index);
            if (rung.step() == BuildingStep.PRINCIPALS_8_4 || (isGentle && rung.step() == BuildingStep.PRINCIPAL_8)) {
                String words = rung.words() + " and " + second.get().words();
                Sound sound = new Sound(hands.right(), rung.step(), Sound.TWO_MANUALS, Voice.NONE, words, "", index);
                add(
                        hands,
                        rung.stops().plus(second.get().draws()),
                        rung.couplers().plus(second.get().couplers()),
                        sound);
            }
        }
    }

    /** The reeds and all that follows are led from the main manual. */
    private boolean isAboveOtherManuals(HandsAndFeet hands, BuildingLine.Rung rung) {
        return requirement.hands().size() > 1
                && !organ.isOneKeyboard(hands.left(), organ.keyboards().get(0))
                && rung.step().compareTo(BuildingStep.MIXTURES) > 0;
    }

    /** Where the right hand has a keyboard of its own, it has about the same sound. */
    private IndexSet underRight(HandsAndFeet hands, BuildingLine.Rung rung) {
        if (organ.isOneKeyboard(hands.right(), hands.left())) {
            return IndexSet.EMPTY;
        }
        HandsAndFeet right = HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, hands.right());
        IndexSet stops = IndexSet.EMPTY;
        for (BuildingLine.Rung each : line(right).rungs()) {
            stops = each.couplers().isEmpty() && (stops.isEmpty() || each.step().compareTo(rung.step()) <= 0)
                    ? each.stops()
                    : stops;
        }
        return stops;
    }

    /** A string with the flute of the first rung; under a soloist it may take its place. */
    private void addStrings(HandsAndFeet hands, BuildingLine line) {
        IndexSet strings = string(hands.left());
        IndexSet flutes = ofClass(hands.left(), StopClass.FLUTE_8);
        if (strings.isEmpty() || flutes.isEmpty()) {
            return;
        }
        for (BuildingLine.Rung rung : line.rungs()) {
            if (rung.step() == BuildingStep.FLUTE_8) {
                if (requirement.mode() == Mode.SOLO_VOICE) {
                    Sound sound = new Sound(hands.right(), rung.step(), "string", Voice.NONE, "string 8", "", 0);
                    add(hands, rung.stops().minus(flutes).plus(strings), rung.couplers(), sound);
                }
                Sound both = new Sound(
                        hands.right(), rung.step(), "flute and string", Voice.NONE, "flute and string 8", "", 0);
                add(hands, rung.stops().plus(strings), rung.couplers(), both);
            }
        }
    }

    private IndexSet string(int division) {
        return IndexSet.of(ofClass(division, StopClass.STRING_8).stream().limit(1));
    }

    private IndexSet ofClass(int division, StopClass wanted) {
        return IndexSet.of(organ.stopsOf(division).stream()
                .filter(stop -> organ.layer(stop) == wanted
                        && !requirement.locks().never().contains(stop))
                .mapToInt(stop -> stop));
    }

    /** A voice over the soft rungs of the other manual. */
    private void addSolo(HandsAndFeet hands, BuildingLine line, SoloVoices.Solo solo) {
        for (BuildingLine.Rung rung : line.rungs()) {
            if (rung.step().compareTo(BuildingStep.PRINCIPAL_8) > 0) {
                return;
            }
            Sound sound = new Sound(
                    hands.right(),
                    rung.step(),
                    solo.words() + hands.left(),
                    solo.voice(),
                    solo.words(),
                    rung.words(),
                    0);
            add(hands, rung.stops().plus(solo.stops()), rung.couplers(), sound);
        }
        IndexSet strings = string(hands.left());
        if (!strings.isEmpty() && !line.rungs().isEmpty()) {
            BuildingLine.Rung first = line.rungs().get(0);
            Sound sound = new Sound(
                    hands.right(), first.step(), solo.words() + "string", solo.voice(), solo.words(), "string 8", 0);
            IndexSet under = first.stops().minus(organ.allOf(hands.left())).plus(strings);
            add(hands, under.plus(solo.stops()), first.couplers(), sound);
        }
    }

    /** Where the order has nothing, each stop alone. */
    private void addSingleStops(HandsAndFeet hands) {
        for (int stop : organ.stopsOf(hands.left())) {
            if (!requirement.locks().never().contains(stop)) {
                String words = organ.stop(stop).label();
                Sound sound = new Sound(hands.right(), BuildingStep.FLUTE_8, words, Voice.NONE, words, "", 0);
                add(hands, IndexSet.of(stop), IndexSet.EMPTY, sound);
            }
        }
    }

    private void add(HandsAndFeet hands, IndexSet stops, IndexSet couplers, Sound sound) {
        Registration drawn = Registration.silent(organ.organ())
                .withStops(stops.plus(requirement.locks().always()))
                .withCouplers(couplers);
        if (drawn.stops().isEmpty()) {
            return;
        }
        Draft draft = new Draft(drawn, hands);
        if (!requirement.boxes().isEmpty()) {
            Draft kept = draft.with(drawn.withBoxes(requirement.boxes()));
            sketches.putIfAbsent(kept, new Sketch(kept, sound));
            return;
        }
        IndexSet boxes = Heard.boxes(organ, stops);
        if (boxes.isEmpty()) {
            sketches.putIfAbsent(draft, new Sketch(draft, sound));
            return;
        }
        boolean isShuttable = isShuttable(draft);
        for (BoxPosition position : requirement.isPeople() ? LEADING : FOLLOWING) {
            if (isShuttable || position != BoxPosition.CLOSED) {
                Draft boxed = boxed(draft, boxes, position);
                sketches.putIfAbsent(boxed, new Sketch(boxed, sound));
            }
        }
    }

    private static Draft boxed(Draft draft, IndexSet boxes, BoxPosition position) {
        Draft moved = draft;
        for (int division : boxes.stream().toArray()) {
            moved = moved.withBox(division, position);
        }
        return moved;
    }

    /** Never shut on reeds, nor on pipes that are played from elsewhere. */
    private boolean isShuttable(Draft draft) {
        return draft.stops().stream()
                .noneMatch(stop -> organ.isBorrowedFromManual(stop)
                        || organ.layer(stop).isChorusReed()
                        || organ.layer(stop) == StopClass.SOLO_REED);
    }
}
