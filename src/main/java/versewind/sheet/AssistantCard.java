package versewind.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.rules.StopChangesByDivision;

/**
 * What somebody who pulls stops has to do, in order: only their movements. Boxes belong to the organist's foot, and what a
 * piston sets, nobody pulls.
 *
 * @param turns what is done before a verse
 */
public record AssistantCard(List<Turn> turns) {

    public AssistantCard {
        turns = List.copyOf(turns);
    }

    /**
     * What is done before a verse.
     *
     * @param hymn what the hymn is called in short
     * @param verse the verse's label
     * @param movements knobs to put in and to draw
     */
    public record Turn(String hymn, String verse, List<StopChangesByDivision> movements) {

        public Turn {
            movements = List.copyOf(movements);
        }
    }

    static AssistantCard of(Instrument organ, List<HymnSheet> hymns) {
        List<Turn> turns = new ArrayList<>();
        for (HymnSheet hymn : hymns) {
            for (VerseSheet verse : hymn.verses()) {
                List<StopChangesByDivision> knobs = verse.changes().stream()
                        .map(each ->
                                new StopChangesByDivision(each.where(), each.putIn(), each.drawn(), Optional.empty()))
                        .filter(each -> !each.putIn().isEmpty() || !each.drawn().isEmpty())
                        .toList();
                if (!knobs.isEmpty() && !organ.pistons().set(verse.verse().piston())) {
                    turns.add(new Turn(hymn.shortName(), verse.verse().label(), knobs));
                }
            }
        }
        return new AssistantCard(turns);
    }
}
