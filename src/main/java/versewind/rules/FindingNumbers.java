package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import versewind.sound.Estimate;
import versewind.sound.Margin;

/** The numbers of an estimate on which a finding rests. */
final class FindingNumbers {
    private FindingNumbers() {}

    /** The margin, and the levels that it weighs. */
    static List<Figure> balance(Estimate estimate) {
        List<Figure> figures = new ArrayList<>();
        Margin margin = estimate.margin();
        add(figures, "margin", margin.db(), margin.plusMinusDb().orElse(0));
        add(figures, "organ", estimate.organDba(), estimate.plusMinus().organDb());
        add(figures, "singing", estimate.singersDba(), estimate.plusMinus().singersDb());
        return figures;
    }

    /** A level or a difference. */
    static Figure db(String name, double db) {
        return new Figure(name, db, Figure.Unit.DB);
    }

    static Figure count(String name, int count) {
        return new Figure(name, count, Figure.Unit.COUNT);
    }

    private static void add(List<Figure> figures, String name, OptionalDouble db, double plusMinusDb) {
        db.ifPresent(value -> figures.add(new Figure(name, value, Figure.Unit.DB, OptionalDouble.of(plusMinusDb))));
    }

    /** "probably " where another verdict may well be true. */
    static String probably(Estimate estimate) {
        return estimate.margin().isSure() ? "" : "probably ";
    }

    /** A difference as it is said: "about 4 dB". */
    static String about(double db) {
        return "about " + Math.round(Math.abs(db)) + " dB";
    }
}
