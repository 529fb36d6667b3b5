package versewind.rules;

import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;

/**
 * What is drawn, and how and for whom it is played.
 *
 * @param specification the instrument
 * @param registration what is drawn
 * @param hands how it is played
 * @param company for whom
 */
record PlayedRegistration(StopFacts specification, Registration registration, HandsAndFeet hands, Company company) {}
