package exergue.browser;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
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
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A real browser without a window, told what to do by the DevTools protocol. */
final class Chromium implements AutoCloseable {

    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");
    private static final List<String> FLAGS = List.of("--headless", "--no-sandbox", "--disable-gpu", "--disable-quic",
            "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
            "--remote-debugging-port=0");
    private static final String LISTENING = "DevTools listening on ";
    private static final int PATIENCE_SECONDS = 60;

    private final ObjectMapper json = new ObjectMapper();
    private final BlockingQueue<JsonNode> answers = new LinkedBlockingQueue<>();
    private final List<String> complaints = new ArrayList<>();
    private final Path profile;
    private final Process process;
    private final WebSocket socket;
    private final String session;
    private int calls;
    private boolean loaded;

    Chromium() throws Exception {
        profile = Files.createTempDirectory("chromium");
        List<String> command = new ArrayList<>(List.of(installed()));
        command.addAll(FLAGS);
        command.add("--user-data-dir=" + profile);
        command.add("about:blank");
        process = new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        socket = HttpClient.newHttpClient().newWebSocketBuilder()
                .buildAsync(URI.create(address()), new Listener()).get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        String target = call("", "Target.createTarget", json.createObjectNode().put("url", "about:blank"))
                .get("targetId").asText();
        session = call("", "Target.attachToTarget", json.createObjectNode().put("targetId", target).put("flatten", true))
                .get("sessionId").asText();
        for (String domain : List.of("Page", "Runtime", "Log")) {
            call(domain + ".enable");
        }
    }

    private static String installed() {
        for (String folder : System.getenv("PATH").split(":")) {
            for (String name : NAMES) {
                if (Files.isExecutable(Path.of(folder, name))) {
                    return name;
                }
            }
        }
        throw new AssertionError("These tests look at the pages in Chromium, and there is none on this machine. Install "
                + "it (Debian: apt-get install chromium), or leave the profile “browser” out.");
    }

    private String address() throws IOException {
        BufferedReader said = new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8));
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            if (line.startsWith(LISTENING)) {
                Thread drain = new Thread(() -> said.lines().forEach(rest -> { }));
                drain.setDaemon(true);
                drain.start();
                return line.substring(LISTENING.length());
            }
        }
        throw new AssertionError("Chromium did not start");
    }

    /** A screen of this width in CSS pixels, light or dark. */
    void screen(int width, int height, String scheme) throws Exception {
        call(session, "Emulation.setDeviceMetricsOverride", json.createObjectNode().put("width", width)
                .put("height", height).put("deviceScaleFactor", 1).put("mobile", width < 600));
        ObjectNode media = json.createObjectNode();
        media.putArray("features").addObject().put("name", "prefers-color-scheme").put("value", scheme);
        call(session, "Emulation.setEmulatedMedia", media);
    }

    /** Opens a page and waits until it and its pictures and faces are loaded. */
    void open(String address) throws Exception {
        loaded = false;
        call(session, "Page.navigate", json.createObjectNode().put("url", address));
        while (!loaded) {
            take();
        }
        evaluate("document.fonts.ready.then(() => true)");
    }

    /** What an expression of the page's own language comes to. */
    JsonNode evaluate(String expression) throws Exception {
        JsonNode result = call(session, "Runtime.evaluate", json.createObjectNode().put("expression", expression)
                .put("returnByValue", true).put("awaitPromise", true));
        if (result.has("exceptionDetails")) {
            throw new AssertionError(expression + ": " + result.get("exceptionDetails"));
        }
        return result.at("/result/value");
    }

    /** Asks again and again until the expression is true. */
    void await(String expression) throws Exception {
        for (int tries = PATIENCE_SECONDS * 20; tries > 0; tries--) {
            if (evaluate(expression).asBoolean()) {
                return;
            }
            Thread.sleep(50);
        }
        throw new AssertionError("In " + PATIENCE_SECONDS + " seconds it has not come to: " + expression);
    }

    /** Presses and lets go a key by its name: "n", "Escape", "Tab". */
    void press(String key) throws Exception {
        for (String kind : List.of("keyDown", "keyUp")) {
            ObjectNode event = json.createObjectNode().put("type", kind).put("key", key);
            if (key.length() == 1 && kind.equals("keyDown")) {
                event.put("text", key);
            }
            if (key.equals("Tab")) {
                event.put("windowsVirtualKeyCode", 9);
            }
            call(session, "Input.dispatchKeyEvent", event);
        }
    }

    /** What is to be seen now, as a PNG file, to be looked at by a person. */
    void picture(Path file) throws Exception {
        byte[] png = Base64.getDecoder().decode(call("Page.captureScreenshot").get("data").asText());
        Files.createDirectories(file.getParent());
        Files.write(file, png);
    }

    /** What the browser wrote to its console as a warning or an error since the last time it was asked. */
    List<String> complaints() {
        List<String> said = List.copyOf(complaints);
        complaints.clear();
        return said;
    }

    private JsonNode call(String method) throws Exception {
        return call(session, method, json.createObjectNode());
    }

    private JsonNode call(String inSession, String method, ObjectNode parameters) throws Exception {
        int id = ++calls;
        ObjectNode call = json.createObjectNode().put("id", id).put("method", method);
        call.set("params", parameters);
        if (!inSession.isEmpty()) {
            call.put("sessionId", inSession);
        }
        socket.sendText(json.writeValueAsString(call), true).get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        while (true) {
            JsonNode answer = take();
            if (answer.path("id").asInt() == id) {
                if (answer.has("error")) {
                    throw new AssertionError(method + ": " + answer.get("error"));
                }
                return answer.get("result");
            }
        }
    }

    private JsonNode take() throws InterruptedException {
        JsonNode answer = answers.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
        if (answer == null) {
            throw new AssertionError("Chromium did not answer within " + PATIENCE_SECONDS + " seconds");
        }
        switch (answer.path("method").asText()) {
            case "Page.loadEventFired" -> loaded = true;
            case "Runtime.exceptionThrown" -> complaints.add(answer.get("params").toString());
            case "Runtime.consoleAPICalled", "Log.entryAdded" -> complaints.add(answer.get("params").toString());
            default -> { }
        }
        return answer;
    }

    @Override
    public void close() throws IOException, InterruptedException {
        socket.abort();
        List<ProcessHandle> parts = process.descendants().toList();
        process.destroy();
        process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
        parts.forEach(part -> { // they write into the profile until they are gone
            part.destroyForcibly();
            part.onExit().orTimeout(PATIENCE_SECONDS, TimeUnit.SECONDS).join();
        });
        try (Stream<Path> files = Files.walk(profile)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }

    private final class Listener implements WebSocket.Listener {

        private final StringBuilder message = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean last) {
            message.append(part);
            if (last) {
                try {
                    answers.add(json.readTree(message.toString()));
                } catch (IOException e) {
                    throw new AssertionError(e);
                }
                message.setLength(0);
            }
            from.request(1);
            return null;
        }
    }
}
