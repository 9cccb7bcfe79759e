package exergue.exchange.list;

/**
 * A file that lies beside the catalogue or in it.
 *
 * @param path as seen from the folder of the catalogue; it may lead out of it: {@code ../list.csv}
 */
public record NamedBytes(String path, byte[] bytes) {

    /** Larger than any list of coins. */
    public static final int MOST = 32 << 20;

    /** Without its folders. */
    public String name() {
        return path.substring(path.lastIndexOf('/') + 1);
    }
}
