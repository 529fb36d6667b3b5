package versewind.screen.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import versewind.screen.state.Chooser;
import versewind.screen.state.FormBox;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.sheet.Sheet;
import versewind.sheet.SheetHtml;
import versewind.sheet.SheetOptions;

/** Asks which sheet is written, and where to. */
final class SheetForm {

    private SheetForm() {}

    /** The sheets there are. */
    @SuppressWarnings("ImmutableEnumChecker") // a value
    private enum Wanted {
        PAGE("a page for each hymn, A4 or A5", SheetOptions.USUAL),
        LARGE("large type, on as many pages as it takes", SheetOptions.USUAL.with(SheetOptions.Type.LARGE)),
        CHANGES_ONLY(
                "after a hymn's first verse, only the changes", SheetOptions.USUAL.with(SheetOptions.Content.CHANGES)),
        WITH_LADDER("with steps stronger and softer", SheetOptions.USUAL.with(SheetOptions.Steps.SHOWN)),
        DEPUTY("begins with the organ and what to set", SheetOptions.USUAL.with(SheetOptions.Reader.DEPUTY)),
        TEXT("plain text, 80 columns", SheetOptions.USUAL);

        private final String words;
        private final SheetOptions options;

        Wanted(String words, SheetOptions options) {
            this.words = words;
            this.options = options;
        }

        String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }

        Chooser.Row row() {
            return new Chooser.Row(name(), word(), words);
        }
    }

    /** The first question: which sheet. */
    static State open(State state, PlanEdit work) {
        List<Chooser.Row> rows = Arrays.stream(Wanted.values()).map(Wanted::row).toList();
        return state.open(Chooser.of(
                "Write which sheet?", rows, (id, chosen) -> chosen.close().open(where(work, Wanted.valueOf(id)))));
    }

    /** The second: where to. */
    private static FormBox where(PlanEdit work, Wanted wanted) {
        String ending =
                switch (wanted) {
                    case PAGE, LARGE, CHANGES_ONLY, WITH_LADDER, DEPUTY -> ".html";
                    case TEXT -> ".txt";
                };
        FormBox.Field file = FormBox.Field.of(
                "File",
                work.id() + ending,
                "a name, to be beside the plan, or a whole path such as /home/anna/sheet" + ending);
        return FormBox.of("Write the sheet: " + wanted.word(), List.of(file), (form, closed) -> {
            if (form.isBlank(0)) {
                throw new FormBox.Wrong(0, "Enter the name of a file, such as " + work.id() + ending + ".");
            }
            return closed.onWork(now -> written(closed, now, wanted, form.text(0)));
        });
    }

    private static State written(State state, PlanEdit work, Wanted wanted, String file) {
        Sheet sheet = Sheet.of(work.plan(), work.sound(), wanted.options);
        return switch (wanted) {
            case PAGE, LARGE, CHANGES_ONLY, WITH_LADDER, DEPUTY ->
                state.wants(effects -> effects.writeSheet(file, SheetHtml.of(sheet), SheetHtml.MADE_BY));
            case TEXT ->
                state.wants(effects -> effects.writeSheet(
                        file, SheetText.of(sheet, UnaryOperator.identity(), SheetText.COLUMNS), SheetText.MADE_BY));
        };
    }
}
