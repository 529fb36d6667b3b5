package versewind.sound;

/**
 * How much louder one verse is than another, in the nave.
 *
 * @param db the difference of the levels in dB(A)
 * @param plusMinusDb its standard deviation in dB: far less than that of either level, for both come from one organ
 */
public record LevelStep(double db, double plusMinusDb) {}
