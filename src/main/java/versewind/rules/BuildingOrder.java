package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import versewind.organ.Coupler;
import versewind.organ.IndexSet;
import versewind.plan.HandsAndFeet;
import versewind.rules.BuildingLine.Addition;

/** The additions of a {@link BuildingLine}, made one after another. Common practice, no source. */
final class BuildingOrder {

    private final OrganFacts organ;
    private final int lead;
    private final int feet;
    private final StopChoice choice;
    private final List<Addition> additions = new ArrayList<>();
    private IndexSet drawn = IndexSet.EMPTY;
    private IndexSet couplers = IndexSet.EMPTY;

    /**
     * The additions of a keyboard.
     *
     * @param organ the instrument
     * @param hands the keyboard of the left hand, which plays the chords, and the part of the feet
     * @param never stops that are not to be drawn
     * @param preferred stops that come before their equals
     */
    BuildingOrder(OrganFacts organ, HandsAndFeet hands, IndexSet never, IndexSet preferred) {
        this.organ = organ;
        lead = hands.left();
        feet = hands.layout().usesPedal() ? organ.pedal() : OrganFacts.NO_PEDAL;
        boolean hasPedal = feet != OrganFacts.NO_PEDAL && hands.layout() != HandsAndFeet.Layout.PEDAL_BY_COUPLER;
        choice = new StopChoice(organ, never, preferred, hasPedal);
        addFoundations();
        addSecondChorus();
        addMixtures();
        addEnclosedReeds();
        addMainReeds();
        addDoubles();
        addThirtyTwoFeet();
    }

    List<Addition> additions() {
        return List.copyOf(additions);
    }

    private void add(BuildingStep step, String words, IndexSet draws, IndexSet brought, IndexSet replaces) {
        IndexSet fresh = draws.minus(drawn);
        if (!fresh.isEmpty() || !brought.isEmpty()) {
            additions.add(new Addition(step, words, fresh, brought, replaces));
            drawn = drawn.minus(replaces).plus(fresh);
            couplers = couplers.plus(brought);
        }
    }

    private void add(BuildingStep step, String words, IndexSet draws) {
        add(step, words, draws, IndexSet.EMPTY, IndexSet.EMPTY);
    }

    /**
     * Flutes, then principals, of the keyboard itself; the pedal’s soft 16 ft from the first, a firmer one with it
     * later.
     */
    private void addFoundations() {
        IndexSet flute8 = choice.first(lead, StopClass.FLUTE_8, StopClass.STRING_8);
        IndexSet flute4 = choice.first(lead, StopClass.FLUTE_4);
        IndexSet principal8 = choice.first(lead, StopClass.PRINCIPAL_8);
        IndexSet principal4 = choice.first(lead, StopClass.PRINCIPAL_4);
        IndexSet clearly =
                choice.coupler(lead, feet).isEmpty() ? choice.first(feet, StopClass.PEDAL_8) : IndexSet.EMPTY;
        IndexSet bass = choice.soft16().plus(clearly);
        boolean isFonds = organ.isFonds(lead);
        if (!flute8.isEmpty()) {
            add(BuildingStep.FLUTE_8, "flute 8", flute8.plus(bass), choice.coupler(lead, feet), IndexSet.EMPTY);
            add(BuildingStep.FLUTES_8_4, "flutes 8 4", flute4);
        }
        String with4 = flute4.isEmpty() ? "" : " with flute 4";
        if (isFonds) {
            add(BuildingStep.PRINCIPAL_8, "Montre 8" + with4, principal8);
            add(BuildingStep.PRINCIPAL_8, "fonds 8" + with4, choice.allEights(lead));
        } else if (flute8.isEmpty()) {
            add(
                    BuildingStep.PRINCIPAL_8,
                    "principal 8",
                    principal8.plus(bass),
                    choice.coupler(lead, feet),
                    IndexSet.EMPTY);
            add(BuildingStep.PRINCIPAL_8, "principal 8 with flute 4", flute4);
        } else if (!principal8.isEmpty()) {
            add(BuildingStep.PRINCIPAL_8, "principal 8" + with4, principal8, IndexSet.EMPTY, softEights(flute8));
        }
        String chorus = isFonds ? "fonds 8 4" : "principals 8 4";
        if (!principal4.isEmpty()) {
            IndexSet firm = isBehindShutters() ? IndexSet.EMPTY : choice.firm8().plus(choice.firm16());
            add(BuildingStep.PRINCIPALS_8_4, chorus, principal4.plus(firm), IndexSet.EMPTY, flute4);
        }
        boolean hasFour = !flute4.isEmpty() || !principal4.isEmpty();
        IndexSet two = hasFour ? choice.first(lead, StopClass.PRINCIPAL_2, StopClass.FLUTE_2) : IndexSet.EMPTY;
        add(BuildingStep.PRINCIPALS_8_4_2, chorus + " 2", two);
        add(
                BuildingStep.PRINCIPALS_8_4_2,
                chorus + " 2 with the twelfth",
                two.isEmpty() ? two : choice.first(lead, StopClass.TWELFTH));
    }

    /** True for a second manual in a box, under whose principals the soft 16 ft is enough. */
    private boolean isBehindShutters() {
        return organ.isEnclosed(lead)
                && !organ.isOneKeyboard(lead, organ.keyboards().get(0));
    }

    /** Flutes and strings of 8 ft that a principal covers: the usual one, and those that are drawn. */
    private IndexSet softEights(IndexSet usual) {
        IndexSet soft = organ.of(StopClass.FLUTE_8).plus(organ.of(StopClass.STRING_8));
        return usual.plus(choice.drawn().and(soft).and(organ.allOf(lead)));
    }

    /**
     * The chorus of another manual, one in a box before others; where there is none, and neither mixture nor reed, the
     * flutes again.
     */
    private void addSecondChorus() {
        OptionalInt second = choice.others(lead).stream()
                .filter(choice::isChorus)
                .mapToInt(division -> division)
                .findFirst();
        if (second.isPresent()) {
            addChorusOf(second.getAsInt(), BuildingStep.SECOND_CHORUS);
        } else if (organ.has(lead, StopClass.PRINCIPAL_4)
                && !organ.has(lead, StopClass.MIXTURE)
                && !organ.has(lead, StopClass.REED_8)) {
            IndexSet flutes = choice.first(lead, StopClass.FLUTE_8).plus(choice.first(lead, StopClass.FLUTE_4));
            add(BuildingStep.SECOND_CHORUS, choice.name(lead) + " flutes too", flutes);
        }
    }

    private void addChorusOf(int division, BuildingStep step) {
        IndexSet eightFour = choice.first(division, StopClass.PRINCIPAL_8, StopClass.FLUTE_8, StopClass.STRING_8)
                .plus(choice.first(division, StopClass.PRINCIPAL_4, StopClass.FLUTE_4));
        String name = choice.name(division);
        add(step, name + " 8 4 coupled", eightFour, choice.coupler(division, lead), IndexSet.EMPTY);
        if (choice.isChorus(division)) {
            add(step, name + " 8 4 2 coupled", choice.first(division, StopClass.PRINCIPAL_2, StopClass.FLUTE_2));
        }
    }

    private void addMixtures() {
        addMixturesOf(lead, choice.first(feet, StopClass.PEDAL_4));
        add(
                BuildingStep.MIXTURES,
                "mixtures and the pedal’s mixture",
                hasMixture() ? choice.first(feet, StopClass.PEDAL_MIXTURE) : IndexSet.EMPTY);
        coupled().forEach(division -> addMixturesOf(division, IndexSet.EMPTY));
    }

    private boolean hasMixture() {
        return drawn.stream().anyMatch(stop -> organ.layer(stop) == StopClass.MIXTURE);
    }

    /**
     * Mixtures of a division that has 8 and 4 ft, the lowest first; single high ranks in their order.
     *
     * @param bass what the pedal adds to the first of them
     */
    private void addMixturesOf(int division, IndexSet bass) {
        if (!choice.isChorus(division)) {
            return;
        }
        List<Integer> ripieno = organ.ripienoOf(division).stream()
                .filter(stop -> !choice.never().contains(stop))
                .toList();
        List<Integer> mixtures = ripieno.isEmpty() ? choice.ordered(division, StopClass.MIXTURE) : ripieno;
        IndexSet below = bass;
        for (int mixture : mixtures) {
            add(
                    BuildingStep.MIXTURES,
                    ripieno.isEmpty()
                            ? choice.name(division) + " mixture"
                            : "ripieno to " + organ.stop(mixture).name(),
                    below.plus(IndexSet.of(mixture)));
            below = IndexSet.EMPTY;
        }
    }

    /** Full Swell: the reeds of another manual that stands in a box, over its own flues. */
    private void addEnclosedReeds() {
        OptionalInt boxed = choice.others(lead).stream()
                .filter(organ::isEnclosed)
                .filter(division -> !choice.first(division, StopClass.REED_8).isEmpty())
                .mapToInt(division -> division)
                .findFirst();
        if (boxed.isEmpty()) {
            return;
        }
        int division = boxed.getAsInt();
        if (!isCoupled(division)) {
            addChorusOf(division, BuildingStep.ENCLOSED_REEDS);
        }
        String name = choice.name(division);
        add(BuildingStep.ENCLOSED_REEDS, name + " oboe", choice.oboe(division));
        addReedsOf(division, BuildingStep.ENCLOSED_REEDS);
    }

    private void addMainReeds() {
        addReedsOf(lead, BuildingStep.MAIN_REEDS);
        coupled().forEach(division -> addReedsOf(division, BuildingStep.MAIN_REEDS));
    }

    /** The pedal’s heavy 16 ft, then reeds of 8 ft and the pedal’s with them, then those of 16 and 4. */
    private void addReedsOf(int division, BuildingStep step) {
        List<Integer> eights = choice.ordered(division, StopClass.REED_8);
        if (eights.isEmpty() || !choice.isChorus(division)) {
            return;
        }
        boolean isMain = step == BuildingStep.MAIN_REEDS;
        String full = isMain ? choice.name(division) + " reeds" : "full " + choice.name(division);
        add(step, "the pedal’s heavy 16 ft", choice.heavy16());
        add(
                step,
                choice.name(division) + " reed 8",
                choice.first(division, StopClass.REED_8).plus(isMain ? nextPedalReed() : IndexSet.EMPTY));
        add(step, full, choice.first(division, isMain ? StopClass.REED_4 : StopClass.REED_16));
        add(step, full, choice.first(division, isMain ? StopClass.REED_16 : StopClass.REED_4));
        add(step, full, IndexSet.of(eights.stream().mapToInt(stop -> stop)));
        if (!isMain) {
            add(step, full + " and the pedal’s reed", nextPedalReed());
        } else {
            add(step, "reeds and the pedal’s reed 8", choice.first(feet, StopClass.PEDAL_REED_8));
            choice.ordered(feet, StopClass.PEDAL_REED_16)
                    .forEach(reed -> add(step, "reeds and the 16 ft reeds of the pedal", IndexSet.of(reed)));
        }
    }

    /** The lightest reed of the pedal that is left. */
    private IndexSet nextPedalReed() {
        return IndexSet.of(choice.ordered(feet, StopClass.PEDAL_REED_16).stream()
                .filter(reed -> !drawn.contains(reed))
                .limit(1)
                .mapToInt(reed -> reed));
    }

    private void addDoubles() {
        boolean isFull = drawn.stream()
                .anyMatch(stop -> organ.layer(stop) == StopClass.PRINCIPAL_2 || organ.layer(stop) == StopClass.FLUTE_2);
        if (!isFull) {
            return;
        }
        add(BuildingStep.DOUBLES, choice.name(lead) + " 16 ft", choice.first(lead, StopClass.DOUBLE));
        add(BuildingStep.DOUBLES, "second principals", choice.all(lead, StopClass.PRINCIPAL_8));
        add(BuildingStep.DOUBLES, "second principals 8 4", choice.all(lead, StopClass.PRINCIPAL_4));
        add(BuildingStep.DOUBLES, "doubles and the pedal’s heavy 16 ft", choice.heavy16());
    }

    /** The octave coupler of a box, where no mixture, double or clarion would speak through it; the 32 ft; a tuba. */
    private void addThirtyTwoFeet() {
        coupled().stream().filter(organ::isEnclosed).forEach(this::addOctaveCouplerOf);
        boolean isReedy = drawn.stream().anyMatch(stop -> organ.layer(stop) == StopClass.REED_8);
        if (!isReedy) {
            return;
        }
        add(BuildingStep.THIRTY_TWO_FEET, "32 ft flue", choice.first(feet, StopClass.PEDAL_32));
        add(BuildingStep.THIRTY_TWO_FEET, "32 ft flue and reed", choice.first(feet, StopClass.PEDAL_REED_32));
        organ.bigReeds().stream()
                .filter(stop -> organ.layer(stop) == StopClass.REED_8
                        && !choice.never().contains(stop)
                        && !isOutOfReach(organ.divisionOf(stop)))
                .forEach(this::addTuba);
    }

    private boolean isOutOfReach(int division) {
        return division != lead && choice.coupler(division, lead).isEmpty();
    }

    private void addTuba(int stop) {
        int division = organ.divisionOf(stop);
        IndexSet coupler = division == lead ? IndexSet.EMPTY : choice.coupler(division, lead);
        add(
                BuildingStep.THIRTY_TWO_FEET,
                organ.stop(stop).name(),
                IndexSet.of(stop),
                coupler.minus(couplers),
                IndexSet.EMPTY);
    }

    private void addOctaveCouplerOf(int division) {
        boolean isTooMuch = drawn.stream()
                .filter(stop -> organ.divisionOf(stop) == division)
                .mapToObj(organ::layer)
                .anyMatch(each -> each == StopClass.MIXTURE || each == StopClass.REED_16 || each == StopClass.REED_4);
        OptionalInt coupler = organ.coupler(Coupler.Kind.OCTAVE, division, lead);
        if (!isTooMuch && coupler.isPresent()) {
            add(
                    BuildingStep.THIRTY_TWO_FEET,
                    choice.name(division) + " octave coupler",
                    IndexSet.EMPTY,
                    IndexSet.of(coupler.getAsInt()),
                    IndexSet.EMPTY);
        }
    }

    private List<Integer> coupled() {
        return choice.others(lead).stream().filter(this::isCoupled).toList();
    }

    private boolean isCoupled(int division) {
        IndexSet coupler = choice.coupler(division, lead);
        return additions.stream().anyMatch(each -> each.couplers().meets(coupler));
    }
}
