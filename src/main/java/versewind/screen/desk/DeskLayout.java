package versewind.screen.desk;

import java.util.List;

/**
 * Where everything lies on the desk, from the size of the screen alone, so that the eye finds it in the same place for
 * every verse.
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
 * @param ladderRows one, for both beside each other, or more for each
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
        int ladderRows) {

    private static final List<BigLetters.Dot> LARGE = List.of(
            new BigLetters.Dot(4, 2), new BigLetters.Dot(3, 2), new BigLetters.Dot(2, 2), new BigLetters.Dot(2, 1));
    private static final List<BigLetters.Dot> MIDDLING = List.of(new BigLetters.Dot(2, 1), new BigLetters.Dot(1, 1));

    private static final int TALL = 34;
    private static final int SMALL = 16;

    /** With so many rows more for what is moved now, of those that what is drawn leaves blank. */
    DeskLayout withNow(int more) {
        return new DeskLayout(
                dots,
                lettersRows,
                who,
                level,
                note,
                now,
                nowRows + more,
                drawn + more,
                drawnRows - more,
                next,
                nextRows,
                ladder,
                ladderRows);
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
        DeskLayout least = of(rows, drawn, List.of(), 0, 0);
        if (rows < SMALL) {
            return least;
        }
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
                ladderRows);
    }

    /** The layout of so many rows, where what is drawn takes so many of them at most. */
    static DeskLayout of(int rows, int drawnWanted) {
        int letters = rows >= TALL ? 2 * BigLetters.DOTS_HIGH : rows >= SMALL ? BigLetters.DOTS_HIGH : 0;
        List<BigLetters.Dot> dots = rows >= TALL ? LARGE : rows >= SMALL ? MIDDLING : List.of();
        return of(rows, drawnWanted, dots, letters, rows >= TALL ? 1 : 0);
    }

    private static DeskLayout of(int rows, int drawnWanted, List<BigLetters.Dot> dots, int letters, int gap) {
        int noted = rows >= SMALL ? 1 : 0;
        int ladderRows = rows >= TALL ? 2 : 1;
        int ladders = rows >= SMALL ? 2 * ladderRows : 1;
        int who = 1 + letters + gap;
        int now = who + 2 + noted + gap;
        int ladder = rows - 1 - ladders;
        int free = ladder - gap - now;
        int drawnRows = rows >= SMALL ? Math.max(2, Math.min(drawnWanted, (free - 2 * gap) / 2)) : 0;
        int nextRows = rows >= SMALL ? Math.max(2, (free - drawnRows - 2 * gap) * 2 / 5) : free * 2 / 5;
        int nowRows = free - drawnRows - nextRows - 2 * gap;
        int drawn = now + nowRows + gap;
        int next = drawn + drawnRows + (drawnRows > 0 ? gap : 0);
        return new DeskLayout(
                dots,
                letters,
                who,
                who + 1,
                noted > 0 ? who + 2 : -1,
                now,
                nowRows,
                drawn,
                drawnRows,
                next,
                nextRows,
                ladder,
                ladders > 1 ? ladderRows : 0);
    }
}
