package versewind.sound;

import java.util.ArrayList;
import java.util.List;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.HeardAs;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;

/** The verses of an organ that were heard, and how: one that is played and sung just so again is judged by that. */
public final class FeltVerses {

    /** Nothing was heard. */
    public static final FeltVerses NONE = new FeltVerses(List.of());

    /** Numbers of singers, or of people in the room, by which levels differ no more than this are alike, in dB. */
    private static final double ALIKE_DB = 1;

    private final List<Felt> all;

    private FeltVerses(List<Felt> all) {
        this.all = List.copyOf(all);
    }

    /** How a verse is sung. Its methods are written out, because a record's own are slow until compiled. */
    record Singers(SungBy by, Singing singing, PeoplePresent people) {

        static Singers of(Verse verse, PeoplePresent people) {
            return new Singers(verse.sungBy(), verse.singing(), people);
        }

        static Singers of(Verse verse, int servicePeople) {
            return of(verse, PeoplePresent.of(verse, servicePeople));
        }

        @Override
        public int hashCode() {
            return 31 * (31 * by.ordinal() + singing.ordinal()) + 7 * people.present() + people.singers();
        }

        @Override
        public boolean equals(Object object) {
            return object instanceof Singers other
                    && by == other.by
                    && singing == other.singing
                    && people.present() == other.people.present()
                    && people.singers() == other.people.singers()
                    && people.place() == other.people.place();
        }

        boolean isAlike(Singers other) {
            boolean isSung = people.singers() > 0;
            if (by.mode() != other.by.mode()
                    || (by == SungBy.TREBLES) != (other.by == SungBy.TREBLES)
                    || isSung != other.people.singers() > 0) {
                return false;
            }
            return isSung
                    ? singing == other.singing && isNear(people.singers(), other.people.singers())
                    : isNear(people.present(), other.people.present());
        }

        /** True if they are as many, by 1 dB, and sing as strongly, or more. */
        boolean areAtLeast(Singers other) {
            return singing.compareTo(other.singing) >= 0
                    && levelDb(people.singers(), other.people.singers()) >= -ALIKE_DB;
        }

        private boolean areComparableTo(Singers other) {
            return by.mode() == other.by.mode()
                    && (by == SungBy.TREBLES) == (other.by == SungBy.TREBLES)
                    && people.singers() > 0
                    && other.people.singers() > 0;
        }

        private static double levelDb(int one, int other) {
            return 10 * Math.log10((double) one / other);
        }

        private static boolean isNear(int one, int other) {
            return Math.abs(levelDb(one, other)) <= ALIKE_DB;
        }
    }

    /** A verse that was heard: how it was sung and played, and what was said of it. */
    record Felt(Singers singers, Registration drawn, HandsAndFeet hands, List<HeardAs> answers) {}

    /** With one more verse, that was {@link OrganSound#heard} and sung so, and what was said of it on some days. */
    public FeltVerses and(Verse verse, int servicePeople, List<HeardAs> answers) {
        List<Felt> more = new ArrayList<>(all);
        more.add(new Felt(Singers.of(verse, servicePeople), verse.registration(), verse.hands(), List.copyOf(answers)));
        return new FeltVerses(more);
    }

    /** Those that were sung as a verse is. */
    FeltVerses sungAs(Verse verse, PeoplePresent people) {
        if (all.isEmpty()) {
            return this;
        }
        Singers singers = Singers.of(verse, people);
        List<Felt> some = new ArrayList<>();
        for (Felt each : all) {
            if (each.singers().isAlike(singers)) {
                some.add(each);
            }
        }
        return new FeltVerses(some);
    }

    boolean isEmpty() {
        return all.isEmpty();
    }

    /** Those whose singers can be compared with others, be they more or fewer. */
    List<Felt> comparableTo(Singers singers) {
        return all.stream()
                .filter(each -> each.singers().areComparableTo(singers))
                .toList();
    }

    /** The answers where this is heard and played so; none where it never was. */
    List<HeardAs> playedAs(Registration drawn, HandsAndFeet hands) {
        for (Felt each : all) {
            if (each.drawn().equals(drawn) && each.hands().equals(hands)) {
                return each.answers();
            }
        }
        return List.of();
    }

    /** True if two verses are sung and played alike, by numbers of people whose levels differ by 1 dB at most. */
    public static boolean areAlike(Verse one, int people, Verse other, int otherPeople) {
        return one.registration().equals(other.registration())
                && one.hands().equals(other.hands())
                && Singers.of(one, people).isAlike(Singers.of(other, otherPeople));
    }
}
