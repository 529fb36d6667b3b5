package versewind.sound;

/**
 * Where a margin may well lie, in dB: between low and high two times in three (68 %), between lowest and highest nineteen
 * times in twenty (95 %). A margin cannot pass 15 dB either way, so that the two sides need not be alike.
 *
 * @param lowestDb at the edge of 95 %
 * @param lowDb at the edge of 68 %
 * @param highDb at the edge of 68 %
 * @param highestDb at the edge of 95 %
 */
public record MarginBands(double lowestDb, double lowDb, double highDb, double highestDb) {

    /** Half the width of the 68 % band in dB: what stands after "plus or minus". */
    public double plusMinusDb() {
        return (highDb - lowDb) / 2;
    }
}
