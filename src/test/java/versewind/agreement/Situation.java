package versewind.agreement;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import versewind.organ.Family;
import versewind.organ.Instrument;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Hymn;
import versewind.plan.Locks;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Occasion;
import versewind.plan.Plan;
import versewind.plan.Player;
import versewind.plan.ServiceHeading;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.Verses;

/** Thirteen services for which a plan is made: who comes, how they sing, and what the plan fixes. */
enum Situation {
    FIFTH_OF_THE_SEATS(Day.ORDINARY, 0.2) {
        @Override
        List<Hymn> hymns(Maker make) {
            return List.of(make.hymn(3, UnaryOperator.identity()));
        }
    },
    HALF_OF_THE_SEATS(Day.ORDINARY, 0.5) {
        @Override
        List<Hymn> hymns(Maker make) {
            return List.of(make.hymn(4, UnaryOperator.identity()), make.hymn(2, make::locked));
        }
    },
    ALL_SEATS(Day.ORDINARY, 1.0) {
        @Override
        List<Hymn> hymns(Maker make) {
            return List.of(make.hymn(4, UnaryOperator.identity()));
        }
    },
    FESTIVAL(Day.EASTER, 0.9) {
        @Override
        List<Hymn> hymns(Maker make) {
            UnaryOperator<Verse> festal = verse -> strong(verse).withMood(Mood.FESTAL);
            return List.of(make.hymn(4, Situation::strong), make.hymn(3, festal));
        }
    },
    PENITENTIAL(Day.ASH_WEDNESDAY, 0.4) {
        @Override
        List<Hymn> hymns(Maker make) {
            return List.of(make.hymn(4, Situation::gentle));
        }
    },
    PACKED_CHRISTMAS(Day.CHRISTMAS, 1.1) {
        @Override
        List<Hymn> hymns(Maker make) {
            return List.of(make.hymn(4, verse -> verse.withSinging(Singing.FULL_VOICE)));
        }
    },
    CHILDRENS_CHOIR(Day.ORDINARY, 0.4) {
        @Override
        List<Hymn> hymns(Maker make) {
            UnaryOperator<Verse> children = verse -> verse.withMode(Mode.SMALL_CHOIR)
                    .withPeople(OptionalInt.of(12))
                    .withSinging(Singing.GENTLE);
            return List.of(make.hymn(3, children));
        }
    },
    SOLOIST_ON_VERSE_2(Day.ORDINARY, 0.5) {
        @Override
        List<Hymn> hymns(Maker make) {
            return List.of(
                    make.changed(make.hymn(3, UnaryOperator.identity()), 2, verse -> verse.withMode(Mode.SOLO_VOICE)
                            .withSinging(Singing.STRONG)));
        }
    },
    SOLOED_INTRODUCTION(Day.ORDINARY, 0.5) {
        @Override
        List<Hymn> hymns(Maker make) {
            Hymn hymn = make.hymn(3, UnaryOperator.identity());
            return List.of(
                    make.isOfOneManual() ? hymn : make.changed(hymn, 0, verse -> verse.withMode(Mode.MELODY_SOLOED)));
        }
    },
    WEDDING_WITH_FEW_SINGING(Day.ORDINARY, 0.6) {
        @Override
        List<Hymn> hymns(Maker make) {
            return List.of(make.hymn(3, UnaryOperator.identity()));
        }

        @Override
        ServiceHeading heading(ServiceHeading usual) {
            return usual.withGiven(Optional.of(Occasion.WEDDING)).withInTen(3);
        }
    },
    FUNERAL(Day.ORDINARY, 0.4) {
        @Override
        List<Hymn> hymns(Maker make) {
            return List.of(make.changed(make.hymn(3, Situation::gentle), 1, Situation::handsOnly));
        }

        @Override
        ServiceHeading heading(ServiceHeading usual) {
            return usual.withGiven(Optional.of(Occasion.FUNERAL)).withInTen(4);
        }
    },
    DESCANT_ON_THE_LAST_VERSE(Day.EASTER, 0.7) {
        @Override
        List<Hymn> hymns(Maker make) {
            return List.of(make.changed(make.hymn(3, Situation::strong), 3, verse -> verse.withSungBy(SungBy.DESCANT)));
        }
    },
    MANUALS_ONLY(Day.ORDINARY, 0.4) {
        @Override
        List<Hymn> hymns(Maker make) {
            return List.of(make.hymn(3, UnaryOperator.identity()));
        }

        @Override
        ServiceHeading heading(ServiceHeading usual) {
            return usual.withPlayer(Player.MANUALS_ONLY);
        }
    };

    private final Day day;
    private final double share;

    /** @param share of the seats that is taken */
    Situation(Day day, double share) {
        this.day = day;
        this.share = share;
    }

    private enum Day {
        ORDINARY(LocalDate.of(2026, 7, 12)),
        EASTER(LocalDate.of(2027, 3, 28)),
        ASH_WEDNESDAY(LocalDate.of(2027, 2, 10)),
        CHRISTMAS(LocalDate.of(2026, 12, 25));

        private final LocalDate date;

        Day(LocalDate date) {
            this.date = date;
        }
    }

    /** In words: "packed christmas". */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The hymns with nothing drawn. */
    abstract List<Hymn> hymns(Maker make);

    /** The plan on an organ, with nothing drawn. */
    Plan plan(Instrument organ) {
        Maker make = new Maker(organ);
        ServiceHeading usual = new ServiceHeading(word(), Optional.of(day.date), make.people(share), "");
        return new Plan(heading(usual), "organ", hymns(make));
    }

    ServiceHeading heading(ServiceHeading usual) {
        return usual;
    }

    private static Verse strong(Verse verse) {
        return verse.withSinging(Singing.STRONG);
    }

    /** A verse that the plan has played on the manuals and the boxes as they stand, whatever else is proposed. */
    private static Verse handsOnly(Verse verse) {
        return verse.withHands(verse.hands().withLayout(Layout.MANUALS_ONLY))
                .withLocks(verse.locks().keeping(Locks.Kept.HANDS_FEET_AND_BOXES));
    }

    private static Verse gentle(Verse verse) {
        return verse.withSinging(Singing.GENTLE).withMood(Mood.GENTLE);
    }

    /** Makes hymns for one organ. */
    record Maker(Instrument organ) {

        /** One manual cannot play a melody over its accompaniment. */
        boolean isOfOneManual() {
            return organ.manualDivisions().size() == 1;
        }

        /** The first principal always, the last stop of the main manual never: an organist's own wish. */
        Verse locked(Verse verse) {
            int main = organ.mainDivision();
            int[] stops = IntStream.range(0, organ.stops().size())
                    .filter(stop -> organ.stops().get(stop).division() == main)
                    .toArray();
            int principal = IntStream.of(stops)
                    .filter(stop -> organ.stops().get(stop).stop().family() == Family.PRINCIPAL)
                    .findFirst()
                    .orElse(stops[0]);
            return verse.withLocks(Locks.NONE.withAlways(principal).withNever(stops[stops.length - 1]));
        }

        int people(double share) {
            return Math.max(8, (int) Math.round(share * organ.room().seats()));
        }

        /** An introduction and so many verses, all of them changed alike. */
        Hymn hymn(int sung, UnaryOperator<Verse> change) {
            List<Verse> verses = Verses.ofNewHymn(organ, sung).stream()
                    .map(this::playable)
                    .map(change)
                    .toList();
            return new Hymn("", "A hymn", "", "", "", OptionalInt.of(96), "", verses);
        }

        private Verse playable(Verse verse) {
            return organ.pedalDivision().isPresent()
                    ? verse
                    : verse.withHands(verse.hands().withLayout(Layout.MANUALS_ONLY));
        }

        /** With one verse changed; 0 is the introduction. */
        Hymn changed(Hymn hymn, int index, UnaryOperator<Verse> change) {
            List<Verse> verses = new ArrayList<>(hymn.verses());
            verses.set(index, change.apply(verses.get(index)));
            return hymn.withVerses(verses);
        }
    }
}
