package exergue.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import exergue.photo.print.Darkroom;
import exergue.proof.ProofDesk;
import exergue.proof.ProofServer;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * How long it takes from the moment a coin's file is saved until a browser has the picture of its page, and until it has
 * that of the whole book set again. The coins are spread over the book; the server is asked as the page's script asks it.
 */
public final class ProofBench {

    private static final int WARM_UP = 10;
    private static final int EDITS = 20;

    private final ObjectMapper json = new ObjectMapper();
    private final HttpClient browser = HttpClient.newHttpClient();
    private final String address;

    private ProofBench(String address) {
        this.address = address;
    }

    /** Usage: number of coins. */
    public static void main(String[] arguments) throws Exception {
        int coins = Integer.parseInt(arguments.length > 0 ? arguments[0] : "2000");
        Path source = Path.of("target", "bench", "proof-" + coins, "source");
        MakeCatalogue.write(coins, source);
        try (ProofDesk desk = new ProofDesk(source, Instant::now, tree -> tree, Darkroom.inMemory());
                ProofServer server = ProofServer.open(desk, 0)) {
            desk.open();
            new ProofBench(server.address()).run(source, coins);
        }
    }

    private void run(Path source, int coins) throws Exception {
        long start = System.nanoTime();
        int number = awaitState("as-saved", -1).get("number").asInt();
        System.out.printf(Locale.ROOT, "%d coins; the first book after %.2f s%n", coins, Bench.seconds(start));
        List<Double> pages = new ArrayList<>();
        List<Double> books = new ArrayList<>();
        for (int edit = 0; edit < WARM_UP + EDITS; edit++) {
            String id = "c%05d".formatted((int) ((edit * 7919L + 13) % coins));
            edit(source, id, edit);
            long saved = System.nanoTime();
            JsonNode now = awaitPage(id, number);
            double page = Bench.seconds(saved);
            number = awaitState("as-saved", now.get("number").asInt() - 1).get("number").asInt();
            if (edit >= WARM_UP) {
                pages.add(page);
                books.add(Bench.seconds(saved));
            }
        }
        print("the page", pages);
        print("the whole book", books);
    }

    private static void edit(Path source, String id, int edit) throws IOException {
        try (var files = Files.walk(source.resolve("coins"))) {
            Path file = files.filter(path -> path.endsWith(id + ".yaml")).findFirst().orElseThrow();
            String text = Files.readString(file).replaceAll("(?m)^note: .*\n", "");
            Files.writeString(file, text + "note: Looked at again, for the " + edit + "th time.\n");
        }
    }

    /** The picture of the leaf that shows the coin, set after the change. */
    private JsonNode awaitPage(String id, int before) throws Exception {
        while (true) {
            JsonNode now = now();
            if (now.get("number").asInt() > before && now.get("changed").asText().equals(id)) {
                for (JsonNode leaf : now.get("leaves")) {
                    if (leaf.get("fresh").asBoolean() || now.get("state").asText().equals("as-saved")) {
                        ask("/leaf/" + leafOf(now, id) + ".png?dpi=110");
                        return now;
                    }
                }
            }
        }
    }

    private static String leafOf(JsonNode now, String id) {
        for (JsonNode entry : now.get("entries")) {
            if (entry.get("anchor").asText().equals(id)) {
                return now.get("leaves").get(entry.get("leaf").asInt()).get("name").asText();
            }
        }
        throw new IllegalStateException(id + " is not in the book");
    }

    private JsonNode awaitState(String state, int before) throws Exception {
        while (true) {
            JsonNode now = now();
            if (now.get("state").asText().equals(state) && now.get("number").asInt() > before) {
                return now;
            }
            Thread.sleep(20);
        }
    }

    private JsonNode now() throws Exception {
        return json.readTree(ask("/now"));
    }

    private byte[] ask(String path) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(address.replaceAll("/$", "") + path)).build();
        return browser.send(request, HttpResponse.BodyHandlers.ofByteArray()).body();
    }

    private static void print(String what, List<Double> seconds) {
        Collections.sort(seconds);
        System.out.printf(Locale.ROOT, "%s: median of %d edits %.2f s, least %.2f s, most %.2f s%n", what, seconds.size(),
                (seconds.get(seconds.size() / 2 - 1) + seconds.get(seconds.size() / 2)) / 2, seconds.get(0), seconds.get(seconds.size() - 1));
    }
}
