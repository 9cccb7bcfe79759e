package exergue.typeset.web;

import java.io.IOException;

/** Takes the files of the folder one after the other. */
@FunctionalInterface
public interface Sink {

    /** @param path relative to the folder, with forward slashes */
    void write(String path, byte[] bytes) throws IOException;
}
