package versewind.screen;

import java.util.List;

/** A form over the plan. */
final class FormView {

    private static final int NAME = 8;
    private static final int WIDTH = 76;

    private FormView() {}

    static void paint(Frame frame, State state, Panel.Form form) {
        Box box = Box.open(frame, state, form.title(), WIDTH, form.fields().size() + below(form));
        int typed = box.width() - NAME;
        for (int i = 0; i < form.fields().size(); i++) {
            Panel.Field field = form.fields().get(i);
            int y = box.y() + i;
            boolean here = i == form.at();
            frame.write(box.x(), y, field.name(), here ? Style.STRONG : Style.TEXT, box.x() + NAME);
            paintField(frame, field.line(), box.x() + NAME, y, typed, here);
        }
        int last = box.y() + box.height() - 1;
        boolean isWrong = !form.complaint().isEmpty();
        Panel.Field here = form.fields().get(form.at());
        String help = isWrong ? form.complaint() : here.name() + ": " + ServiceForm.hint(here);
        if (isWrong && form.purpose() instanceof FormAction.OrganLine) {
            String hint = here.name() + ": " + here.hint();
            frame.write(
                    box.x(), last - 3, Text.fit(hint, box.width(), state.marks().cut()), Style.FAINT);
        }
        List<String> lines = Text.wrapped(help, box.width()).stream().limit(2).toList();
        for (int i = 0; i < lines.size(); i++) {
            int y = last - lines.size() + i;
            frame.write(box.x(), y, lines.get(i), isWrong ? Style.BAD : Style.FAINT);
        }
        KeyRow.paint(frame, box.x(), last, box.end(), Command.KEEP, Command.DISCARD, Command.NEXT_FIELD);
    }

    /** Rows under the fields: what is said, and keys; a line of an organ has its hint besides what is wrong with it. */
    private static int below(Panel.Form form) {
        return form.purpose() instanceof FormAction.OrganLine ? 4 : 3;
    }

    /** What a field holds; a long text is moved so that the caret is seen. */
    static void paintField(Frame frame, TextLine line, int x, int y, int width, boolean here) {
        frame.write(x, y, " ".repeat(width), Style.FIELD);
        int before = Text.columns(line.text().substring(0, line.caret()));
        int skip = here ? Math.max(0, before - width + 1) : 0;
        int start = 0;
        while (start < line.text().length() && Text.columns(line.text().substring(0, start)) < skip) {
            start = line.text().offsetByCodePoints(start, 1);
        }
        frame.write(x, y, line.text().substring(start), Style.FIELD, x + width);
        if (here) {
            frame.caret(x + before - Text.columns(line.text().substring(0, start)), y);
        }
    }
}
