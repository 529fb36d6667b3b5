package versewind.advice;

import java.util.Optional;

/** One rule on a verse as it sounds. */
interface VerseRule {

    /** What is found in a verse of a hymn, if anything is. */
    Optional<Found> judge(InHymn hymn, int verse);
}
