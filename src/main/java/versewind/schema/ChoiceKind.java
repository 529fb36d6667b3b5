package versewind.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import versewind.organ.Nearest;
import versewind.organ.Quoted;
import versewind.plan.Keywords;

/** One of some words. */
final class ChoiceKind<E> extends Kind<E> {
    private final List<E> values;
    private final Function<E, String> word;

    ChoiceKind(List<E> values, Function<E, String> word) {
        super("Use ", "");
        this.values = values;
        this.word = word;
    }

    @Override
    public String limits() {
        List<String> words = words();
        int last = words.size() - 1;
        return String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }

    @Override
    E read(Found found, OrganNames names) throws Refused {
        String written = found.text();
        for (E value : values) {
            if (word.apply(value).equals(Keywords.today(written))) {
                return value;
            }
        }
        Optional<String> near = Nearest.to(written, words());
        throw found.bad(
                "unknown value " + Quoted.text(written),
                near.isPresent() ? "Did you mean " + Quoted.text(near.get()) + "?" : remedy());
    }

    @Override
    Object plain(E value, OrganNames names) {
        return word.apply(value);
    }

    @Override
    Object shaped(String typed) {
        return of(typed, values, word).map(word).orElse(typed.strip());
    }

    @Override
    public List<String> words() {
        return values.stream().map(word).toList();
    }

    /** The value of a word, or of the only word that begins as it was typed. */
    static <E> Optional<E> of(String typed, List<E> values, Function<E, String> word) {
        String plain = Keywords.today(typed.strip());
        List<E> begun = new ArrayList<>();
        for (E value : values) {
            if (word.apply(value).equalsIgnoreCase(plain)) {
                return Optional.of(value);
            }
            if (!plain.isEmpty() && word.apply(value).regionMatches(true, 0, plain, 0, plain.length())) {
                begun.add(value);
            }
        }
        return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
    }
}
