package versewind.screen;

/** A question over the plan. */
final class QuestionView {

    private static final int WIDTH = 76;

    private QuestionView() {}

    static void paint(Frame frame, State state, Panel.Question question) {
        Box box = Box.open(frame, state, "Versewind", WIDTH, question.answers().size() + 2);
        frame.write(
                box.x(),
                box.y(),
                Text.fit(question.text(), box.width(), state.marks().cut()),
                Style.STRONG);
        for (int i = 0; i < question.answers().size(); i++) {
            Panel.Answer answer = question.answers().get(i);
            int y = box.y() + 2 + i;
            frame.write(box.x() + 2, y, answer.key().name(), Style.KEY);
            frame.write(box.x() + 7, y, answer.words(), Style.TEXT);
        }
    }
}
