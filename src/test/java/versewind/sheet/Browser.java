package versewind.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A headless Chromium with one page, spoken to by the Chrome DevTools Protocol. */
final class Browser implements AutoCloseable {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String LISTENING = "DevTools listening on ";
    private static final Set<String> COMPLAINTS =
            Set.of("Runtime.consoleAPICalled", "Runtime.exceptionThrown", "Log.entryAdded");

    private final Process process;
    private final Path profile;
    private final BlockingQueue<JsonNode> messages = new LinkedBlockingQueue<>();
    private final List<String> complaints = new ArrayList<>();
    private final List<String> fetched = new ArrayList<>();
    private final WebSocket socket;
    private final String session;
    private int lastId;

    private Browser(Process process, Path profile, String address) throws IOException, InterruptedException {
        this.process = process;
        this.profile = profile;
        this.socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(URI.create(address), new Listener())
                .join();
        String target = call("", "Target.createTarget", JSON.createObjectNode().put("url", "about:blank"))
                .get("targetId")
                .asText();
        ObjectNode attach = JSON.createObjectNode().put("targetId", target).put("flatten", true);
        this.session =
                call("", "Target.attachToTarget", attach).get("sessionId").asText();
        for (String domain : List.of("Page", "Runtime", "Log", "Network")) {
            call(domain + ".enable");
        }
    }

    /** Whether there is a Chromium here, and what reads the words of a PDF file. */
    static boolean isPossible() {
        return isHere("chromium") && isHere("pdftotext");
    }

    private static boolean isHere(String program) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }

    static Browser start(Path profile) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        "chromium",
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-dev-shm-usage",
                        "--no-first-run",
                        "--user-data-dir=" + profile,
                        "--remote-debugging-port=0",
                        "about:blank")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8));
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            if (line.startsWith(LISTENING)) {
                return new Browser(process, profile, line.substring(LISTENING.length()));
            }
        }
        throw new IOException("Chromium has ended without a word about where it listens");
    }

    private final class Listener implements WebSocket.Listener {
        private final StringBuilder part = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean last) {
            part.append(data);
            if (last) {
                try {
                    messages.add(JSON.readTree(part.toString()));
                } catch (IOException unreadable) {
                    throw new IllegalStateException(unreadable);
                }
                part.setLength(0);
            }
            from.request(1);
            return null;
        }
    }

    private JsonNode call(String method) throws IOException, InterruptedException {
        return call(session, method, JSON.createObjectNode());
    }

    private JsonNode call(String method, ObjectNode parameters) throws IOException, InterruptedException {
        return call(session, method, parameters);
    }

    private JsonNode call(String in, String method, ObjectNode parameters) throws IOException, InterruptedException {
        ObjectNode request = JSON.createObjectNode().put("id", ++lastId).put("method", method);
        request.set("params", parameters);
        if (!in.isEmpty()) {
            request.put("sessionId", in);
        }
        socket.sendText(JSON.writeValueAsString(request), true).join();
        while (true) {
            JsonNode message = next();
            if (message.path("id").asInt() == lastId) {
                if (message.has("error")) {
                    throw new IOException(method + ": " + message.get("error"));
                }
                return message.get("result");
            }
        }
    }

    private JsonNode next() throws IOException, InterruptedException {
        JsonNode message = messages.poll(60, TimeUnit.SECONDS);
        if (message == null) {
            throw new IOException("Chromium does not answer");
        }
        String method = message.path("method").asText();
        if (COMPLAINTS.contains(method)) {
            complaints.add(message.get("params").toString());
        }
        if (method.equals("Network.requestWillBeSent")) {
            fetched.add(message.at("/params/request/url").asText());
        }
        return message;
    }

    /** Opens a file, and waits until it stands there. */
    void open(Path file) throws IOException, InterruptedException {
        complaints.clear();
        fetched.clear();
        call("Page.navigate", JSON.createObjectNode().put("url", file.toUri().toString()));
        while (!next().path("method").asText().equals("Page.loadEventFired")) {
            // what else happens meanwhile is taken down by next()
        }
    }

    /** Makes the window so many pixels wide. */
    void resize(int widthPx) throws IOException, InterruptedException {
        call(
                "Emulation.setDeviceMetricsOverride",
                JSON.createObjectNode()
                        .put("width", widthPx)
                        .put("height", 800)
                        .put("deviceScaleFactor", 1)
                        .put("mobile", false));
    }

    /** Shows pages as for "screen" or "print", in a "light" or a "dark" room. */
    void show(String medium, String scheme) throws IOException, InterruptedException {
        ObjectNode media = JSON.createObjectNode().put("media", medium);
        media.putArray("features")
                .addObject()
                .put("name", "prefers-color-scheme")
                .put("value", scheme);
        call("Emulation.setEmulatedMedia", media);
    }

    /** The value of an expression of JavaScript. */
    JsonNode value(String expression) throws IOException, InterruptedException {
        JsonNode result = call(
                "Runtime.evaluate",
                JSON.createObjectNode().put("expression", expression).put("returnByValue", true));
        if (result.has("exceptionDetails")) {
            throw new IOException(result.get("exceptionDetails").toString());
        }
        return result.at("/result/value");
    }

    /** What the console was told, and what went wrong, since the file was opened. */
    List<String> complaints() {
        return List.copyOf(complaints);
    }

    /** The addresses that were asked for since the file was opened. */
    List<String> fetched() {
        return List.copyOf(fetched);
    }

    /** Prints on paper of a size in mm; the words of every page. */
    List<String> printed(Path pdf, double widthMm, double heightMm) throws IOException, InterruptedException {
        show("print", "light");
        ObjectNode paper =
                JSON.createObjectNode().put("paperWidth", widthMm / 25.4).put("paperHeight", heightMm / 25.4);
        Files.write(
                pdf,
                Base64.getDecoder()
                        .decode(call("Page.printToPDF", paper).get("data").asText()));
        Process reading = new ProcessBuilder("pdftotext", "-layout", pdf.toString(), "-").start();
        String text = new String(reading.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return List.of(text.split("\f", -1));
    }

    @Override
    public void close() throws IOException {
        socket.abort();
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        process.onExit().join();
        for (String link : List.of("SingletonSocket", "SingletonLock", "SingletonCookie")) {
            Files.deleteIfExists(profile.resolve(link));
        }
    }
}
