package versewind.stoplist;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A published stop list as it was read.
 *
 * @param divisions in the order of the list, each with one stop at least
 * @param couplers each once, in the order of the list
 * @param tremulants in the order of the list
 * @param pistons its pistons
 * @param title what the list calls the organ; "" where it does not
 * @param notUnderstood every line, or part of one, that nothing was made of
 */
public record StopList(
        List<ReadDivision> divisions,
        List<ReadCoupler> couplers,
        List<ReadTremulant> tremulants,
        ReadPistons pistons,
        String title,
        List<Unread> notUnderstood) {

    private static final int LONGEST = 500_000;
    private static final int MOST_LINES = 5_000;
    private static final int SHOWN = 60;

    /** One remark among so many lines. */
    private static final int MOST_REMARKS = 10;

    public StopList {
        divisions = List.copyOf(divisions);
        couplers = List.copyOf(couplers);
        tremulants = List.copyOf(tremulants);
        notUnderstood = List.copyOf(notUnderstood);
    }

    /**
     * Reads a stop list.
     *
     * <p>Checked against: {@code StopListTest}, the lists of {@code src/test/resources/stoplists}.
     *
     * @param text free text as it is published, in English, German, French, Dutch, Italian, Spanish, Portuguese,
     *     Catalan, Polish, Czech, Hungarian, Finnish, a Scandinavian language or a mixture of them
     */
    public static StopList read(String text) {
        Map<Boolean, List<PageText.Numbered>> all =
                PageText.lines(text).stream().collect(Collectors.partitioningBy(line -> PageText.isRead(line.text())));
        List<PageText.Numbered> sentences = Prose.spelledOut(all.get(true));
        List<PageText.Numbered> rows = PastedCells.joined(BrokenLines.joined(CouplerTable.spelledOut(
                UnitRanks.spelledOut(NumberedStops.spelledOut(BoxMarks.spelledOut(sentences))))));
        LineReader.Readings readings = new LineReader.Readings(
                ListStyle.of(rows.stream().map(PageText.Numbered::text).toList()));
        List<PageText.Numbered> lines = CellColumns.sorted(rows, readings);
        ParsedLines parsed = LineReader.of(Grid.rows(lines, readings), readings);
        if (lines != rows) {
            parsed.leaveOut(
                    lines.get(0).number(),
                    lines.get(0).text(),
                    "cells of divisions side by side, told apart by the order of their pitches; please check",
                    Unread.Weight.DOUBT);
        }
        if (sentences != all.get(true)) {
            parsed.leaveOut(
                    sentences.get(0).number(),
                    shown(sentences.get(0).text()),
                    "sentences, from which divisions and stops were picked; please check",
                    Unread.Weight.DOUBT);
        }
        if (OwnData.isOne(text)) {
            parsed.leaveOut(
                    1,
                    shown(text.lines().findFirst().orElse("").strip()),
                    "data, whose fields were told apart by what they hold; please check",
                    Unread.Weight.DOUBT);
        }
        all.get(false)
                .forEach(line -> parsed.leaveOut(
                        line.number(),
                        shown(line.text()),
                        "longer than " + PageText.LONGEST_LINE + " characters; break it into lines",
                        Unread.Weight.DOUBT));
        return new StopListBuilder(parsed, readings.style().language()).stopList();
    }

    private static String shown(String line) {
        return line.substring(0, Math.min(SHOWN, line.length()));
    }

    /** True if a tenth of the lines were taken for remarks. */
    private boolean isManyRemarks() {
        long remarks = notUnderstood.stream()
                .filter(unread -> unread.why().equals(Unread.REMARK))
                .map(Unread::line)
                .distinct()
                .count();
        return remarks * MOST_REMARKS > stops().count() + couplers.size() + remarks;
    }

    /** Why a text is not read, where it is far too long for a stop list. */
    public static Optional<String> refusal(String text) {
        boolean isLong = text.length() > LONGEST
                || text.lines()
                                .filter(line -> !line.isBlank())
                                .limit(MOST_LINES + 1L)
                                .count()
                        > MOST_LINES;
        boolean isBroken = !isLong && OwnData.isOne(text) && !OwnData.isWhole(text);
        if (isBroken) {
            return Optional.of("This looks like data rather than a list for people, and its brackets do not match. Copy"
                    + " all of it, or paste the list as it is printed: a division, and below it a stop a line with its"
                    + " pitch.");
        }
        return isLong
                ? Optional.of("This is longer than " + LONGEST + " characters or " + MOST_LINES
                        + " lines. Delete what is not part of the stop list.")
                : Optional.empty();
    }

    /** All stops, division after division. */
    public Stream<ReadStop> stops() {
        return divisions.stream().flatMap(division -> division.stops().stream());
    }

    /** The lines that may hold a part of the organ and were not understood. */
    public List<Unread> doubts() {
        return notUnderstood.stream()
                .filter(unread -> unread.weight() == Unread.Weight.DOUBT)
                .toList();
    }

    /**
     * True if anything wants a second look: a line in doubt, a family that is not sure, a pitch that is
     * supposed, a coupler without divisions.
     */
    public boolean wantsAttention() {
        return divisions.stream().allMatch(ReadDivision::isPedal)
                || isManyRemarks()
                || !doubts().isEmpty()
                || stops().anyMatch(stop -> !stop.how().isSure() || stop.supposed())
                || couplers.stream().anyMatch(coupler -> !coupler.isWhole());
    }
}
