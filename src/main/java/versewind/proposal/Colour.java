package versewind.proposal;

import java.util.List;
import versewind.organ.Registration;
import versewind.plan.Mood;
import versewind.rules.OrganFacts;
import versewind.rules.StopClass;

/**
 * Colour that fits the mood: layers that are more than the verse asks, and layers that are missed. Common practice, no
 * source.
 */
final class Colour {

    private static final double HELD_BACK = 0.5;

    private final OrganFacts organ;
    private final Mood mood;
    private final Role role;
    private final OpenClasses open;
    private final List<StopPreferences.Want> wants;
    private final double[] inHands;
    private final String inHandsWords;
    private final double[] inSoloLine;

    Colour(OrganFacts organ, Requirement requirement) {
        this.organ = organ;
        mood = requirement.layers();
        role = requirement.role();
        wants = StopPreferences.wants(role, requirement.mood());
        open = new OpenClasses(organ, requirement.locks().never());
        inHands = new double[organ.stops()];
        inHandsWords = words(requirement.mood());
        inSoloLine = new double[organ.stops()];
        for (int stop = 0; stop < organ.stops(); stop++) {
            StopClass layer = organ.layer(stop);
            inHands[stop] = StopPreferences.cost(role, mood, layer) * (isHeldBack(stop) ? HELD_BACK : 1);
            inSoloLine[stop] = StopPreferences.cost(Role.SOLO_LINE, mood, layer);
        }
    }

    void add(DraftAnalysis sounding, Tally tally) {
        Registration drawn = sounding.draft().registration();
        if (role == Role.UNDER_SOLO && sounding.isSoloed()) {
            addSoloed(sounding, tally);
        } else {
            for (int place = 0; place < sounding.count(); place++) {
                int stop = sounding.stop(place);
                tally.add(inHands[stop], inHandsWords, stop);
            }
            addMissed(sounding, tally);
        }
        tally.add(drawn.tremulants().size(), Cost.TREMULANT);
    }

    /** Whether it is a chorus reed in a box, which is milder and can be held back. */
    private boolean isHeldBack(int stop) {
        StopClass layer = organ.layer(stop);
        return role == Role.PEOPLE
                && (layer == StopClass.REED_8 || layer == StopClass.REED_16 || layer == StopClass.REED_4)
                && organ.isEnclosed(organ.divisionOf(stop));
    }

    private String words(Mood wanted) {
        return switch (role) {
            case PEOPLE ->
                switch (wanted) {
                    case GENTLE -> "it would be gentler without %s";
                    case PLAIN -> "it would be plainer without %s";
                    case BRIGHT -> "it would do without %s";
                    case FESTAL -> "even a festal verse would do without %s";
                };
            case CHOIR -> "a choir is better carried without %s";
            case SOLOIST -> "a soloist is better carried without %s";
            case SOLO_LINE, UNDER_SOLO -> "a melody is better without %s beneath it";
        };
    }

    private void addMissed(DraftAnalysis sounding, Tally tally) {
        for (StopPreferences.Want want : wants) {
            addMissed(want, sounding, tally);
        }
    }

    private void addMissed(StopPreferences.Want want, DraftAnalysis sounding, Tally tally) {
        boolean isMissed = false;
        for (StopClass layer : want.anyOf()) {
            int sounds =
                    switch (want.where()) {
                        case UNDER_THE_HAND ->
                            open.has(sounding.draft().hands().right(), layer)
                                    ? sounding.most().underRight(layer)
                                    : sounding.most().inRight(layer);
                        case IN_THE_HAND ->
                            role == Role.UNDER_SOLO
                                    ? sounding.most().inLeft(layer)
                                    : sounding.most().inRight(layer);
                    };
            if (sounds > 0) {
                return;
            }
            isMissed |= open.has(layer);
        }
        if (isMissed) {
            tally.add(want.points(), want.words());
        }
    }

    /** One colour for the melody, softer ones beneath. */
    private void addSoloed(DraftAnalysis sounding, Tally tally) {
        for (int place = 0; place < sounding.count(); place++) {
            int stop = sounding.stop(place);
            int home = organ.divisionOf(stop);
            if (sounding.isInRight(home)) {
                tally.add(inSoloLine[stop], "a solo is better without %s", stop);
            } else {
                tally.add(inHands[stop], inHandsWords, stop);
            }
            if (sounding.isInRight(home) && sounding.isInLeft(home)) {
                tally.add(Cost.MELODY_ALSO_BENEATH, stop);
            }
        }
        tally.add(colours(sounding.drawn()) - 1, Cost.MELODY_MIXES_COLOURS);
        tally.add(sounding.drawn().eightsInLeft() - 1, Cost.SECOND_BENEATH_MELODY);
        if (sounding.drawn().inRight() > 0 && isOnlyMutations(sounding.most())) {
            tally.add(Cost.MELODY_WITHOUT_EIGHT);
        }
        addMissed(sounding, tally);
    }

    /** A mutation over an 8 ft flute is one colour with it, and so is the flute 4 that joins both. */
    private static int colours(Counts counts) {
        int all = counts.inRight();
        boolean isBlend = counts.inRight(StopClass.FLUTE_8) > 0
                && counts.inRight(StopClass.MUTATION) + counts.inRight(StopClass.TWELFTH) > 0;
        return isBlend ? Math.max(1, all - 1) : all;
    }

    private static boolean isOnlyMutations(Counts counts) {
        for (StopClass layer : List.of(
                StopClass.PRINCIPAL_8,
                StopClass.FLUTE_8,
                StopClass.STRING_8,
                StopClass.REED_8,
                StopClass.SOLO_REED,
                StopClass.CORNET,
                StopClass.CELESTE)) {
            if (counts.inRight(layer) > 0) {
                return false;
            }
        }
        return true;
    }
}
