package versewind.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.organ.Knobs;
import versewind.organ.Piston;
import versewind.organ.Pressed;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/** Which verses of a plan press a piston and what they have it set: found once, not once for each mend. */
final class PistonUse {

    private static final Comparator<VersePlace> IN_ORDER =
            Comparator.comparingInt(VersePlace::hymn).thenComparingInt(VersePlace::verse);

    private final Index index;
    private final Map<VersePlace, Verse> instead;
    private final List<Use> changed;

    private PistonUse(Index index, Map<VersePlace, Verse> instead) {
        this.index = index;
        this.instead = instead;
        this.changed = instead.entrySet().stream()
                .flatMap(entry -> index.uses(entry.getKey(), entry.getValue()))
                .toList();
    }

    static PistonUse of(Plan plan, Instrument organ) {
        return new PistonUse(new Index(plan, organ), Map.of());
    }

    /** With another verse in the place of one. */
    PistonUse with(VersePlace place, Verse verse) {
        Map<VersePlace, Verse> others = new HashMap<>(instead);
        others.put(place, verse);
        return new PistonUse(index, others);
    }

    /** The plan, without what was put in the place of its verses. */
    Plan plan() {
        return index.plan;
    }

    Instrument organ() {
        return index.organ;
    }

    Verse verse(VersePlace place) {
        return instead.containsKey(place) ? instead.get(place) : index.plan.verse(place);
    }

    /** The pistons that are pressed for a verse. */
    Pressed pressed(Verse verse) {
        return index.pressed(verse);
    }

    boolean isPressed(Piston piston) {
        List<Use> planned = index.ofPiston().of(piston);
        boolean isUnused = planned.isEmpty() && changed.isEmpty(); // most of what is asked, and quicker so
        return !isUnused && uses(index.ofPiston(), piston).findAny().isPresent();
    }

    /** True where a piston is pressed, and always for what a verse has. */
    boolean isSetTo(Piston piston, Verse verse) {
        if (!isPressed(piston)) {
            return false;
        }
        Knobs set = index.set(piston, verse);
        return uses(index.ofPiston(), piston).allMatch(use -> use.set().equals(set));
    }

    /** True where a piston sets two verses alike. */
    boolean isSetTheSame(Piston piston, Verse one, Verse other) {
        return index.set(piston, one).equals(index.set(piston, other));
    }

    /** The first verse of the plan that has a piston, if it is one before another. */
    Optional<VersePlace> holder(Piston piston, VersePlace place) {
        return first(index.ofPiston(), piston, place).map(Use::place);
    }

    /** The first other verse that has a piston and is drawn otherwise than it would set it for this one. */
    Optional<VersePlace> otherHolder(Piston piston, VersePlace place) {
        Knobs set = index.set(piston, verse(place));
        return uses(index.ofPiston(), piston)
                .filter(use -> !use.place().equals(place) && !use.set().equals(set))
                .map(Use::place)
                .min(IN_ORDER);
    }

    /** What the first verse before another presses that is set as a piston is for that verse. */
    Optional<Piston> alike(Piston piston, VersePlace place, Verse verse) {
        return first(index.ofSetting(), new Setting(piston.division(), index.set(piston, verse)), place)
                .map(Use::piston);
    }

    private <K> Optional<Use> first(Kept<K> kept, K wanted, VersePlace before) {
        return Stream.concat(planned(kept, wanted).limit(1), changed(kept, wanted))
                .min(Comparator.comparing(Use::place, IN_ORDER))
                .filter(use -> IN_ORDER.compare(use.place(), before) < 0);
    }

    private <K> Stream<Use> uses(Kept<K> kept, K wanted) {
        return Stream.concat(planned(kept, wanted), changed(kept, wanted));
    }

    private <K> Stream<Use> planned(Kept<K> kept, K wanted) {
        return kept.of(wanted).stream().filter(use -> !instead.containsKey(use.place()));
    }

    private <K> Stream<Use> changed(Kept<K> kept, K wanted) {
        return changed.stream().filter(use -> kept.key().of(use).equals(wanted));
    }

    /** That a verse presses a piston, for what it has drawn of the piston's reach. */
    private record Use(VersePlace place, Piston piston, Knobs set) {}

    /** What a general, or a divisional of a division, sets. */
    private record Setting(OptionalInt division, Knobs set) {}

    private interface Key<K> {
        K of(Use use);
    }

    /** Uses in playing order, by something. */
    private record Kept<K>(Key<K> key, Map<K, List<Use>> uses) {
        Kept(Key<K> key) {
            this(key, new HashMap<>());
        }

        List<Use> of(K wanted) {
            return uses.getOrDefault(wanted, List.of());
        }

        void add(Use use) {
            uses.computeIfAbsent(key.of(use), first -> new ArrayList<>()).add(use);
        }
    }

    /** A plan as it is, looked through when it is first asked about. */
    private static final class Index {
        private final Plan plan;
        private final Instrument organ;
        private final Map<String, Pressed> pressed = new HashMap<>();
        private final Map<OptionalInt, Knobs> reaches = new HashMap<>();
        private final Kept<Piston> byPiston = new Kept<>(Use::piston);
        private final Kept<Setting> bySetting =
                new Kept<>(use -> new Setting(use.piston().division(), use.set()));
        private boolean isRead;

        Index(Plan plan, Instrument organ) {
            this.plan = plan;
            this.organ = organ;
        }

        Kept<Piston> ofPiston() {
            read();
            return byPiston;
        }

        Kept<Setting> ofSetting() {
            read();
            return bySetting;
        }

        private void read() {
            List<VersePlace> rest = isRead ? List.of() : plan.places();
            isRead = true;
            rest.forEach(place -> uses(place, plan.verse(place)).forEach(use -> {
                byPiston.add(use);
                bySetting.add(use);
            }));
        }

        Stream<Use> uses(VersePlace place, Verse verse) {
            return pressed(verse).pistons().stream().map(piston -> new Use(place, piston, set(piston, verse)));
        }

        Pressed pressed(Verse verse) {
            return pressed.computeIfAbsent(verse.piston(), text -> Pressed.of(organ, text));
        }

        Knobs set(Piston piston, Verse verse) {
            return Knobs.drawn(verse.registration())
                    .and(reaches.computeIfAbsent(piston.division(), any -> piston.reach(organ)));
        }
    }
}
