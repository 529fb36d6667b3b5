package versewind.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Registration;
import versewind.plan.BroughtHymn;
import versewind.plan.Hymn;
import versewind.plan.Verse;

/** A hymn transferred to another organ by what is heard of it: what is drawn and silent stays behind. */
public final class Transfer {

    private final OrganSound from;
    private final OrganSound to;
    private final int people;

    /**
     * Between two organs.
     *
     * @param people at the service
     */
    public Transfer(OrganSound from, OrganSound to, int people) {
        this.from = from;
        this.to = to;
        this.people = people;
    }

    /** The hymn on the other organ; where it rose and would fall, on what the verse before has and its own. */
    public BroughtHymn of(Hymn hymn) {
        if (from.organ().equals(to.organ())) {
            return BroughtHymn.of(hymn, from.organ(), to.organ());
        }
        List<Verse> heard = hymn.verses().stream().map(this::heard).toList();
        BroughtHymn brought = BroughtHymn.of(hymn.withVerses(heard), from.organ(), to.organ());
        List<Verse> verses = new ArrayList<>(brought.hymn().verses());
        for (int i = 1; i < verses.size(); i++) {
            OptionalInt before = IntStream.iterate(i - 1, other -> other >= 0, other -> other - 1)
                    .filter(other -> heard.get(other).isPlayed())
                    .findFirst();
            if (before.isPresent()
                    && isAbove(from, heard.get(before.getAsInt()), heard.get(i))
                    && (verses.get(i).registration().stops().isEmpty()
                            || isAbove(to, verses.get(i), verses.get(before.getAsInt())))) {
                verses.set(i, risen(verses.get(before.getAsInt()), verses.get(i)));
            }
        }
        return new BroughtHymn(brought.hymn().withVerses(verses), brought.replacements());
    }

    private Verse heard(Verse verse) {
        Registration drawn = verse.registration();
        return verse.withRegistration(drawn.withStops(from.sounding(drawn, verse.hands())));
    }

    /** True if the level rises from one verse to another, by a dB rounded. */
    private boolean isAbove(OrganSound sound, Verse one, Verse other) {
        Optional<OrganSound.LevelStep> step = sound.step(one, other, people);
        return step.isPresent() && Math.round(step.get().db()) > 0;
    }

    /** With what the verse before has too, on its own manual or on that one, where it falls no more. */
    private Verse risen(Verse before, Verse verse) {
        Registration was = before.registration();
        Registration is = verse.registration();
        Verse both = verse.withRegistration(is.withStops(is.stops().plus(was.stops()))
                .withCouplers(is.couplers().plus(was.couplers())));
        return Stream.of(both, both.withHands(before.hands()))
                .filter(fuller -> !isAbove(to, fuller, before))
                .findFirst()
                .orElse(verse);
    }
}
