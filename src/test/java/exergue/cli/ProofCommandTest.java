package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
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
        Ran ran = Ran.stopped(said -> assertEquals(200, status(said)), "proof", source.toString(), "--port", "0");
        assertEquals(0, ran.code(), ran.all());
        assertTrue(Files.notExists(source.resolve("book")), "no book is made");
    }

    private static int status(String said) {
        Matcher address = ADDRESS.matcher(said);
        assertTrue(address.find(), said);
        try {
            return HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(address.group() + "now")).build(),
                    HttpResponse.BodyHandlers.discarding()).statusCode();
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(e);
        }
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
