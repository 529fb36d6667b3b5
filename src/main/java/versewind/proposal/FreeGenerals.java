package versewind.proposal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import versewind.organ.General;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.Verse;

/**
 * The general pistons of an instrument, as far as hymns that are left alone have not set them.
 *
 * @param owned what is set already, and on which
 * @param free names of those that may be set
 */
record FreeGenerals(Map<GeneralSetting, String> owned, List<String> free) {

    /**
     * Those of a plan.
     *
     * @param chosen indices of the hymns whose pistons are set anew
     */
    static FreeGenerals of(Instrument organ, Plan plan, List<Integer> chosen) {
        List<String> names = IntStream.rangeClosed(1, organ.pistons().generals())
                .mapToObj(number -> "G" + number)
                .toList();
        Map<GeneralSetting, String> owned = new HashMap<>();
        Set<String> taken = new HashSet<>();
        for (int hymn = 0; hymn < plan.hymns().size(); hymn++) {
            if (chosen.contains(hymn)) {
                continue;
            }
            for (Verse verse : plan.hymns().get(hymn).verses()) {
                Optional<General> general = General.of(verse.piston()).filter(organ.pistons()::has);
                if (general.isPresent()) {
                    owned.putIfAbsent(
                            GeneralSetting.of(verse.registration()),
                            general.get().name());
                    taken.add(general.get().name());
                }
            }
        }
        return new FreeGenerals(
                owned, names.stream().filter(name -> !taken.contains(name)).toList());
    }

    /** The piston of every setting, with more of them set. */
    Map<GeneralSetting, String> with(List<GeneralSetting> more) {
        Map<GeneralSetting, String> all = new HashMap<>(owned);
        List<String> left = new ArrayList<>(free);
        more.forEach(setting -> all.put(setting, left.remove(0)));
        return all;
    }
}
