package exergue.proof;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.BindException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes over the line, byte by byte; a library that puts requests together would set some of them right. */
class ProofServerTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private static Path folder;
    private static LiveSource source;
    private static ProofServer server;
    private static int port;

    @BeforeAll
    static void open() throws Exception {
        source = new LiveSource(folder, 40).open();
        server = ProofServer.open(source.desk(), 0);
        port = URI.create(server.address()).getPort();
        source.awaitSaved();
    }

    @AfterAll
    static void close() throws IOException {
        server.close();
        source.close();
    }

    private record Got(int status, List<String> headers, byte[] body) {

        String text() {
            return new String(body, StandardCharsets.UTF_8);
        }

        JsonNode json() throws IOException {
            return JSON.readTree(body);
        }
    }

    private static Got ask(String line, String... headers) throws IOException {
        try (Socket socket = new Socket(InetAddress.getByName("127.0.0.1"), port)) {
            String host = Arrays.stream(headers).anyMatch(header -> header.startsWith("Host:")) ? "" : "Host: 127.0.0.1:" + port + "\r\n";
            String more = headers.length == 0 ? "" : String.join("\r\n", headers) + "\r\n";
            socket.getOutputStream().write((line + " HTTP/1.1\r\n" + host + more + "Connection: close\r\n\r\n").getBytes(StandardCharsets.UTF_8));
            byte[] all = socket.getInputStream().readAllBytes();
            String read = new String(all, StandardCharsets.ISO_8859_1);
            int end = read.indexOf("\r\n\r\n");
            List<String> head = List.of(read.substring(0, end).split("\r\n"));
            return new Got(Integer.parseInt(head.get(0).split(" ")[1]), head.subList(1, head.size()), Arrays.copyOfRange(all, end + 4, all.length));
        }
    }

    private static String leaf() {
        return source.desk().table().now().leaves().get(2).name();
    }

    @Test
    void onlyTheMachineItselfIsListenedTo() throws Exception {
        assertTrue(server.address().startsWith("http://127.0.0.1:"));
        for (NetworkInterface device : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            for (InetAddress address : Collections.list(device.getInetAddresses())) {
                if (!address.isLoopbackAddress()) {
                    assertThrows(IOException.class, () -> new Socket(address, port).close(), address.toString());
                }
            }
        }
    }

    @Test
    void thePageLoadsNothingFromElsewhere() throws IOException {
        Got page = ask("GET /");
        assertEquals(200, page.status());
        assertTrue(page.headers().stream().anyMatch(header -> header.toLowerCase(java.util.Locale.ROOT).startsWith("content-security-policy: default-src 'none';")));
        for (String part : List.of("/", "/proof.css", "/proof.js", "/mark.svg")) {
            String text = ask("GET " + part).text().replace("http://www.w3.org/2000/svg", "");
            assertFalse(text.isEmpty());
            assertFalse(text.contains("://"), part);
        }
        assertEquals(200, ask("GET /face/regular.ttf").status());
    }

    @Test
    void whatThereIsToSee() throws IOException {
        JsonNode now = ask("GET /now").json();
        assertEquals("as-saved", now.get("state").asText());
        assertEquals(48, now.get("entries").size());
        assertEquals(List.of(595, 794), List.of(now.get("sheet").get(0).asInt(), now.get("sheet").get(1).asInt()), "210 x 280 mm in points");
    }

    @Test
    void aLeafAsPictureAndAsWords() throws IOException {
        Got png = ask("GET /leaf/" + leaf() + ".png?dpi=144");
        assertEquals(200, png.status());
        assertEquals(1190, ImageIO.read(new ByteArrayInputStream(png.body())).getWidth(), 1);
        assertArrayEquals(png.body(), ask("GET /leaf/" + leaf() + ".png?dpi=130").body());
        JsonNode words = ask("GET /leaf/" + leaf()).json();
        assertTrue(words.get("lines").size() > 5);
        for (JsonNode place : words.get("lines").findValues("at")) {
            assertTrue(place.get(0).asInt() < place.get(2).asInt() && place.get(1).asInt() < place.get(3).asInt(), place.toString());
        }
    }

    @Test
    void wordsNumbersAndIdsAreFound() throws IOException {
        JsonNode id = ask("GET /find?q=c00007").json().get("hits").get(0);
        assertEquals("c00007", id.get("anchor").asText());
        JsonNode number = ask("GET /find?q=8").json().get("hits").get(0);
        assertEquals("8 c00007", number.get("text").asText());
        JsonNode greek = ask("GET /find?q=" + "%CE%BA%CE%AC%CE%BB%CE%BB%CF%89%CF%81").json(); // κάλλωρ
        assertEquals(8, greek.get("all").asInt(), "one a type");
        assertEquals(0, ask("GET /find?q=nowhere-to-be-found").json().get("all").asInt());
        assertEquals(0, ask("GET /find?q=").json().get("all").asInt());
        assertEquals(400, ask("GET /find?q=" + "x".repeat(300)).status());
    }

    @ParameterizedTest
    @ValueSource(strings = {"/catalogue.yaml", "/../catalogue.yaml", "/%2e%2e/catalogue.yaml", "/..%2f..%2fetc/passwd", "/leaf/../../catalogue.yaml",
        "/leaf/..%2Fcatalogue.yaml", "/leaf/%00", "/face/../proof.html", "/face/GentiumBookPlus-Regular.ttf", "/leaf/1-1.png/..", "//proof.js", "/leaf/", "/proof",
        "/coins/t0000/c00000.yaml", "/exergue/templates/shared/page.css"})
    void noAddressNamesAFile(String address) throws IOException {
        assertEquals(404, ask("GET " + address).status());
    }

    @ParameterizedTest
    @ValueSource(strings = {"/leaf/9999-0", "/leaf/1-9999", "/leaf/999999999-1.png", "/leaf/0-0.png"})
    void leavesThatAreNotThere(String address) throws IOException {
        assertEquals(410, ask("GET " + address).status());
    }

    @Test
    void otherSitesAndOtherNamesAreRefused() throws IOException {
        assertEquals(403, ask("GET /now", "Host: coins.example").status());
        assertEquals(403, ask("GET /now", "Host: coins.example:" + port).status());
        assertEquals(403, ask("GET /news", "Sec-Fetch-Site: cross-site").status());
        assertEquals(403, ask("GET /now", "Origin: http://coins.example").status());
        assertEquals(403, ask("GET /leaf/" + leaf() + ".png", "Referer: http://coins.example/").status());
        assertEquals(403, ask("GET /now", "Referer: http://127.0.0.1:" + port + "0/").status());
        assertEquals(405, ask("POST /now").status());
        assertFalse(ask("GET /now", "Host: coins.example").text().contains("Timing"));
        assertTrue(ask("GET /now").headers().stream().noneMatch(header -> header.toLowerCase(java.util.Locale.ROOT).startsWith("access-control")));
    }

    @Test
    void headIsAnsweredWithoutABody() throws IOException {
        Got head = ask("HEAD /now");
        assertEquals(200, head.status());
        assertEquals(0, head.body().length);
        assertEquals(200, ask("HEAD /news").status(), "and the line does not stay open");
    }

    @Test
    void newsComesWhenAFileIsSaved() throws Exception {
        try (Socket socket = new Socket(InetAddress.getByName("127.0.0.1"), port)) {
            socket.setSoTimeout(60_000);
            socket.getOutputStream().write(("GET /news HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
            BufferedReader news = new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            int told = next(news);
            source.write("catalogue.yaml", source.read("catalogue.yaml").replace("Everything in it is invented.", "All of it is invented."));
            assertTrue(next(news) > told);
        }
        source.awaitSaved();
    }

    private static int next(BufferedReader news) throws IOException {
        for (String line = news.readLine(); line != null; line = news.readLine()) {
            if (line.startsWith("data: ")) {
                return Integer.parseInt(line.substring("data: ".length()));
            }
        }
        throw new AssertionError("the line was closed");
    }

    @Test
    void aPortIsTakenOnce() {
        assertThrows(BindException.class, () -> ProofServer.open(source.desk(), port));
    }
}
