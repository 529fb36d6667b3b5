package versewind.cli;

import versewind.organ.Instrument;
import versewind.sound.OrganSound;

/** Opens instruments for listening. */
final class Organs {
    private Organs() {}

    /** The instrument, or the sentence that says which material of its room is unknown. */
    static OrganSound sound(Instrument instrument) throws Misuse {
        try {
            return OrganSound.open(instrument);
        } catch (IllegalArgumentException unknownMaterial) {
            throw new Misuse(instrument + ": " + unknownMaterial.getMessage() + ".");
        }
    }
}
