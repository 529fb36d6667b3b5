package versewind.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.sound.KeyRouting;
import versewind.sound.VoicePart;

/**
 * What sounds from both hands and from the feet: a registration, how it is played, and for whom.
 *
 * <p>Both hands on one keyboard are one. Quick enough to be made for every draft of a search.
 */
public final class PlayedRegistration {

    private final OrganFacts organ;
    private final Registration registration;
    private final HandsAndFeet hands;
    private final Company company;
    private final int[] received;
    private final List<Chorus> choruses = new ArrayList<>(3);
    private final Chorus right;
    private final Chorus left;
    private final Optional<Chorus> feet;

    /**
     * Looks at what sounds.
     *
     * @param organ the instrument
     * @param routing its keys and couplers
     * @param registration what is drawn
     * @param hands how it is played
     * @param company for whom
     */
    public PlayedRegistration(
            OrganFacts organ, KeyRouting routing, Registration registration, HandsAndFeet hands, Company company) {
        this.organ = organ;
        this.registration = registration;
        this.hands = hands;
        this.company = company;
        received = routing.received(hands, registration.couplers()).clone();
        boolean isOne = organ.isOneKeyboard(hands.right(), hands.left());
        right = add(isOne ? Hand.BOTH_HANDS : Hand.RIGHT_HAND, VoicePart.SOPRANO, hands.right());
        left = isOne ? right : add(Hand.LEFT_HAND, VoicePart.TENOR, hands.left());
        boolean isPedalled =
                organ.pedal() != OrganFacts.NO_PEDAL && hands.layout().usesPedal();
        feet = isPedalled ? Optional.of(add(Hand.FEET, VoicePart.BASS_ON_PEDAL, organ.pedal())) : Optional.empty();
    }

    private Chorus add(Hand hand, VoicePart part, int division) {
        Chorus chorus = new Chorus(this, hand, part, division, received);
        choruses.add(chorus);
        return chorus;
    }

    /** The instrument. */
    public OrganFacts organ() {
        return organ;
    }

    /** What is drawn. */
    public Registration registration() {
        return registration;
    }

    /** How it is played. */
    public HandsAndFeet hands() {
        return hands;
    }

    /** For whom it is played. */
    public Company company() {
        return company;
    }

    /** What each hand and the feet sound, the right hand’s first. */
    public List<Chorus> choruses() {
        return choruses;
    }

    /** What the right hand sounds. */
    public Chorus right() {
        return right;
    }

    /** What the left hand sounds; the same as the right’s where both play one keyboard. */
    public Chorus left() {
        return left;
    }

    /** What the feet sound, where they play. */
    public Optional<Chorus> feet() {
        return feet;
    }

    /** True where the melody has a hand and a keyboard of its own. */
    public boolean isSoloed() {
        return hands.layout().isSoloed() && left != right;
    }

    /** True for a division that sounds from any key that is played. */
    public boolean isPlayed(int division) {
        return received[division] != 0;
    }

    /** True for a division whose keyboard lies under a hand or the feet. */
    public boolean isUnderHandOrFoot(int division) {
        return division == organ.pedal()
                ? feet.isPresent()
                : organ.isOneKeyboard(division, hands.right()) || organ.isOneKeyboard(division, hands.left());
    }

    /** True where something of a division sounds, so that its box matters. */
    public boolean isHeard(int division) {
        return isPlayed(division) && registration.stops().meets(organ.allOf(division));
    }

    /** True where the ear hears no difference: whatever else is drawn does not sound. */
    boolean soundsLike(PlayedRegistration other) {
        boolean isSame = Arrays.equals(received, other.received)
                && sounding().equals(other.sounding())
                && registration.tremulants().equals(other.registration.tremulants());
        for (int division = 0; division < received.length && isSame; division++) {
            BoxPosition position = registration.boxes().get(division);
            isSame =
                    !isHeard(division) || position == other.registration.boxes().get(division);
        }
        return isSame;
    }

    /** All stops of the divisions that sound: to move one of them is heard. */
    public IndexSet withinEarshot() {
        IndexSet stops = IndexSet.EMPTY;
        for (int division = 0; division < received.length; division++) {
            stops = received[division] == 0 ? stops : stops.plus(organ.allOf(division));
        }
        return stops;
    }

    /** Stops that are drawn and sound. */
    public IndexSet sounding() {
        return registration.stops().and(withinEarshot());
    }
}
