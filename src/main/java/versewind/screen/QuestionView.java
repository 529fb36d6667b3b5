package versewind.screen;

import java.util.List;

/** A question over the plan. */
final class QuestionView {

    private static final int WIDTH = 76;

    private QuestionView() {}

    static void paint(Frame frame, State state, Panel.Question question) {
        List<String> lines = Text.wrapped(question.text(), Math.min(WIDTH, frame.width() - 4));
        int rows = lines.size() + 1 + question.answers().size();
        Box box = Box.open(frame, state, "Versewind", WIDTH, rows);
        for (int i = 0; i < lines.size(); i++) {
            frame.write(box.x(), box.y() + i, lines.get(i), Style.STRONG);
        }
        for (int i = 0; i < question.answers().size(); i++) {
            Panel.Answer answer = question.answers().get(i);
            int y = box.y() + lines.size() + 1 + i;
            frame.write(box.x() + 2, y, answer.key().name(), Style.KEY);
            frame.write(box.x() + 9, y, answer.words(), Style.TEXT);
        }
    }
}
