package versewind.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Some durations of one thing in ms. */
final class Times {

    private final List<Double> all = new ArrayList<>();

    void add(double ms) {
        all.add(ms);
    }

    double median() {
        return quantile(0.5);
    }

    double quantile(double part) {
        List<Double> sorted = new ArrayList<>(all);
        Collections.sort(sorted);
        return sorted.get(Math.min(sorted.size() - 1, (int) (part * sorted.size())));
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, median() < 10 ? "%.2f ms" : "%.0f ms", median());
    }
}
