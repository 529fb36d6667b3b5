package versewind.sound;

import java.util.Arrays;
import versewind.organ.Action;
import versewind.organ.Coupler;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.plan.HandsAndFeet;

/**
 * The parts and octaves that reach each division, for the layout of hands and feet and the couplers drawn.
 *
 * <p>Hands and feet. Four parts and pedal by coupler: soprano and alto in the right hand, tenor in the left, bass on
 * the pedal. Manuals only: tenor and bass in the left. Melody soloed: soprano in the right, alto and tenor in the left,
 * bass on the pedal, or in the left without pedal. Where there is no pedal the left hand plays the bass. Divisions that
 * share a manual all sound from it.
 *
 * <p>On an {@link Action#ELECTRIC} action couplers read only keys that are played: neither another coupler nor a
 * division's own octave or sub-octave carries them further.
 *
 * <p>On a {@link Action#MECHANICAL} action couplers move the keys of the other keyboard: all its divisions sound, and
 * its own couplers carry on. A path of couplers visits no keyboard twice and has at most one octave or sub-octave
 * coupler. A division's own octave or sub-octave is one: it acts on keys that are played or moved, and ends the path.
 *
 * <p>Unison off silences a division at its own pitch when its own keyboard is played, and nothing else.
 *
 * <p>A division receives a set: a part that arrives twice at one octave counts once.
 *
 * <p>Source: common practice; no published source.
 *
 * <p>Checked against: {@code KeyRoutingTest}, both actions.
 */
public final class KeyRouting {

    /** Octave shifts at which a part can arrive: one below, as played, one above. */
    static final int OCTAVES = 3;

    private static final int PARTS = VoicePart.values().length;
    private static final int OCTAVE_SEMITONES = 12;
    private static final int PEDAL = 0;

    private final Action action;
    private final int[] keyboardOfDivision;
    private final boolean hasPedal;
    private final Link[] links;

    private final int[] received;
    private HandsAndFeet lastHands;
    private IndexSet lastDrawn = IndexSet.EMPTY;

    /** A coupler by indices: keys of a keyboard play a division some octaves away. */
    private record Link(int keyboard, int division, int octave, Kind kind) {
        enum Kind {
            TO_ANOTHER_KEYBOARD,
            WITHIN_ITS_KEYBOARD,
            UNISON_OFF
        }
    }

    /** The keyboards and couplers of an instrument. */
    public KeyRouting(Instrument organ) {
        action = organ.action();
        keyboardOfDivision = new int[organ.divisions().size()];
        for (int division = 0; division < keyboardOfDivision.length; division++) {
            keyboardOfDivision[division] =
                    organ.divisions().get(division).manual().orElse(PEDAL);
        }
        received = new int[keyboardOfDivision.length];
        hasPedal = organ.pedalDivision().isPresent();
        links = new Link[organ.couplers().size()];
        for (int coupler = 0; coupler < links.length; coupler++) {
            links[coupler] = link(organ.couplers().get(coupler), organ);
        }
    }

    private Link link(Coupler coupler, Instrument organ) {
        int source = organ.division(coupler.source()).orElseThrow();
        int keyboard = keyboardOfDivision[organ.division(coupler.keyboard()).orElseThrow()];
        Link.Kind within =
                keyboard == keyboardOfDivision[source] ? Link.Kind.WITHIN_ITS_KEYBOARD : Link.Kind.TO_ANOTHER_KEYBOARD;
        return switch (coupler.kind()) {
            case UNISON -> new Link(keyboard, source, 0, within);
            case OCTAVE -> new Link(keyboard, source, 1, within);
            case SUB_OCTAVE -> new Link(keyboard, source, -1, within);
            case UNISON_OFF -> new Link(keyboard, source, 0, Link.Kind.UNISON_OFF);
        };
    }

    /**
     * The sets that all divisions receive; the last answer is kept.
     *
     * @param hands where hands and feet play
     * @param drawn indices of the couplers drawn
     * @return a set of {@link #bit} places for every division; overwritten by the next call, not to be changed
     */
    public int[] received(HandsAndFeet hands, IndexSet drawn) {
        if (!hands.equals(lastHands) || !drawn.equals(lastDrawn)) {
            route(hands, drawn, received);
            lastHands = hands;
            lastDrawn = drawn;
        }
        return received;
    }

    /** Place of a part at an octave (-1, 0, 1) in the set that a division receives. */
    public static int bit(VoicePart part, int octave) {
        return part.ordinal() * OCTAVES + octave + 1;
    }

    /** Shift in semitones of a place in the set. */
    static int semitones(int bit) {
        return (bit % OCTAVES - 1) * OCTAVE_SEMITONES;
    }

    /** Part of a place in the set. */
    static VoicePart part(int bit) {
        return PART[bit / OCTAVES];
    }

    private static final VoicePart[] PART = VoicePart.values();

    /** Number of places in the set that a division receives. */
    static final int PLACES = PARTS * OCTAVES;

    /**
     * Computes the set of parts and octaves that each division receives.
     *
     * @param hands where hands and feet play
     * @param drawn indices of the couplers drawn
     * @param received receives a set of {@link #bit} places for every division
     */
    public void route(HandsAndFeet hands, IndexSet drawn, int[] received) {
        Arrays.fill(received, 0);
        int right = keyboardOfDivision[hands.right()];
        int left = keyboardOfDivision[hands.left()];
        for (VoicePart part : PART) {
            int keyboard = keyboardOf(part, hands.layout(), right, left);
            if (keyboard >= 0) {
                play(keyboard, part, drawn, received);
            }
        }
    }

    /** The keyboard of a part, or -1 if nothing plays it. */
    private int keyboardOf(VoicePart part, HandsAndFeet.Layout layout, int right, int left) {
        boolean feet = hasPedal && layout.usesPedal();
        return switch (part) {
            case SOPRANO -> right;
            case ALTO ->
                switch (layout) {
                    case FOUR_PARTS, PEDAL_BY_COUPLER, MANUALS_ONLY -> right;
                    case MELODY_SOLOED, SOLOED_WITHOUT_PEDAL -> left;
                };
            case TENOR -> left;
            case BASS_IN_HAND -> feet ? -1 : left;
            case BASS_ON_PEDAL -> feet ? PEDAL : -1;
        };
    }

    private void play(int keyboard, VoicePart part, IndexSet drawn, int[] received) {
        int unison = 1 << bit(part, 0);
        for (int division = 0; division < received.length; division++) {
            if (keyboardOfDivision[division] == keyboard && !isOff(division, drawn)) {
                received[division] |= unison;
            }
        }
        pullOwnOctaves(keyboard, part, drawn, received);
        switch (action) {
            case ELECTRIC -> read(keyboard, part, drawn, received);
            case MECHANICAL -> move(keyboard, 1 << keyboard, 0, part, drawn, received);
        }
    }

    private boolean isOff(int division, IndexSet drawn) {
        for (int i = drawn.next(0); i != IndexSet.NONE; i = drawn.next(i + 1)) {
            if (links[i].kind == Link.Kind.UNISON_OFF && links[i].division == division) {
                return true;
            }
        }
        return false;
    }

    private void pullOwnOctaves(int keyboard, VoicePart part, IndexSet drawn, int[] received) {
        for (int i = drawn.next(0); i != IndexSet.NONE; i = drawn.next(i + 1)) {
            if (links[i].kind == Link.Kind.WITHIN_ITS_KEYBOARD && links[i].keyboard == keyboard) {
                received[links[i].division] |= 1 << bit(part, links[i].octave);
            }
        }
    }

    private void read(int keyboard, VoicePart part, IndexSet drawn, int[] received) {
        for (int i = drawn.next(0); i != IndexSet.NONE; i = drawn.next(i + 1)) {
            if (leadsAway(links[i], keyboard)) {
                received[links[i].division] |= 1 << bit(part, links[i].octave);
            }
        }
    }

    private void move(int keyboard, int visited, int octave, VoicePart part, IndexSet drawn, int[] received) {
        for (int i = drawn.next(0); i != IndexSet.NONE; i = drawn.next(i + 1)) {
            Link link = links[i];
            if (!leadsAway(link, keyboard)) {
                continue;
            }
            int next = keyboardOfDivision[link.division];
            boolean twoOctaves = octave != 0 && link.octave != 0;
            if ((visited & 1 << next) != 0 || twoOctaves) {
                continue;
            }
            int arrived = octave + link.octave;
            for (int division = 0; division < received.length; division++) {
                if (keyboardOfDivision[division] == next) {
                    received[division] |= 1 << bit(part, arrived);
                }
            }
            if (arrived == 0) {
                pullOwnOctaves(next, part, drawn, received);
            }
            move(next, visited | 1 << next, arrived, part, drawn, received);
        }
    }

    private static boolean leadsAway(Link link, int keyboard) {
        return link.kind == Link.Kind.TO_ANOTHER_KEYBOARD && link.keyboard == keyboard;
    }
}
