package versewind.rules;

import java.util.Optional;

/** One rule on a verse as it sounds. */
interface VerseRule {

    /** What is found in a verse of a hymn, if anything is. */
    Optional<UnfixedFinding> judge(InHymn hymn, int verse);
}
