package exergue.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.net.httpserver.Headers;
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
        assertEquals(status, door.refuse(method, headers).map(Answer::status).orElse(Answer.OK));
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
        assertEquals(Answer.FORBIDDEN, door.refuse("GET", headers).orElseThrow().status());
    }
}
