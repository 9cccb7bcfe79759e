package exergue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Compares a text with the file that holds what was approved; {@code -Dgolden.update} writes the file and fails. */
public final class Golden {

    private Golden() { }

    public static void check(Path approved, String actual) {
        try {
            if (System.getProperty("golden.update") != null) {
                update(approved, actual);
            }
            assertEquals(Files.exists(approved) ? Files.readString(approved) : "(there is no such file)", actual,
                    approved + "; -Dgolden.update writes it anew");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void update(Path approved, String actual) throws IOException {
        if (!Files.exists(approved) || !Files.readString(approved).equals(actual)) {
            Files.createDirectories(approved.getParent());
            Files.writeString(approved, actual);
            fail(approved + " was written anew: read it, and run the tests again without -Dgolden.update");
        }
    }
}
