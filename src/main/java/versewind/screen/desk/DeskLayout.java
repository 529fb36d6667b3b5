package versewind.screen.desk;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where everything lies on the desk, from the size of the screen and the whole service, so that the eye finds it in the
 * same place for every verse; blocks move only where a name would be cut otherwise.
 *
 * @param dots sizes of the big letters, the largest first; none where there is no room for any
 * @param lettersRows rows of the big letters
 * @param who row of who sings
 * @param level row of how strong it will be
 * @param note row of the note; -1 where there is none
 * @param now first row of what is moved now
 * @param nowRows its rows
 * @param drawn first row of what is drawn
 * @param drawnRows its rows
 * @param next first row of what comes next
 * @param nextRows its rows
 * @param ladder first row of what makes it stronger and softer
 * @param louderRows rows of what makes it stronger; none where both lie beside each other
 * @param softerRows rows of what makes it softer
 */
record DeskLayout(
        List<BigLetters.Dot> dots,
        int lettersRows,
        int who,
        int level,
        int note,
        int now,
        int nowRows,
        int drawn,
        int drawnRows,
        int next,
        int nextRows,
        int ladder,
        int louderRows,
        int softerRows) {

    private static final int VERY_TALL = 54;
    private static final int TALL = 34;
    private static final int SMALL = 16;

    /** Rows of what is moved now that come before the rest. */
    private static final int FEW_MOVED = 5;

    private static final int LEAST_NEXT = 2;

    /** The blocks from which rows are taken first: what is moved now, what comes next, what is drawn. */
    private static final int[] TAKEN_FROM = {0, 4, 1, 2, 3};

    /**
     * The most rows that the blocks take in a verse of the service, every paragraph on lines of its own.
     *
     * @param moved what is moved from one verse to the next
     * @param drawn what is drawn, by full names
     * @param drawnBriefly what is drawn, in the fewest words
     */
    record Needs(int moved, int drawn, int drawnBriefly) {

        static final Needs NONE = new Needs(0, 0, 0);

        Needs most(Needs other) {
            return new Needs(
                    Math.max(moved, other.moved),
                    Math.max(drawn, other.drawn),
                    Math.max(drawnBriefly, other.drawnBriefly));
        }
    }

    /** Rows that are not given to a block yet. */
    private static final class Rows {

        private int left;

        Rows(int left) {
            this.left = left;
        }

        /** Gives a block that has some as many more as it wants and there are. */
        int raised(int has, int wanted) {
            int given = Math.max(0, Math.min(left, wanted - has));
            left -= given;
            return has + given;
        }
    }

    /**
     * The rows that the blocks of a verse need, each paragraph on lines of its own.
     *
     * @param now what is moved now
     * @param drawn what is drawn
     * @param louder what makes it stronger
     * @param softer what makes it softer
     * @param next what comes next
     * @param note whether there is a note
     */
    record Wanted(int now, int drawn, int louder, int softer, int next, boolean note) {}

    /** The same, with blank rows of one block, or that of the note, lent to another that would be cut. */
    DeskLayout lending(Wanted wanted) {
        int[] has = {nowRows, drawnRows, louderRows, softerRows, nextRows};
        int[] wants = {wanted.now, wanted.drawn, wanted.louder, wanted.softer, wanted.next};
        int blank = IntStream.range(0, has.length)
                .map(i -> Math.max(0, has[i] - wants[i]))
                .sum();
        int cut = IntStream.range(0, has.length)
                .map(i -> Math.max(0, wants[i] - has[i]))
                .sum();
        int ofNote = note >= 0 && note == now - 1 && !wanted.note && cut > blank ? 1 : 0;
        Rows lent = new Rows(blank + ofNote);
        int[] gets = IntStream.range(0, has.length)
                .map(i -> lent.raised(has[i], wants[i]))
                .toArray();
        Rows taken = new Rows(Math.max(0, blank - lent.left));
        for (int i : TAKEN_FROM) {
            gets[i] -= taken.raised(0, has[i] - wants[i]);
        }
        int drawnAt = drawn - ofNote + gets[0] - nowRows;
        int nextAt = next + drawnAt - drawn + gets[1] - drawnRows;
        return new DeskLayout(
                dots,
                lettersRows,
                who,
                level,
                note,
                now - ofNote,
                gets[0],
                drawnAt,
                gets[1],
                nextAt,
                gets[4],
                ladder + nextAt - next + gets[4] - nextRows,
                gets[2],
                gets[3]);
    }

    /**
     * The layout of so many rows for who hears it: no big letters, no blank rows, and each block has the rows that it
     * needs, what is moved now before what is drawn, that before what comes next and what makes it stronger and softer.
     *
     * @param now rows that what is moved now needs
     * @param drawn rows that what is drawn needs
     * @param drawnBriefly rows that it needs at least, where there is no room for all
     * @param next rows that what comes next needs
     * @param ladder rows that either of what makes it stronger and softer needs
     */
    static DeskLayout spoken(int rows, int now, int drawn, int drawnBriefly, int next, int ladder) {
        if (rows < SMALL) {
            return smallest(rows);
        }
        DeskLayout least = of(rows, Needs.NONE, List.of(), 0, 0);
        int free = rows - 1 - least.now;
        int nowRows = Math.min(now, free - 3);
        int wanted = now + drawn + next + 2 * ladder <= free ? drawn : Math.min(drawn, drawnBriefly);
        int drawnRows = Math.min(wanted, free - nowRows - 3);
        int nextRows = Math.min(next, free - nowRows - drawnRows - 2);
        int ladderRows = Math.min(ladder, (free - nowRows - drawnRows - nextRows) / 2);
        int drawnAt = least.now + nowRows;
        int nextAt = drawnAt + drawnRows;
        return new DeskLayout(
                List.of(),
                0,
                least.who,
                least.level,
                least.note,
                least.now,
                nowRows,
                drawnAt,
                drawnRows,
                nextAt,
                nextRows,
                nextAt + nextRows,
                ladderRows,
                ladderRows);
    }

    /**
     * The layout of so many rows, the same for every verse: first each block has what it cannot do without, then what
     * is moved now and all that is drawn in few words, then what comes next, the steps, and what is drawn in full; what
     * is left over is for what is moved by hand in place of a piston.
     */
    static DeskLayout of(int rows, Needs needs) {
        if (rows < SMALL) {
            return smallest(rows);
        }
        if (rows < TALL) {
            return of(rows, needs, List.of(new BigLetters.Dot(2, 1), new BigLetters.Dot(1, 1)), 1, 0);
        }
        List<BigLetters.Dot> large = List.of(
                new BigLetters.Dot(4, 2), new BigLetters.Dot(3, 2), new BigLetters.Dot(2, 2), new BigLetters.Dot(2, 1));
        return rows < VERY_TALL
                ? of(rows, needs, large, 2, 1)
                : of(
                        rows,
                        needs,
                        Stream.concat(Stream.of(new BigLetters.Dot(8, 4), new BigLetters.Dot(6, 3)), large.stream())
                                .toList(),
                        4,
                        1);
    }

    private static DeskLayout smallest(int rows) {
        int now = 3;
        int ladder = rows - 2;
        int nextRows = (ladder - now) * 2 / 5;
        int nowRows = ladder - now - nextRows;
        int next = now + nowRows;
        return new DeskLayout(List.of(), 0, 1, 2, -1, now, nowRows, next, 0, next, nextRows, ladder, 0, 0);
    }

    private static DeskLayout of(int rows, Needs needs, List<BigLetters.Dot> dots, int dotRows, int gap) {
        int letters = dots.isEmpty() ? 0 : dotRows * BigLetters.DOTS_HIGH;
        int who = 1 + letters + gap;
        int now = who + 3 + gap;
        Rows free = new Rows(rows - 1 - now - 3 * gap - 4 - LEAST_NEXT);
        int nowRows = free.raised(1, Math.min(FEW_MOVED, needs.moved));
        int drawnRows = free.raised(1, needs.drawnBriefly);
        int nextRows = free.raised(LEAST_NEXT, needs.moved + 1);
        nowRows = free.raised(nowRows, needs.moved);
        int ladderRows = free.raised(2, 4) / 2;
        drawnRows = free.raised(drawnRows, needs.drawn);
        nowRows = free.raised(nowRows, rows);
        int drawn = now + nowRows + gap;
        int next = drawn + drawnRows + gap;
        int ladder = next + nextRows + gap;
        return new DeskLayout(
                dots,
                letters,
                who,
                who + 1,
                who + 2,
                now,
                nowRows,
                drawn,
                drawnRows,
                next,
                nextRows,
                ladder,
                ladderRows,
                ladderRows);
    }
}
