package exergue.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.net.httpserver.Headers;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import exergue.finding.Severity;
import java.net.URI;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who is let in. Names of the request headers and their values: Fetch Metadata (W3C), RFC 9110 (Host), RFC 6454 (Origin). */
class DoorTest {

    private final Door door = new Door(4280);

    @ParameterizedTest
    @CsvSource(nullValues = "-", value = {
        "GET,    127.0.0.1:4280,         -,            -,                       200",
        "GET,    localhost:4280,         same-origin,  -,                       200",
        "HEAD,   [::1]:4280,             none,         -,                       200",
        "GET,    127.0.0.1:4280,         same-origin,  http://127.0.0.1:4280,   200",
        "GET,    127.0.0.1,              -,            -,                       403",
        "GET,    127.0.0.1:80,           -,            -,                       403",
        "GET,    coins.example:4280,     -,            -,                       403",
        "GET,    127.0.0.1.example:4280, -,            -,                       403",
        "GET,    LOCALHOST.:4280,        -,            -,                       403",
        "GET,    -,                      -,            -,                       403",
        "GET,    127.0.0.1:4280,         cross-site,   -,                       403",
        "GET,    127.0.0.1:4280,         same-site,    -,                       403",
        "GET,    127.0.0.1:4280,         -,            http://coins.example,    403",
        "GET,    127.0.0.1:4280,         -,            null,                    403",
        "GET,    127.0.0.1:4280,         -,            http://localhost:4280,   403",
        "GET,    127.0.0.1:4280,         -,            https://127.0.0.1:4280,  403",
        "POST,   127.0.0.1:4280,         same-origin,  -,                       405",
        "PUT,    127.0.0.1:4280,         -,            -,                       405",
        "OPTIONS,127.0.0.1:4280,         -,            -,                       405"})
    void isLetInOrNot(String method, String host, String site, String origin, int status) {
        Headers headers = new Headers();
        add(headers, "Host", host);
        add(headers, "Sec-Fetch-Site", site);
        add(headers, "Origin", origin);
        assertEquals(status, door.refuse(method, URI.create("/now"), headers).map(Answer::status).orElse(Answer.OK));
    }

    private static void add(Headers headers, String name, String value) {
        if (value != null) {
            headers.add(name, value);
        }
    }

    @Test
    void oneHostOnly() {
        Headers headers = new Headers();
        headers.add("Host", "127.0.0.1:4280");
        headers.add("Host", "coins.example");
        assertEquals(Answer.FORBIDDEN, door.refuse("GET", URI.create("/now"), headers).orElseThrow().status());
    }

    /** RFC 9112, 3.2.2 (from memory): a whole address in the first line counts more than the header Host. */
    @ParameterizedTest
    @CsvSource({"http://127.0.0.1:4280/now, 200", "http://coins.example/now, 403", "http://127.0.0.1/now, 403", "//coins.example/now, 403",
        "http://a@127.0.0.1:4280/now, 403"})
    void theFirstLineNamesNoOtherHost(URI asked, int status) {
        Headers headers = new Headers();
        headers.add("Host", "127.0.0.1:4280");
        assertEquals(status, door.refuse("GET", asked, headers).map(Answer::status).orElse(Answer.OK));
    }

    @Test
    void errorsStandBeforeNotes() {
        List<Finding> found = List.of(finding("a.yaml", Severity.NOTE), finding("b.yaml", Severity.WARNING), finding("c.yaml", Severity.ERROR),
                finding("d.yaml", Severity.WARNING));
        assertEquals(List.of("c.yaml", "b.yaml", "d.yaml", "a.yaml"),
                ProofJson.worstFirst(Findings.of(found)).stream().map(finding -> finding.place().file()).toList());
    }

    private static Finding finding(String file, Severity severity) {
        return Finding.of(new Code("code", severity, "title", "why", "faulty", "mended"), Place.ofFile(file), "", "what", "remedy");
    }
}
