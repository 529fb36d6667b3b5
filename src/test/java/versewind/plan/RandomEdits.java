package versewind.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/** Plans and changes of them at random from a seed, for an organ of two manuals and pedal with twelve stops. */
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
        return new ServiceHeading(text(), date, 1 + random.nextInt(Verse.MOST_PEOPLE), text())
                .withPlayer(oneOf(Player.values()))
                .withInTen(1 + random.nextInt(10));
    }

    private Hymn hymn() {
        return new Hymn(text(), text(), text(), text(), text(), sometimes(300), text(), some(6, i -> verse()));
    }

    private Verse verse() {
        return new Verse(
                oneOf(VerseKind.values()),
                text(),
                random.nextBoolean(),
                new Sung(oneOf(SungBy.values()), oneOf(Singing.values()), sometimes(500), Share.USUAL),
                new Played(
                        new HandsAndFeet(oneOf(HandsAndFeet.Layout.values()), random.nextInt(2), random.nextInt(2)),
                        registration()),
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
                always,
                IndexSet.of(random.ints(random.nextInt(3), 0, STOPS)).minus(always),
                oneOf(Locks.Kept.values()));
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

    /** A plan after one change of it. */
    public Plan changed(Plan plan) {
        int hymns = plan.hymns().size();
        if (hymns == 0 || random.nextInt(6) == 0) {
            return random.nextBoolean()
                    ? plan.withHeading(heading())
                    : plan.inserting(random.nextInt(hymns + 1), hymn());
        }
        int hymn = random.nextInt(hymns);
        int verses = plan.hymns().get(hymn).verses().size();
        return switch (random.nextInt(5)) {
            case 0 -> plan.removing(hymn);
            case 1 -> plan.withHymn(hymn, hymn());
            case 2 -> hymns > 1 ? plan.swapping(random.nextInt(hymns - 1)) : plan;
            case 3 -> plan.withVerses(hymn, some(6, i -> verse()));
            default -> verses == 0 ? plan : plan.withVerse(new VersePlace(hymn, random.nextInt(verses)), verse());
        };
    }
}
