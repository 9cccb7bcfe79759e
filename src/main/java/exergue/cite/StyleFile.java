package exergue.cite;

import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import exergue.model.Written;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** A citation style from the catalogue's tree or from the program, looked over before the library gets it. */
final class StyleFile {

    private static final String DEFAULT = "exergue/styles/author-date.csl";

    /** Larger than any published style. In bytes. */
    private static final long MOST_BYTES = 512 * 1024;

    private StyleFile() { }

    /**
     * @param path in the tree
     * @param text empty where the style cannot be used; the findings say why
     */
    record Read(String path, Optional<String> text, Findings findings) { }

    static Read read(Optional<Written<String>> named, Tree tree) throws IOException {
        if (named.isEmpty() || named.get().value().isEmpty()) {
            return new Read(DEFAULT, Optional.of(own()), Findings.none());
        }
        String path = named.get().value();
        if (tree.size(path) > MOST_BYTES) {
            return fault(path, Finding.of(CiteCodes.STYLE_REFUSED, Place.ofFile(path), "",
                    "The style has " + tree.size(path) + " bytes; a citation style has at most " + MOST_BYTES + ".",
                    "Check that this is the right file."));
        }
        return looked(path, tree.read(path));
    }

    private static String own() throws IOException {
        try (InputStream in = StyleFile.class.getClassLoader().getResourceAsStream(DEFAULT)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static Read looked(String path, byte[] bytes) throws IOException {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            StyleLook look = new StyleLook(path);
            SAXParserFactory factory = SAXParserFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setFeature(javax.xml.XMLConstants.FEATURE_SECURE_PROCESSING, true);
            InputSource source = new InputSource(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
            source.setEncoding("UTF-8");
            factory.newSAXParser().parse(source, look);
            Optional<Finding> fault = look.fault();
            return fault.isPresent() ? fault(path, fault.get()) : new Read(path, Optional.of(text), Findings.none());
        } catch (CharacterCodingException e) {
            return fault(path, Finding.of(CiteCodes.NOT_A_STYLE, Place.ofFile(path), "", "The style is not saved as UTF-8.",
                    "Save it again with the encoding UTF-8."));
        } catch (SAXParseException e) {
            return fault(path, said(path, e));
        } catch (SAXException | ParserConfigurationException e) {
            throw new IllegalStateException("Java's own XML reader", e);
        }
    }

    private static Finding said(String path, SAXParseException e) {
        Place place = new Place(path, Math.max(0, e.getLineNumber()), Math.max(0, e.getColumnNumber()), 0);
        if (String.valueOf(e.getMessage()).contains("DOCTYPE")) {
            return Finding.of(CiteCodes.STYLE_REFUSED, new Place(path, place.line(), 0, 0), "",
                    "The style has a DOCTYPE, by which a file can reach other files. No citation style needs one.",
                    "Delete the lines from <!DOCTYPE to the > that ends it.");
        }
        return Finding.of(CiteCodes.NOT_A_STYLE, place, "", "Here the style stops being XML.",
                "Look at this line and those before: a tag is not closed, or a quotation mark is missing. If you never changed "
                        + "the file, fetch it anew.");
    }

    private static Read fault(String path, Finding finding) {
        return new Read(path, Optional.empty(), Findings.of(List.of(finding)));
    }
}
