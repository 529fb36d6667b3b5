package versewind.advice;

import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;

/**
 * What is drawn, and how and for whom it is played.
 *
 * @param specification the instrument
 * @param registration what is drawn
 * @param hands how it is played
 * @param company for whom
 * @param received what reaches every division, in the bits of {@link versewind.sound.Keys}
 */
@SuppressWarnings("ArrayRecordComponent") // never compared; made anew for every registration that is judged
record Drawn(
        Specification specification, Registration registration, HandsAndFeet hands, Company company, int[] received) {}
