package versewind.rules;

import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;

/**
 * What is drawn, and where hands and feet play, once a fault is fixed.
 *
 * @param registration what is drawn
 * @param hands where hands and feet play
 */
record Fix(Registration registration, HandsAndFeet hands) {}
