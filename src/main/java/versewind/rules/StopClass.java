package versewind.rules;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.Stop;

/** What a stop is in a registration: the layers of which the trade builds. Common practice, no source. */
public enum StopClass {
    DOUBLE,
    PRINCIPAL_8,
    FLUTE_8,
    STRING_8,
    CELESTE,
    PRINCIPAL_4,
    FLUTE_4,
    TWELFTH,
    PRINCIPAL_2,
    FLUTE_2,
    HIGH,
    MUTATION,
    MIXTURE,
    CORNET,
    REED_16,
    REED_8,
    REED_4,
    SOLO_REED,
    ODD_REED,
    PEDAL_32,
    PEDAL_16,
    PEDAL_8,
    PEDAL_4,
    PEDAL_MUTATION,
    PEDAL_MIXTURE,
    PEDAL_REED_32,
    PEDAL_REED_16,
    PEDAL_REED_8,
    PEDAL_COLOUR;

    public static final int COUNT = values().length;

    private static final double TWELFTH_FEET = 8.0 / 3;
    private static final Pattern OF_FLUTES = Pattern.compile("(?iu)\\bna[sz]|fl[auûöo]+t|fluit|fleut");
    private static final Pattern VOX_HUMANA = Pattern.compile("(vox|voix|voz|voce) ?hum.*");
    private static final Pattern REGAL = Pattern.compile("(?i)\\brega+l|\\brank+et");
    private static final Pattern TUBA = Pattern.compile("(?i)\\btuba|chamade|fanfare");
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern QUINTADENA = Pattern.compile("(?i)quintad|quintat");

    /** The layer of a stop of a manual. */
    public static StopClass onManual(Stop stop) {
        double feet = stop.footage().map(Footage::feet).orElse(2.0);
        return switch (stop.family()) {
            case PRINCIPAL -> flue(feet, PRINCIPAL_8, PRINCIPAL_4, PRINCIPAL_2);
            case FLUTE -> flue(feet, isQuintadena(stop) ? STRING_8 : FLUTE_8, FLUTE_4, FLUTE_2);
            case STRING -> flue(feet, STRING_8, FLUTE_4, FLUTE_2);
            case CELESTE -> CELESTE;
            case MUTATION -> Math.abs(feet - TWELFTH_FEET) < 0.1 && !isOfFlutes(stop) ? TWELFTH : MUTATION;
            case MIXTURE -> MIXTURE;
            case CORNET -> CORNET;
            case CHORUS_REED -> reed(feet);
            case SOLO_REED -> feet == 8 ? SOLO_REED : ODD_REED;
        };
    }

    /** A nazard, or a flute of that pitch, is for solos, whereas a twelfth or quint joins the chorus. */
    private static boolean isOfFlutes(Stop stop) {
        return OF_FLUTES.matcher(stop.name()).find();
    }

    /** A stopped flute that sounds its twelfth nearly as loud: a colour, as strings are. */
    private static boolean isQuintadena(Stop stop) {
        return QUINTADENA.matcher(stop.name()).find();
    }

    /** True for a vox humana, which is called so in most languages. */
    static boolean isVoxHumana(Stop stop) {
        String plain = MARKS.matcher(Normalizer.normalize(stop.name(), Normalizer.Form.NFD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT);
        return stop.family() == Family.SOLO_REED && VOX_HUMANA.matcher(plain).matches();
    }

    /** True for a solo reed of short pipes, a vox humana or a regal: thin by itself. */
    public static boolean isThin(Stop stop) {
        return stop.family() == Family.SOLO_REED
                && (isVoxHumana(stop) || REGAL.matcher(stop.name()).find());
    }

    /** True for a reed on high wind that is meant to stand out from full organ. */
    static boolean isTuba(Stop stop) {
        return TUBA.matcher(stop.name()).find();
    }

    private static StopClass flue(double feet, StopClass eight, StopClass four, StopClass two) {
        if (feet > 8) {
            return DOUBLE;
        }
        if (feet > 4) {
            return eight;
        }
        if (feet > 2) {
            return four;
        }
        return feet == 2 ? two : HIGH;
    }

    private static StopClass reed(double feet) {
        if (feet > 8) {
            return REED_16;
        }
        return feet > 4 ? REED_8 : REED_4;
    }

    /** The layer of a stop of the pedal. */
    public static StopClass onPedal(Stop stop) {
        double feet = stop.footage().map(Footage::feet).orElse(4.0);
        return switch (stop.family()) {
            case PRINCIPAL, FLUTE, STRING -> pedalFlue(feet);
            case MUTATION -> PEDAL_MUTATION;
            case MIXTURE -> PEDAL_MIXTURE;
            case CHORUS_REED -> pedalReed(feet);
            case CELESTE, CORNET, SOLO_REED -> PEDAL_COLOUR;
        };
    }

    private static StopClass pedalFlue(double feet) {
        if (feet > 16) {
            return PEDAL_32;
        }
        if (feet > 8) {
            return PEDAL_16;
        }
        return feet > 4 ? PEDAL_8 : PEDAL_4;
    }

    private static StopClass pedalReed(double feet) {
        if (feet > 16) {
            return PEDAL_REED_32;
        }
        return feet > 8 ? PEDAL_REED_16 : PEDAL_REED_8;
    }

    /** Its bit in a set of classes. */
    int bit() {
        return 1 << ordinal();
    }

    /** A set of classes. */
    static int bits(StopClass... classes) {
        int bits = 0;
        for (StopClass each : classes) {
            bits |= each.bit();
        }
        return bits;
    }

    /** True for a chorus reed of a manual. */
    public boolean isChorusReed() {
        return this == REED_16 || this == REED_8 || this == REED_4;
    }

    /** True for a stop that can sing a melody by itself. */
    public boolean isMelody() {
        return isEightFootFlue() || this == SOLO_REED || this == CORNET || this == REED_8;
    }

    /** Whether it is one of the 8 ft flues of a manual. */
    public boolean isEightFootFlue() {
        return this == PRINCIPAL_8 || this == FLUTE_8 || this == STRING_8;
    }

    /** Whether one may stand for the other: they have about the same pitch, or are reeds both. */
    public boolean isKinOf(StopClass other) {
        return kin() == other.kin();
    }

    private int kin() {
        return switch (this) {
            case DOUBLE -> 0;
            case PRINCIPAL_8, FLUTE_8, STRING_8, CELESTE -> 1;
            case PRINCIPAL_4, FLUTE_4 -> 2;
            case PRINCIPAL_2, FLUTE_2, HIGH, MIXTURE -> 3;
            case TWELFTH, MUTATION -> 4;
            case CORNET, REED_16, REED_8, REED_4, SOLO_REED, ODD_REED -> 5;
            case PEDAL_32 -> 6;
            case PEDAL_16 -> 7;
            case PEDAL_8 -> 8;
            case PEDAL_4, PEDAL_MUTATION, PEDAL_MIXTURE -> 9;
            case PEDAL_REED_32, PEDAL_REED_16, PEDAL_REED_8, PEDAL_COLOUR -> 10;
        };
    }
}
