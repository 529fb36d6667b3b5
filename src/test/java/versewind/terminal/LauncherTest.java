package versewind.terminal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The launcher where no terminal is, with Javas that only tell how they were called. */
class LauncherTest {

    private record Ended(int status, String out, String err) {}

    @TempDir
    Path parent;

    private Installed installed;

    @BeforeEach
    void install() throws IOException, URISyntaxException {
        assumeTrue(File.separatorChar == '/', "the launcher is for systems with a POSIX shell");
        installed = Installed.in(parent);
    }

    @Test
    void arguments_and_the_end_are_passed_on_unchanged() throws Exception {
        Ended ended = run(javaOf("17.0.15"), "assess", "All Saints.json", "*", "");
        assertThat(ended.status()).isEqualTo(7);
        assertThat(ended.out()).endsWith(Echo.class.getName() + "\nassess\nAll Saints.json\n*\n\n");
        assertThat(ended.err()).isEmpty();
    }

    @Test
    void the_program_is_named_before_its_libraries_so_that_its_tables_are_found_first() throws Exception {
        String lib = installed.folder() + "/lib/";
        String lanterna = libraries().stream()
                .filter(file -> file.contains("lanterna"))
                .findAny()
                .orElseThrow();
        assertThat(run(javaOf("21"), "assess").out())
                .contains("-cp\n" + lib + "versewind.jar:" + lanterna + "\n")
                .contains("-XX:+UseSerialGC\n");
    }

    @Test
    void a_program_in_a_folder_with_a_colon_in_its_name_starts() throws Exception {
        assumeTrue(Files.isDirectory(Path.of("/proc/self/fd")), "only Linux has another name for such a folder");
        Path loft = Files.move(installed.folder(), parent.resolve("loft: west"));
        Files.delete(installed.link());
        Files.createSymbolicLink(installed.link(), loft.resolve("bin/versewind"));

        assertThat(run(javaOf("17"), "assess").out())
                .contains("\n/proc/self/fd/9/versewind.jar:/proc/self/fd/9/")
                .doesNotContain("loft: west/lib");
    }

    @Test
    void where_no_terminal_shows_them_java_is_told_of_no_one_who_watches_and_of_no_columns() throws Exception {
        assertThat(run(javaOf("21"), "propose", "x").out())
                .doesNotContain("versewind.watched")
                .doesNotContain("versewind.columns");
    }

    @ParameterizedTest
    @CsvSource({"C, C.UTF-8, true", "xx_YY, C.UTF-8, true", "xx_YY.UTF-8, C.UTF-8, false", "C.UTF-8, C.UTF-8, false"})
    void under_a_locale_that_is_not_installed_files_of_any_name_are_found(
            String given, String passedOn, boolean isAscii) throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/locale")), "only glibc can say which locales it has");
        String out = run(Map.of("JAVA_HOME", javaOf("17").toString(), "LC_ALL", given), installed.link(), "assess")
                .out();
        assertThat(out).startsWith("LC_ALL=" + passedOn + "\n");
        assertThat(out.contains("\n-Dversewind.charset=US-ASCII\n")).isEqualTo(isAscii);
    }

    @Test
    void where_there_is_no_home_folder_java_writes_no_report_into_a_folder_that_others_share() throws Exception {
        Map<String, String> environment =
                Map.of("JAVA_HOME", javaOf("17").toString(), "HOME", "/dev/null", "XDG_STATE_HOME", "");
        assertThat(run(environment, installed.link(), "assess").out()).contains("\n-XX:ErrorFile=/dev/null\n");
    }

    @Test
    void a_java_that_is_too_old_is_named() throws Exception {
        Path old = javaOf("11.0.2");
        assertThat(run(old))
                .isEqualTo(new Ended(
                        2, "", "versewind: Java 17 or later is needed, and " + old + "/bin/java is Java 11.0.2.\n"));
        assertThat(run(javaOf("1.8.0_402")).err()).contains("is Java 1.8.0_402.");
    }

    @Test
    void what_the_build_has_written_down_is_told_without_java() throws Exception {
        Path old = javaOf("11.0.2");
        Path texts = Files.createDirectories(installed.folder().resolve("share/versewind"));
        Files.writeString(texts.resolve("version.txt"), "versewind 1.2.3\n");
        assertThat(run(old, "--version")).isEqualTo(new Ended(0, "versewind 1.2.3\n", ""));
        assertThat(run(old, "--help").status()).isEqualTo(2);
        assertThat(run(old, "--version", "assess").status()).isEqualTo(2);
    }

    @Test
    void a_java_without_a_release_file_is_asked() throws Exception {
        Path java = javaOf("17");
        Files.delete(java.resolve("release"));
        assertThat(run(java, "assess").status()).as("it says that it is 17.0.1").isEqualTo(7);
        assertThat(run(java, "--archive").status()).isZero();
        assertThat(run(java, "assess").out()).contains("SharedArchiveFile");
    }

    @Test
    void a_java_behind_symbolic_links_is_known_by_its_own_release_file() throws Exception {
        Path bin = Files.createDirectories(parent.resolve("links"));
        Files.createSymbolicLink(bin.resolve("far"), javaOf("11.0.2").resolve("bin/java"));
        Files.createSymbolicLink(bin.resolve("java"), Path.of("far"));
        Map<String, String> environment = Map.of("JAVA_HOME", "", "PATH", bin + ":" + System.getenv("PATH"));
        assertThat(run(environment, script(), "assess").err()).endsWith("is Java 11.0.2.\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"dash", "bash --posix", "busybox sh", "ksh", "mksh", "yash", "zsh --emulate sh"})
    void any_posix_shell_will_do(String shell) throws Exception {
        String[] words = shell.split(" ", -1);
        assumeTrue(Stream.of(System.getenv("PATH").split(":", -1))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, words[0]))));
        String launcher = Files.readString(script());
        Files.writeString(script(), launcher.replaceFirst("#!/bin/sh", "#!/usr/bin/env -S " + shell));
        Path java = javaOf("17.0.15");
        assertThat(run(java, "assess", "a b").out()).endsWith("\nassess\na b\n");
        assertThat(run(java, "--archive").status()).isZero();
        assertThat(run(java, "assess").out()).contains("SharedArchiveFile");
    }

    @Test
    void without_java_there_is_a_sentence() throws Exception {
        assertThat(run(Map.of("JAVA_HOME", "", "PATH", parent.toString()), script(), "assess"))
                .isEqualTo(new Ended(
                        2,
                        "",
                        "versewind: Java 17 or later is needed, and neither JAVA_HOME nor PATH leads to any.\n"));
    }

    @Test
    void java_is_also_found_in_the_path() throws Exception {
        String path = javaOf("17") + "/bin:" + System.getenv("PATH");
        assertThat(run(Map.of("JAVA_HOME", "", "PATH", path), installed.link(), "assess")
                        .status())
                .isEqualTo(7);
    }

    @Test
    void the_archive_is_used_only_by_the_java_that_made_it_where_it_was_made_and_with_the_same_libraries()
            throws Exception {
        Path java = javaOf("17.0.15");
        Ended made = run(java, "--archive");
        assertThat(made).isEqualTo(new Ended(0, "", ""));
        assertThat(run(java, "assess").out()).contains(use(installed.folder().resolve("lib")));
        assertThat(run(javaOf("17.0.16"), "assess").out()).doesNotContain("SharedArchiveFile");
        Path library = Files.createFile(installed.folder().resolve("lib/other.jar"));
        assertThat(run(java, "assess").out()).doesNotContain("SharedArchiveFile");
        Files.delete(library);
        Path moved = Files.move(installed.folder(), parent.resolve("elsewhere"));
        assertThat(run(Map.of("JAVA_HOME", java.toString()), moved.resolve("bin/versewind"), "assess")
                        .out())
                .contains("-Xshare:auto")
                .doesNotContain("SharedArchiveFile");
    }

    @Test
    void from_java_25_on_the_archive_holds_how_the_classes_are_linked() throws Exception {
        Path java = javaOf("25.0.1");
        run(java, "--archive");
        assertThat(run(java, "assess").out())
                .contains("-XX:AOTCache=" + installed.folder() + "/lib/versewind.jsa\n")
                .doesNotContain("-Xshare", "SharedArchiveFile");
    }

    @Test
    void an_archive_that_is_cut_off_is_not_used() throws Exception {
        Path java = javaOf("17.0.15");
        run(java, "--archive");
        Path archive = installed.folder().resolve("lib/versewind.jsa");
        Files.write(archive, Files.readAllBytes(archive), StandardOpenOption.APPEND);
        assertThat(run(java, "assess").out()).as("of another size").doesNotContain("SharedArchiveFile");
        Files.write(archive, new byte[1]);
        assertThat(run(java, "assess").out()).as("nearly all lost").doesNotContain("SharedArchiveFile");
        run(java, "--archive");
        assertThat(run(java, "assess").out()).contains("SharedArchiveFile");
    }

    @Test
    void an_archive_made_before_the_program_was_replaced_is_not_used() throws Exception {
        Path java = javaOf("17.0.15");
        run(java, "--archive");
        Path stamp = installed.folder().resolve("lib/versewind.jsa.stamp");
        Files.setLastModifiedTime(stamp, FileTime.from(Instant.EPOCH));
        assertThat(run(java, "assess").out()).doesNotContain("SharedArchiveFile");
    }

    @Test
    void where_the_programs_folder_may_not_be_written_the_archive_is_among_the_users_caches() throws Exception {
        Path bin = Files.createDirectories(parent.resolve("bin"));
        Path mkdir = Files.writeString(
                bin.resolve("mkdir"), "#!/bin/sh\ncase $* in */lib/*) exit 1 ;; esac\nexec /bin/mkdir \"$@\"\n");
        assertThat(mkdir.toFile().setExecutable(true)).isTrue();
        Map<String, String> environment = Map.of(
                "JAVA_HOME",
                javaOf("17.0.15").toString(),
                "PATH",
                bin + ":" + System.getenv("PATH"),
                "XDG_CACHE_HOME",
                parent.resolve("caches").toString());
        assertThat(run(environment, installed.link(), "--archive").status()).isZero();
        assertThat(run(environment, installed.link(), "assess").out())
                .contains(use(parent.resolve("caches/versewind")));
        assertThat(libraries()).noneMatch(file -> file.contains(".jsa"));
    }

    private static String use(Path folder) {
        return "-XX:SharedArchiveFile=" + folder + "/versewind.jsa\n";
    }

    @Test
    void a_java_that_makes_no_archive_leaves_only_a_note_of_that_behind() throws Exception {
        Path java = javaOf("17.0.15");
        Files.writeString(java.resolve("bin/java"), "#!/bin/sh\nexit 134\n");
        Ended ended = run(java, "--archive");
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.err()).contains("makes no archive");
        assertThat(libraries())
                .filteredOn(file -> file.contains(".jsa"))
                .containsExactly(installed.folder() + "/lib/versewind.jsa.stamp");
        assertThat(run(javaOf("17.0.15"), "assess").out()).doesNotContain("SharedArchiveFile");
    }

    private List<String> libraries() throws IOException {
        try (var files = Files.list(installed.folder().resolve("lib"))) {
            return files.map(Path::toString).toList();
        }
    }

    @Test
    void this_java_makes_an_archive_and_starts_from_it_without_a_word() throws Exception {
        Map<String, String> environment = Map.of("JAVA_HOME", System.getProperty("java.home"), "TERM", "dumb");
        Ended made = run(environment, installed.link(), "--archive");
        assertThat(made).isEqualTo(new Ended(0, "", "kept 11 after hangup\n"));
        Ended refused = run(environment, installed.link());
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err())
                .startsWith("the full screen needs a terminal: TERM is dumb")
                .hasLineCount(1);
    }

    @Test
    void where_nobody_looks_the_editor_is_refused_with_a_sentence() throws Exception {
        Map<String, String> environment = Map.of("JAVA_HOME", System.getProperty("java.home"), "TERM", "xterm");
        assertThat(run(environment, installed.link()))
                .isEqualTo(new Ended(
                        2,
                        "",
                        "the full screen needs a terminal: its input or its output is something else;"
                                + " `versewind assess PLAN` works without one.\n"));
    }

    /**
     * A Java of a version that prints the words it is called with, makes the archive it is told to, and ends with 7.
     */
    private Path javaOf(String version) throws IOException {
        Path home = parent.resolve("java " + version);
        Path java = Files.createDirectories(home.resolve("bin")).resolve("java");
        Files.writeString(java, """
            #!/bin/sh
            printf 'LC_ALL=%s\\n' "$LC_ALL"
            [ "$1" = -version ] && echo 'openjdk version "17.0.1" 2021-10-19' >&2
            for word; do
              case $word in -XX:ArchiveClassesAtExit=* | -XX:AOTCacheOutput=*) echo archive >"${word#*=}" ;; esac
              printf '%s\\n' "$word"
            done
            exit 7
            """);
        assertThat(java.toFile().setExecutable(true)).isTrue();
        Files.writeString(home.resolve("release"), "IMPLEMENTOR=\"X\"\nJAVA_VERSION=\"" + version + "\"\n");
        Files.writeString(
                home.resolve("release"), "JAVA_RUNTIME_VERSION=\"" + version + "+6\"\n", StandardOpenOption.APPEND);
        return home;
    }

    private Path script() {
        return installed.folder().resolve("bin/versewind");
    }

    private Ended run(Path javaHome, String... arguments) throws Exception {
        return run(Map.of("JAVA_HOME", javaHome.toString()), installed.link(), arguments);
    }

    private static Ended run(Map<String, String> environment, Path launcher, String... arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().putAll(environment);
        Process process = builder.start();
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Ended(process.exitValue(), out, err);
    }
}
