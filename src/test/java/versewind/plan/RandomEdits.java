package versewind.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/** Plans and edits of them drawn by lot from a seed, for an organ of two manuals and pedal with twelve stops. */
public final class RandomEdits {
    private static final int DIVISIONS = 3;
    private static final int STOPS = 12;

    private final Random random;

    public RandomEdits(long seed) {
        this.random = new Random(seed);
    }

    private <T> T oneOf(T[] values) {
        return values[random.nextInt(values.length)];
    }

    private String text() {
        return "text " + random.nextInt(1000);
    }

    private OptionalInt sometimes(int most) {
        return random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(20 + random.nextInt(most - 20));
    }

    private <T> List<T> some(int most, IntFunction<T> each) {
        return IntStream.range(0, random.nextInt(most + 1)).mapToObj(each).toList();
    }

    /** A plan of up to four hymns, each of up to six verses. */
    public Plan plan() {
        return new Plan(heading(), "organ", some(4, i -> hymn()));
    }

    private ServiceHeading heading() {
        Optional<LocalDate> date =
                random.nextBoolean() ? Optional.empty() : Optional.of(LocalDate.ofEpochDay(random.nextInt(40_000)));
        return new ServiceHeading(text(), date, 1 + random.nextInt(Verse.MOST_PEOPLE), text());
    }

    private Hymn hymn() {
        return new Hymn(text(), text(), text(), text(), text(), sometimes(300), text(), some(6, i -> verse()));
    }

    private Verse verse() {
        return new Verse(
                oneOf(VerseKind.values()),
                text(),
                oneOf(Mode.values()),
                oneOf(Singing.values()),
                sometimes(500),
                new HandsAndFeet(oneOf(HandsAndFeet.Layout.values()), random.nextInt(2), random.nextInt(2)),
                registration(),
                text(),
                text(),
                oneOf(Mood.values()),
                locks(),
                List.of(),
                random.nextBoolean()
                        ? Optional.empty()
                        : Optional.of(new Feedback(oneOf(HeardAs.values()), 1 + random.nextInt(Verse.MOST_PEOPLE))));
    }

    private Locks locks() {
        IndexSet always = IndexSet.of(random.ints(random.nextInt(3), 0, STOPS));
        return new Locks(
                always, IndexSet.of(random.ints(random.nextInt(3), 0, STOPS)).minus(always));
    }

    private Registration registration() {
        return new Registration(
                IndexSet.of(random.ints(random.nextInt(STOPS), 0, STOPS)),
                IndexSet.of(random.ints(random.nextInt(3), 0, 3)),
                IndexSet.of(random.ints(random.nextInt(2), 0, 1)),
                IntStream.range(0, DIVISIONS)
                        .mapToObj(i -> oneOf(BoxPosition.values()))
                        .toList());
    }

    /** An edit that can be applied to a plan. */
    public Edit edit(Plan plan) {
        List<IntFunction<Edit>> possible = new ArrayList<>();
        possible.add(none -> new Edit.SetHeading(heading()));
        possible.add(none -> new Edit.InsertHymn(random.nextInt(plan.hymns().size() + 1), hymn()));
        if (!plan.hymns().isEmpty()) {
            possible.add(hymn -> new Edit.SetHymn(hymn, hymn()));
            possible.add(Edit.RemoveHymn::new);
            possible.add(seen -> new Edit.SetHymns(some(4, i -> hymn()), new VersePlace(seen, 0)));
            possible.add(hymn -> new Edit.SetVerses(hymn, random.nextInt(6), some(6, i -> verse())));
        }
        if (plan.hymns().size() > 1) {
            possible.add(hymn -> new Edit.SwapHymns(random.nextInt(plan.hymns().size() - 1)));
        }
        int hymn = plan.hymns().isEmpty() ? 0 : random.nextInt(plan.hymns().size());
        int verses =
                plan.hymns().isEmpty() ? 0 : plan.hymns().get(hymn).verses().size();
        if (verses > 0) {
            possible.add(here -> new Edit.SetVerse(here, random.nextInt(verses), verse()));
        }
        return possible.get(random.nextInt(possible.size())).apply(hymn);
    }
}
