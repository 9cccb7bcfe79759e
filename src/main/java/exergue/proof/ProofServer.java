package exergue.proof;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Hands out the proof to browsers on this machine, and to nobody else. */
public final class ProofServer implements AutoCloseable {

    /** A browser that hears nothing for long takes the line for dead. */
    private static final long SILENCE_MS = 15_000;

    private final HttpServer server;
    private final ExecutorService workers;
    private final ProofTable table;
    private final Rooms rooms;
    private final Door door;

    private ProofServer(HttpServer server, ProofTable table) {
        this.server = server;
        this.table = table;
        this.rooms = new Rooms(table);
        this.door = new Door(server.getAddress().getPort());
        this.workers = Executors.newCachedThreadPool(ProofServer::worker);
    }

    /**
     * Opens on the loopback address.
     *
     * @param port 0 for any that is free
     * @throws IOException if the port is taken
     */
    public static ProofServer open(ProofDesk desk, int port) throws IOException {
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), port), 0);
        ProofServer proof = new ProofServer(server, desk.table());
        server.createContext("/", proof::answer);
        server.setExecutor(proof.workers);
        server.start();
        return proof;
    }

    private static Thread worker(Runnable work) {
        Thread worker = new Thread(work, "exergue-proof-answer");
        worker.setDaemon(true);
        return worker;
    }

    /** For the browser: "http://127.0.0.1:4280/". */
    public String address() {
        return "http://127.0.0.1:" + server.getAddress().getPort() + "/";
    }

    private void answer(HttpExchange asked) throws IOException {
        try (asked) {
            Optional<Answer> refused = door.refuse(asked.getRequestMethod(), asked.getRequestURI(), asked.getRequestHeaders());
            if (refused.isPresent()) {
                send(refused.get(), asked);
            } else if (asked.getRequestURI().getPath().equals("/news")) {
                news(asked);
            } else {
                send(room(asked), asked);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private Answer room(HttpExchange asked) throws IOException {
        try {
            return rooms.answer(asked.getRequestURI().getPath(), value(asked.getRequestURI().getQuery()));
        } catch (RuntimeException e) {
            return Answer.refusal(Answer.FAULT, Trouble.of(e));
        }
    }

    /** Every address has at most one thing to be told, whatever its name. */
    private static String value(String query) {
        return query == null ? "" : query.substring(query.indexOf('=') + 1);
    }

    private static void send(Answer answer, HttpExchange to) throws IOException {
        headers(to.getResponseHeaders(), answer.type());
        boolean head = to.getRequestMethod().equals("HEAD");
        to.sendResponseHeaders(answer.status(), head || answer.bytes().length == 0 ? -1 : answer.bytes().length);
        if (!head) {
            to.getResponseBody().write(answer.bytes());
        }
    }

    /** A line that stays open: the number of each new proof, as soon as there is one. */
    private void news(HttpExchange to) throws IOException, InterruptedException {
        headers(to.getResponseHeaders(), "text/event-stream");
        if (to.getRequestMethod().equals("HEAD")) {
            to.sendResponseHeaders(Answer.OK, -1);
            return;
        }
        to.sendResponseHeaders(Answer.OK, 0);
        OutputStream line = to.getResponseBody();
        int told = -1;
        while (!Thread.currentThread().isInterrupted()) {
            int number = table.after(told, SILENCE_MS).number();
            String news = number == told ? ":\n\n" : "data: " + number + "\n\n";
            line.write(news.getBytes(StandardCharsets.US_ASCII));
            line.flush();
            told = number;
        }
    }

    /** Nothing is loaded from elsewhere, nothing is kept, and no other page may show this one or read from it. */
    private static void headers(Headers headers, String type) {
        headers.set("Content-Type", type);
        headers.set("Content-Security-Policy", "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; "
                + "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Referrer-Policy", "no-referrer");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("Cache-Control", "no-store");
    }

    @Override
    public void close() {
        server.stop(0);
        workers.shutdownNow();
    }
}
