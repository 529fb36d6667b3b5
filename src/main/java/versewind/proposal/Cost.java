package versewind.proposal;

import versewind.plan.Mood;

/**
 * The price list of a registration: the points that each fault costs, and the words in which it is told. 1 point is
 * about what a teacher would mention, 5 and more nobody does. Common practice, no source; the points are estimates.
 */
enum Cost {
    // Colour
    TREMULANT(5, "a tremulant is drawn"),
    MELODY_MIXES_COLOURS(1.2, "the melody mixes colours"),
    SECOND_BENEATH_MELODY(0.3, "one 8 ft would do beneath the melody"),
    MELODY_ALSO_BENEATH(5, "what sings the melody also sounds beneath it: %s"),
    MELODY_WITHOUT_EIGHT(5, "the melody has no 8 ft"),

    // The chorus of each division that is heard
    OCTAVE_OFF(2, "a division sounds only an octave off"),
    RANK_PASSED_OVER(0.4, "a lower rank is passed over"),
    COUPLED_WITHOUT_EIGHT(0.5, "a division that is coupled has no 8 ft of its own"),
    MIXTURE_WITHOUT_FOUR(0.8, "a mixture stands without a 4 ft of its division"),
    MIXTURE_BEFORE_TWO(1, "a mixture sounds before the 2 ft of its division"),
    REEDS_WITHOUT_FLUES(0.8, "reeds stand without flues of their division"),
    NO_SECOND_CHORUS(0, 0.25, 0.6, 0.6, "a second chorus could be coupled"),

    // The order in which reeds join
    REED_BEFORE_EIGHT(2, "a reed sounds before one of 8 ft"),
    REED_BEFORE_TWO(2.2, "a reed sounds before the 2 ft"),
    REED_BEFORE_MIXTURE(2.2, "a reed sounds before the mixture"),
    OPEN_REEDS_FIRST(1.4, "the reeds of a box would come first"),
    OPEN_SIXTEEN_FIRST(0.6, "the 16 ft reed of a box would come first"),
    REED_WITHOUT_ITS_EIGHT(0.6, "a reed stands without the 8 ft of its division"),
    REEDS_WITHOUT_UPPERWORK(0.3, "reeds in a box stand without the upperwork of their division"),
    SOLO_REED(6, 5, 4, 1.2, "reeds meant for solos join the chorus"),
    SOLO_REED_BEFORE_FULL(2, "reeds meant for solos come before those of the chorus"),

    // Economy
    STOP(0.1, "each stop and coupler costs a little"),
    UNISON(0.08, STOP.words),
    OCTAVE(4, 2.5, 1.6, 1, STOP.words),
    SUB_OCTAVE(5, 4, 3, 2.5, STOP.words),
    UNISON_OFF(5, STOP.words),
    IDLE_STOP(4, "drawn without sounding: %s"),
    ROUNDABOUT_COUPLER(0.6, "a coupler is reached only through another"),
    EMPTY_COUPLER(3, "a coupler brings nothing"),
    DOUBLED(0.8, 0.8, 0.35, 0.35, "stops of one colour and pitch double each other"),
    SOFT_EIGHTS_TOGETHER(0.6, "too many soft 8 ft stops together"),
    EIGHTS_TOGETHER(0.5, "too many 8 ft flues together"),
    SAME_PIPES(1, "the same pipes at the same pitch as another stop: %s"),

    // Hands and feet
    EMPTY_HAND(100, "a hand plays where nothing sounds"),
    HANDS_WITHOUT_EIGHT(60, "the hands have no 8 ft to play on"),
    NOTHING_UNDER_THE_HANDS(1.5, "the manual under the hands has nothing of its own drawn"),
    NOT_THE_MAIN_MANUAL(1.2, "the people are led from another manual than usual"),
    MEANT_FOR_SOLOS(0.3, "a division meant for solos carries the voices"),
    IN_THE_OPEN(0.9, "a division in a box could follow the voices"),
    NOTHING_COUPLED_DOWN(8, "nothing is coupled to the feet"),
    NO_BASS(2.5, "a big chorus wants the pedal's 16 ft"),
    COUPLED_SOLO(0.4, "manuals are coupled where one by itself would do"),
    SOLOED(6, "the melody is soloed"),
    NOT_SOLOED(6, "the melody has no manual of its own"),
    BETWEEN_POSITIONS(0.05, "a foot finds closed, half open and open more easily"),

    // Pedal
    ALIEN_COUPLER(1.5, "the pedal is coupled to what the hands do not play"),
    PEDAL_NOT_COUPLED(0.3, "a coupler would make the pedal clearer"),
    PEDAL_WITHOUT_EIGHT(0, 0.25, 0.5, 0.5, "the pedal has no 8 ft of its own"),
    PEDAL_WITHOUT_FOUR(0.15, "the pedal has no 4 ft"),
    SECOND_PEDAL_SIXTEEN(0.7, "one 16 ft more than the pedal needs"),
    SECOND_PEDAL_EIGHT(0.7, "one 8 ft more than the pedal needs"),
    PEDAL_TOO_FIRM(0.4, "too firm beneath soft stops: %s"),
    PEDAL_REED_ALONE(2.5, "the pedal has a reed before the manuals have one"),
    PEDAL_REED_MISSING(0.6, "the pedal's reed would answer those of the manuals"),
    PEDAL_MIXTURE_ALONE(1.5, "the pedal has a mixture before the manuals have one");

    private final double gentle;
    private final double plain;
    private final double bright;
    private final double festal;
    private final String words;

    Cost(double points, String words) {
        this(points, points, points, points, words);
    }

    Cost(double gentle, double plain, double bright, double festal, String words) {
        this.gentle = gentle;
        this.plain = plain;
        this.bright = bright;
        this.festal = festal;
        this.words = words;
    }

    /** Points, where they are the same in every mood. */
    double points() {
        return gentle;
    }

    /** Points in a mood. */
    double points(Mood mood) {
        return switch (mood) {
            case GENTLE -> gentle;
            case PLAIN -> plain;
            case BRIGHT -> bright;
            case FESTAL -> festal;
        };
    }

    /** The fault in words; "%s" stands for names of stops. */
    String words() {
        return words;
    }
}
