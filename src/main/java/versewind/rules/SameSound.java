package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The same sound for more than two verses tires everyone; refrains may come back as they were. Common practice, no source. */
final class SameSound implements HymnRule {

    @Override
    public List<UnfixedFinding> judge(InHymn hymn) {
        List<UnfixedFinding> found = new ArrayList<>();
        List<Integer> verses = hymn.textVerses();
        int same = 1;
        for (int i = 1; i < verses.size(); i++) {
            same = isTheSame(hymn, verses.get(i - 1), verses.get(i)) ? same + 1 : 1;
            if (same == Practice.SAME_SOUND_VERSES + 1) {
                found.add(UnfixedFinding.remark(
                        hymn,
                        verses.get(i),
                        Rule.SAME_SOUND,
                        List.of(FindingNumbers.count("verses", same)),
                        "This is the third verse with the same sound.",
                        Optional::empty));
            }
        }
        return found;
    }

    private static boolean isTheSame(InHymn hymn, int one, int other) {
        return !hymn.verse(one).registration().stops().isEmpty()
                && hymn.verse(one).registration().equals(hymn.verse(other).registration())
                && hymn.verse(one).hands().equals(hymn.verse(other).hands());
    }
}
