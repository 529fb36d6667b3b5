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
    private final List<String> words;

    ChoiceKind(List<E> values, Function<? super E, String> word) {
        super("Use ", "");
        this.values = values;
        this.words = values.stream().map(word).toList();
    }

    @Override
    public String limits() {
        int last = words.size() - 1;
        return String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }

    @Override
    E read(Found found, OrganNames names) throws Refused {
        String written = found.text();
        int value = words.indexOf(Keywords.today(written));
        if (value < 0) {
            Optional<String> near = Nearest.to(written, words);
            throw found.bad(
                    "unknown value " + Quoted.text(written),
                    near.isPresent() ? "Did you mean " + Quoted.text(near.get()) + "?" : remedy());
        }
        return values.get(value);
    }

    @Override
    Object plain(E value, OrganNames names) {
        return words.get(values.indexOf(value));
    }

    @Override
    Object shaped(String typed) {
        return of(typed, words).orElse(typed.strip());
    }

    @Override
    String hint() {
        return ": " + limits();
    }

    @Override
    public List<String> words() {
        return words;
    }

    /** The word that was typed, or the only one that begins so. */
    static Optional<String> of(String typed, List<String> words) {
        String plain = Keywords.today(typed.strip());
        List<String> begun = new ArrayList<>();
        for (String word : words) {
            if (word.equalsIgnoreCase(plain)) {
                return Optional.of(word);
            }
            if (!plain.isEmpty() && word.regionMatches(true, 0, plain, 0, plain.length())) {
                begun.add(word);
            }
        }
        return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
    }
}
