package versewind.terminal;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;

/**
 * How a sheet that was written comes to the music desk.
 *
 * @param environment the variables of the environment
 */
record Delivery(Map<String, String> environment) {

    private static final String SSH_PORT = "22";

    Delivery {
        environment = Map.copyOf(environment);
    }

    /** Where it is, how to print it, and from another computer how to fetch it. */
    String words(Path file) {
        return "The sheet is written to " + file + "." + print(file) + fetch(file);
    }

    /** A text is printed as it is, a page by a browser. */
    private String print(Path file) {
        if (!file.toString().endsWith(".txt")) {
            return " To print it, open it in a browser.";
        }
        return isOnPath("lp") ? " Print it with: lp " + quoted(file.toString()) + "." : "";
    }

    private boolean isOnPath(String program) {
        return Stream.of(environment.getOrDefault("PATH", "").split(File.pathSeparator, -1))
                .filter(folder -> !folder.isBlank())
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }

    /** SSH_CONNECTION holds the client's address and port, then the server's. */
    private String fetch(Path file) {
        String[] connection = environment.getOrDefault("SSH_CONNECTION", "").split(" ", -1);
        if (connection.length < 4) {
            return "";
        }
        String host = connection[2].contains(":") ? "[" + connection[2] + "]" : connection[2];
        String user = environment.containsKey("USER") ? environment.get("USER") + "@" : "";
        String port = connection[3].equals(SSH_PORT) ? "" : "-P " + connection[3] + " ";
        return " Fetch it on your own computer with: scp " + port + user + host + ":" + quoted(file.toString()) + " .";
    }

    /** A word of a shell's command. */
    private static String quoted(String word) {
        return word.matches("[\\w@%+=:,./-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
    }
}
