package versewind.proposal;

import java.util.List;
import java.util.stream.IntStream;
import versewind.plan.Hymn;
import versewind.plan.Mood;
import versewind.plan.Occasion;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;

/**
 * The shape of a hymn and of the service: by how much the share of a verse is lifted over what its mood wants. A hymn
 * rises evenly from its first verse to its last, more on a festal day and not at all on a solemn one; a last verse that
 * is not gentle itself, of a hymn that is not, is lifted besides, under a descant too, for the people sing the tune;
 * a gentle verse leads from the first;
 * what only introduces stands a little lower; and the service grows from its first hymn to its last. A day of penance
 * is held back and does all this by half. An estimate; common practice, no source.
 */
final class Shape {

    private static final double LAST_VERSE = 0.03;

    /** How much less a playover has than what it introduces. */
    static final double INTRODUCTION = -0.05;

    private static final double LAST_HYMN = 0.02;

    /** What is left of the growth on a day that is held back. */
    private static final double HELD_BACK = 0.5;

    private Shape() {}

    /** The lift of a verse, in whole hundredths: the model knows nothing finer. */
    static double lift(Plan plan, VersePlace place) {
        return Math.rint(100 * exact(plan, place)) / 100;
    }

    private static double exact(Plan plan, VersePlace place) {
        Hymn hymn = plan.hymns().get(place.hymn());
        Verse verse = hymn.verses().get(place.verse());
        double lift = growth(occasion(plan)) * (share(hymn, place.verse()) - 0.5);
        if (!isLifted(plan, place)) {
            return isGentle(verse) ? Math.max(0, lift) : lift;
        }
        int hymns = plan.hymns().size();
        double ofService = LAST_HYMN * place.hymn() / Math.max(1, hymns - 1);
        double ofVerse = verse.kind() == VerseKind.LAST_VERSE && !isGentle(hymn) ? LAST_VERSE : 0;
        return lift + (ofService + ofVerse) * (occasion(plan).isHeldBack() ? HELD_BACK : 1);
    }

    /** Whether a verse has its share in the growth of the service: neither its words nor its singers are gentle. */
    static boolean isLifted(Plan plan, VersePlace place) {
        Verse verse = plan.hymns().get(place.hymn()).verses().get(place.verse());
        return !isGentle(verse) && growth(occasion(plan)) > 0;
    }

    private static boolean isGentle(Verse verse) {
        return verse.mood() == Mood.GENTLE || verse.singing() == Singing.GENTLE;
    }

    /** True for a hymn whose verses are gentle, most of them, by their words or their singers: it ends quietly too. */
    static boolean isGentle(Hymn hymn) {
        List<Verse> sung = hymn.verses().stream()
                .filter(verse -> verse.isSung() && verse.kind() != VerseKind.LAST_VERSE)
                .toList();
        return 2 * sung.stream().filter(Shape::isGentle).count() > sung.size();
    }

    /**
     * The mood of a verse: what the plan says; where it says plain, gentle for people who sing gently, and on a day of
     * penance or mourning.
     */
    static Mood mood(Plan plan, VersePlace place) {
        Verse verse = plan.hymns().get(place.hymn()).verses().get(place.verse());
        if (verse.mood() != Mood.PLAIN) {
            return verse.mood();
        }
        return occasion(plan).isHeldBack() || verse.singing() == Singing.GENTLE ? Mood.GENTLE : Mood.PLAIN;
    }

    /** True if the day is a feast. */
    static boolean isFestal(Plan plan) {
        return occasion(plan) == Occasion.FESTAL;
    }

    private static Occasion occasion(Plan plan) {
        return plan.heading().occasion();
    }

    /** By how much the share grows from the first verse of a hymn to its last. */
    private static double growth(Occasion occasion) {
        return switch (occasion) {
            case FESTAL -> 0.08;
            case JOYFUL, WEDDING -> 0.03;
            case EXPECTANT -> 0.025;
            case ORDINARY -> 0.02;
            case PENITENTIAL, FUNERAL -> 0.015;
            case SOLEMN -> 0;
        };
    }

    /** True for the first verse that is sung, where others follow. */
    static boolean opens(Plan plan, VersePlace place) {
        List<Integer> sung = sung(plan.hymns().get(place.hymn()));
        return sung.size() > 1 && sung.get(0) == place.verse();
    }

    private static List<Integer> sung(Hymn hymn) {
        return IntStream.range(0, hymn.verses().size())
                .filter(each -> hymn.verses().get(each).isSung())
                .boxed()
                .toList();
    }

    /** How far into the hymn a verse stands, 0 for the first that is sung, 1 for the last; a half for one alone. */
    private static double share(Hymn hymn, int verse) {
        List<Integer> sung = sung(hymn);
        int place = sung.indexOf(verse);
        return sung.size() < 2 || place < 0 ? 0.5 : (double) place / (sung.size() - 1);
    }
}
