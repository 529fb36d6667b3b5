package versewind.sound;

/**
 * How far a level may well be off, one standard deviation in dB: two times in three the true level lies no farther from
 * the one stated, nineteen times in twenty no farther than two of it.
 *
 * @param organDb of the organ in the nave; 0 when it is silent
 * @param organAmongSingersDb of the organ among the singers; 0 when it is silent
 * @param singersDb of the singing; 0 when nobody sings
 */
public record StdDevs(double organDb, double organAmongSingersDb, double singersDb) {}
