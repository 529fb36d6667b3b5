package versewind.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import versewind.organ.Footage;
import versewind.organ.IndexSet;
import versewind.plan.HandsAndFeet;
import versewind.rules.OrganFacts;
import versewind.rules.StopClass;

/** The voices that can sing a tune on a manual of their own. Common practice, no source. */
final class SoloVoices {

    private static final Footage NAZARD = new Footage(8, 3);
    private static final Map<StopClass, Voice> VOICES = Map.of(
            StopClass.PRINCIPAL_8, Voice.PRINCIPAL,
            StopClass.STRING_8, Voice.STRING,
            StopClass.FLUTE_8, Voice.FLUTE);

    private final OrganFacts organ;
    private final IndexSet never;
    private final int manual;
    private final List<Solo> all = new ArrayList<>();

    /**
     * A voice.
     *
     * @param voice its kind
     * @param stops what is drawn for it
     * @param words its name: "Oboe 8"
     */
    record Solo(Voice voice, IndexSet stops, String words) {}

    SoloVoices(OrganFacts organ, IndexSet never, HandsAndFeet hands) {
        this.organ = organ;
        this.never = never;
        manual = hands.right();
    }

    List<Solo> all() {
        for (int division : organ.manuals()) {
            if (organ.isOneKeyboard(division, manual)) {
                organ.stopsOf(division).stream()
                        .filter(stop -> !never.contains(stop))
                        .forEach(stop -> add(division, stop));
            }
        }
        return all;
    }

    private void add(int division, int stop) {
        StopClass layer = organ.layer(stop);
        if (layer == StopClass.REED_8) {
            add(organ.bigReeds().contains(stop) ? Voice.TUBA : Voice.TRUMPET, stop);
        } else if (layer == StopClass.SOLO_REED) {
            add(StopClass.isThin(organ.stop(stop)) ? Voice.THIN_REED : Voice.SOLO_REED, stop);
        } else if (layer == StopClass.CORNET) {
            with(Voice.CORNET, stop, first(division, StopClass.FLUTE_8));
        } else if (VOICES.containsKey(layer)) {
            add(VOICES.get(layer), stop);
        }
        if (layer == StopClass.FLUTE_8) {
            with(Voice.FLUTE_AND_NAZARD, stop, nazard(division));
        }
    }

    private void add(Voice voice, int stop) {
        all.add(new Solo(voice, IndexSet.of(stop), organ.stop(stop).label()));
    }

    private void with(Voice voice, int stop, IndexSet other) {
        if (!other.isEmpty()) {
            String words = organ.stop(stop).label() + " with "
                    + organ.stop(other.next(0)).label();
            all.add(new Solo(voice, other.with(stop), words));
        }
    }

    private IndexSet nazard(int division) {
        return IndexSet.of(organ.stopsOf(division).stream()
                .filter(stop -> organ.layer(stop) == StopClass.MUTATION)
                .filter(stop ->
                        organ.stop(stop).footage().filter(NAZARD::equals).isPresent())
                .filter(stop -> !never.contains(stop))
                .limit(1)
                .mapToInt(stop -> stop));
    }

    private IndexSet first(int division, StopClass wanted) {
        return IndexSet.of(organ.stopsOf(division).stream()
                .filter(stop -> organ.layer(stop) == wanted && !never.contains(stop))
                .limit(1)
                .mapToInt(stop -> stop));
    }
}
