package versewind.rules;

import java.util.List;

/** One rule on a hymn as a whole. */
interface HymnRule {

    /** What is found in a hymn, each at the verse where it can be changed. */
    List<UnfixedFinding> judge(InHymn hymn);
}
