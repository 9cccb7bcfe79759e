package exergue.proof;

import java.nio.charset.StandardCharsets;

/** What the browser gets. @param type with its character set, if it is text */
record Answer(int status, String type, byte[] bytes) {

    static final int OK = 200;
    static final int BAD_REQUEST = 400;
    static final int FORBIDDEN = 403;
    static final int NOT_FOUND = 404;
    static final int NOT_ALLOWED = 405;
    /** Was there, and will not come back: pages from before a change. */
    static final int GONE = 410;
    static final int FAULT = 500;

    static Answer json(String text) {
        return new Answer(OK, "application/json", text.getBytes(StandardCharsets.UTF_8));
    }

    static Answer png(byte[] bytes) {
        return new Answer(OK, "image/png", bytes);
    }

    static Answer refusal(int status, String sentence) {
        return new Answer(status, "text/plain; charset=utf-8", (sentence + "\n").getBytes(StandardCharsets.UTF_8));
    }
}
