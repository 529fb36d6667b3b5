package versewind.screen.state;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.stoplist.Lexicon;

/**
 * A question over another screen.
 *
 * @param text the question
 * @param answers the answers and their keys
 */
public record Question(String text, List<Answer> answers) implements Screen {

    private static final int WIDTH = 76;

    public Question {
        answers = List.copyOf(answers);
    }

    /**
     * An answer.
     *
     * @param key the key that gives it
     * @param words what it means
     * @param then what is done, in the state without the question
     */
    public record Answer(Key key, String words, UnaryOperator<State> then) {

        /** Back to where the question came from. */
        public static final Answer STAY = new Answer("Esc", "stay here", closed -> closed);

        public Answer(String key, String words, UnaryOperator<State> then) {
            this(Key.all(key).get(0), words, then);
        }
    }

    /** Does something with so many verses; asks first if they are more than one. */
    public static State before(int verses, State state, String text, UnaryOperator<State> then) {
        return verses <= 1
                ? then.apply(state)
                : state.open(new Question(text, List.of(new Answer("Enter", "yes", then), Answer.STAY)));
    }

    /** What a stop is, in a sentence. */
    public static State ofStop(State state, String label, String name) {
        String said = Lexicon.describe(name).orElse("No description of this name.");
        return state.open(new Question(
                label + ". " + said,
                List.of(new Answer("Enter", "OK", closed -> closed), new Answer("Esc", "close", closed -> closed))));
    }

    /** The answers; where there is only one, Esc gives it too. */
    @Override
    public KeyTable<?> keys() {
        KeyTable<Question> keys = KeyTable.under("Answers");
        answers.forEach(answer -> answer(keys, answer.key().name(), answer));
        if (answers.size() == 1 && !answers.get(0).key().equals(Answer.STAY.key())) {
            answer(keys, Answer.STAY.key().name(), answers.get(0));
        }
        return keys;
    }

    private static void answer(KeyTable<Question> keys, String key, Answer answer) {
        keys.key(key, answer.words(), (asked, state) -> answer.then().apply(state.close()));
    }

    @Override
    public String smallWords(State state) {
        return " Here it is asked: " + text;
    }

    @Override
    public String spoken(State before, State now) {
        return text + " "
                + answers.stream()
                        .map(answer -> answer.key().name() + ": " + answer.words())
                        .collect(Collectors.joining("; "))
                + ".";
    }

    @Override
    public State typed(Key key, State state) {
        return state.says("Press "
                + answers.stream().map(answer -> answer.key().name()).collect(Collectors.joining(" or ")) + ".");
    }

    @Override
    public void paint(Frame frame, State state) {
        List<String> lines = Text.wrapped(text, Math.min(WIDTH, frame.width() - 4));
        Box box = Box.open(frame, "Versewind", WIDTH, lines.size() + 1 + answers.size());
        box.write(frame, box.y(), lines, Style.STRONG);
        frame.caret(box.x(), box.y());
        int y = box.y() + lines.size() + 1;
        for (Answer answer : answers) {
            frame.write(box.x() + 2, y, answer.key().name(), Style.KEY);
            frame.write(box.x() + 9, y++, answer.words(), Style.TEXT);
        }
    }
}
