package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command, from the words typed to the address told. */
class ProofCommandTest {

    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:[0-9]+/");

    @TempDir
    private Path folder;

    private Path source() {
        Path source = folder.resolve("source");
        assertEquals(0, Ran.command("start", source.toString()).code());
        return source;
    }

    @Test
    void itTellsWhereToLookAndStopsWhenItIsTold() throws Exception {
        Path source = source();
        StringWriter said = new StringWriter();
        Terminal terminal = new Terminal(new PrintWriter(said), new PrintWriter(said), exergue.cli.report.Ink.PLAIN, false);
        int[] code = {-1};
        Thread command = new Thread(() -> code[0] = new CommandRun(terminal).run("proof", source.toString(), "--port", "0"));
        command.start();
        String address = address(said);
        HttpResponse<String> now = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(address + "now")).build(),
                HttpResponse.BodyHandlers.ofString());
        assertEquals(200, now.statusCode());
        command.interrupt();
        command.join(Duration.ofSeconds(30).toMillis());
        assertEquals(0, code[0]);
        assertTrue(Files.notExists(source.resolve("book")), "no book is made");
    }

    private static String address(StringWriter said) throws InterruptedException {
        Instant end = Instant.now().plusSeconds(60);
        while (Instant.now().isBefore(end)) {
            Matcher address = ADDRESS.matcher(said.toString());
            if (address.find()) {
                return address.group();
            }
            Thread.sleep(20);
        }
        throw new AssertionError("no address in: " + said);
    }

    @Test
    void aPortThatIsTaken() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            int port = taken.getLocalPort();
            Ran ran = Ran.command("proof", source().toString(), "--port", String.valueOf(port));
            assertEquals(2, ran.code());
            assertEquals("exergue: Port " + port + " is taken, perhaps by another proof. Stop that one, or name another port: --port "
                    + (port + 1) + ".\n", ran.err());
        }
    }

    @Test
    void whatIsNoPortOrNoSource() {
        assertEquals("exergue: A port is a number from 0 to 65535, not 70000.\n", Ran.command("proof", source().toString(), "--port", "70000").err());
        Ran none = Ran.command("proof", folder.resolve("nowhere").toString());
        assertEquals(2, none.code());
        assertTrue(none.err().startsWith("exergue: There is no folder “"), none.err());
    }
}
