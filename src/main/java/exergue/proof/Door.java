package exergue.proof;

import com.sun.net.httpserver.Headers;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Who is let in. The server is bound to the machine itself, but every page that its user opens in a browser runs there too:
 * a request is answered only if it was made for this server by its own name and by no page of another.
 */
final class Door {

    private static final Set<String> METHODS = Set.of("GET", "HEAD");
    private static final Set<String> FROM_HERE = Set.of("same-origin", "none");

    private final Set<String> hosts;

    /** @param port that the server listens on */
    Door(int port) {
        this.hosts = Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
    }

    /** Empty if it may come in. @param asked what stands in the first line: a whole address names a host of its own there */
    Optional<Answer> refuse(String method, URI asked, Headers headers) {
        List<String> host = headers.getOrDefault("Host", List.of());
        boolean elsewhere = asked.getRawAuthority() != null && !hosts.contains(asked.getRawAuthority());
        if (elsewhere || host.size() != 1 || !hosts.contains(host.get(0))) {
            return Optional.of(Answer.refusal(Answer.FORBIDDEN, "This proof is only for the machine it is made on."));
        }
        String site = headers.getFirst("Sec-Fetch-Site");
        String here = "http://" + host.get(0);
        String origin = headers.getFirst("Origin");
        String referer = headers.getFirst("Referer"); // older browsers send nothing else with a picture
        if (site != null && !FROM_HERE.contains(site) || origin != null && !origin.equals(here)
                || referer != null && !referer.startsWith(here + "/")) {
            return Optional.of(Answer.refusal(Answer.FORBIDDEN, "This proof is not for pages of other sites. Type its address yourself."));
        }
        return METHODS.contains(method) ? Optional.empty()
                : Optional.of(Answer.refusal(Answer.NOT_ALLOWED, "This proof can only be looked at."));
    }
}
