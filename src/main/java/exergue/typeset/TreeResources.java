package exergue.typeset;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.extend.FSStreamFactory;
import exergue.files.Paths;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The only door through which the engine gets a file: photographs by {@code tree:/path}, files beside the templates
 * by {@code template:/name}. Whatever is not one of these two has no address at all.
 */
final class TreeResources implements FSStreamFactory {

    static final String TREE = "tree";
    static final String TEMPLATE = "template";
    private static final long MOST_BYTES = 128L << 20;

    private final TemplateFiles templates;
    private final exergue.files.Tree source;

    TreeResources(exergue.files.Tree source, TemplateFiles templates) {
        this.source = source;
        this.templates = templates;
    }

    /** The address of a file of the tree. */
    static String address(String path) {
        try {
            return new URI(TREE, null, "/" + path, null).toASCIIString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException("any path can be written as an address: " + path, e);
        }
    }

    /** The file of the tree that such an address names. */
    static String pathOf(String address) {
        return URI.create(address).getPath().substring(1);
    }

    /**
     * What an address in a page means.
     *
     * @param base address of the page or style sheet in which it stands
     * @return {@code tree:/…} or {@code template:/…}, or empty if it leads anywhere else
     */
    static Optional<String> resolve(String base, String address) {
        try {
            URI uri = new URI(address);
            URI whole = uri.isAbsolute() || base == null || base.isEmpty() ? uri : new URI(base).resolve(uri);
            return path(whole).map(path -> whole.getScheme() + ":/" + raw(path));
        } catch (URISyntaxException e) {
            return Optional.empty();
        }
    }

    private static String raw(String path) {
        return address(path).substring(TREE.length() + 2);
    }

    private static Optional<String> path(URI uri) {
        boolean ours = TREE.equals(uri.getScheme()) || TEMPLATE.equals(uri.getScheme());
        if (!ours || uri.getPath() == null || uri.getRawAuthority() != null || !uri.getPath().startsWith("/")) {
            return Optional.empty();
        }
        return Paths.inside(uri.getPath().substring(1));
    }

    /** Nothing for an address that is not ours or a file that is not there; the engine then says so. */
    @Override
    public FSStream getUrl(String address) {
        return read(address).<FSStream>map(Bytes::new).orElse(null);
    }

    private Optional<byte[]> read(String address) {
        try {
            URI uri = new URI(address);
            Optional<String> path = path(uri);
            if (path.isEmpty()) {
                return Optional.empty();
            }
            if (TEMPLATE.equals(uri.getScheme())) {
                return templates.bytes(path.get());
            }
            boolean readable = source.has(path.get()) && source.size(path.get()) <= MOST_BYTES;
            return readable ? Optional.of(source.read(path.get())) : Optional.empty();
        } catch (URISyntaxException | IOException e) {
            return Optional.empty();
        }
    }

    private record Bytes(byte[] bytes) implements FSStream {

        @Override
        public InputStream getStream() {
            return new ByteArrayInputStream(bytes);
        }

        @Override
        public Reader getReader() {
            return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
        }
    }
}
