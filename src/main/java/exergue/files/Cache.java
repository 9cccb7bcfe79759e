package exergue.files;

import java.util.Optional;

/**
 * Keeps what took long to make, by a name that says everything it was made from. Whatever is in it can be made again, so it
 * may forget anything at any time, and a cache that cannot be read or written is one that forgets everything. Safe to use
 * from several threads.
 */
public interface Cache {

    /** @param name small letters, digits and hyphens */
    Optional<byte[]> get(String name);

    void put(String name, byte[] bytes);
}
