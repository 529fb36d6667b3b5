package versewind.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import versewind.store.BadFile;

/** Times of whole processes, each measured in turn with HelloWorld, and their memory. */
final class StartRows {

    private static final int TIMES = 15;
    private static final int MANY_PLANS = 5_000;
    private static final int FEW_PLANS = 5;
    private static final int KEYS = 1_000;
    private static final int EDITORS = 20;

    /** Stands at the end of the last row of the plan. */
    private static final String PAINTED = "help";

    private final Programs programs;
    private final ResultTable table;

    StartRows(Programs programs, ResultTable table) {
        this.programs = programs;
        this.table = table;
    }

    void print() throws IOException, InterruptedException, BadFile {
        first();
        editor("start, 26 stops, 4 hymns: painted with its levels", "at most 1.6 x", Programs.SMALL);
        editor("start, 102 stops, 10 hymns, 60 verses", "at most 2.0 x", Programs.LARGE);
        process("versewind --version", "at most 1.3 x", "--version");
        process("versewind --help", "at most 1.8 x", "--help");
        process("versewind assess, 26 stops, 4 hymns", "at most 3 x", "assess", Programs.SMALL);
        library();
        memory();
    }

    /** Measures something in turn with HelloWorld. */
    private void ratio(String what, String goal, Once ours) throws IOException, InterruptedException {
        Times reference = new Times();
        Times floor = new Times();
        Times own = new Times();
        for (int i = 0; i < TIMES; i++) {
            reference.add(end(programs.helloWorld()));
            floor.add(end(programs.floor()));
            own.add(ours.ms());
        }
        table.ratio(what, reference, own, goal, floor);
    }

    @FunctionalInterface
    private interface Once {
        double ms() throws IOException, InterruptedException;
    }

    private static double end(Session session) throws IOException, InterruptedException {
        try (session) {
            return session.msUntilEnd();
        }
    }

    private static double until(Session session, String painted) throws IOException {
        try (session) {
            return session.msUntil(painted);
        }
    }

    private void editor(String what, String goal, String plan) throws IOException, InterruptedException {
        until(programs.editor(plan), PAINTED);
        ratio(what, goal, () -> until(programs.editor(plan), PAINTED));
    }

    /** Before anything else, so that no cache of the user is there yet. */
    private void first() throws IOException, InterruptedException {
        double ours = until(programs.editor(Programs.SMALL), PAINTED);
        double reference = end(programs.helloWorld());
        table.row(
                "start, the first one after the build",
                String.format("HelloWorld %.0f ms", reference),
                String.format("%.0f ms = %.2f x", ours, ours / reference),
                "at most 2.0 x",
                "as below");
    }

    private void process(String what, String goal, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(programs.launcher()));
        for (String argument : arguments) {
            command.add(
                    argument.endsWith(".json")
                            ? programs.scratch().resolve(argument).toString()
                            : argument);
        }
        ratio(what, goal, () -> end(Session.of(programs.scratch(), command)));
    }

    private void library() throws IOException {
        Path few = library(FEW_PLANS);
        Path many = library(MANY_PLANS);
        Times reference = new Times();
        Times ours = new Times();
        for (int i = 0; i < TIMES; i++) {
            reference.add(until(programs.editor(few), "Filter"));
            ours.add(until(programs.editor(many), "Filter"));
        }
        table.row(
                "process to the chooser, " + MANY_PLANS + " plans in the library",
                FEW_PLANS + " plans " + reference,
                String.format("%s = %.2f x", ours, ours.median() / reference.median()),
                "at most 1.3 x",
                "1 x");
    }

    private Path library(int plans) throws IOException {
        Path folder = programs.scratch().resolve("library" + plans);
        Files.createDirectories(folder.resolve("plans"));
        Files.createDirectories(folder.resolve("instruments"));
        Path organ = Path.of("instruments/st-tethwin.json");
        Files.copy(programs.scratch().resolve(organ), folder.resolve(organ));
        String plan = Files.readString(programs.scratch().resolve(Programs.SMALL));
        for (int i = 0; i < plans; i++) {
            // the first is the newest, and so the first in the list
            String other = plan.replace("Harvest Festival", "Plan " + i + " ")
                    .replace("2026-10-04", String.format("%04d-10-04", 7000 - i));
            Files.writeString(folder.resolve("plans/plan-" + i + ".json"), other);
        }
        return folder;
    }

    private void memory() throws IOException {
        try (Session hello = programs.helloWorld("wait");
                Session editor = programs.editor(Programs.SMALL)) {
            hello.msUntil("Hello");
            editor.msUntil(PAINTED);
            for (int i = 0; i < KEYS; i++) {
                editor.type(i % 3 == 0 ? " " : i % 3 == 1 ? "\033[B" : "n");
                editor.bytesUntilQuiet(1);
            }
            double reference = hello.counted("status", "VmHWM") / 1024.0;
            double ours = editor.counted("status", "VmHWM") / 1024.0;
            table.row(
                    "peak memory after " + KEYS + " keys",
                    String.format("HelloWorld %.0f MB", reference),
                    String.format("%.0f MB = %.2f x", ours, ours / reference),
                    "at most 1.3 x",
                    "");
        }
        List<Session> editors = new ArrayList<>();
        try {
            long kb = 0;
            for (int i = 0; i < EDITORS; i++) {
                editors.add(programs.editor(Programs.SMALL));
                editors.get(i).msUntil(PAINTED);
            }
            for (Session each : editors) {
                kb += each.counted("smaps_rollup", "Pss");
            }
            table.row(
                    EDITORS + " editors at once: proportional set size a head",
                    "",
                    String.format("%.0f MB", kb / 1024.0 / EDITORS),
                    "printed",
                    "");
        } finally {
            for (Session each : editors) {
                each.close();
            }
        }
    }
}
