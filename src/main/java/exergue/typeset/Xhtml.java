package exergue.typeset;

import exergue.finding.Finding;
import exergue.finding.Place;
import java.io.IOException;
import java.io.StringReader;
import java.util.Optional;
import java.util.function.Consumer;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** What a template has made, read as XHTML; entities of its own and document types are refused. */
final class Xhtml {

    private static final int SHOWN = 60;

    private Xhtml() { }

    static Optional<Document> read(String page, String template, Consumer<Finding> findings) throws IOException {
        try {
            DocumentBuilder reader = reader();
            reader.setErrorHandler(new Strict());
            return Optional.of(reader.parse(new InputSource(new StringReader(page))));
        } catch (SAXParseException e) {
            findings.accept(Finding.of(TypesetCodes.TEMPLATE_MARKUP, Place.ofFile(template), "",
                    "What this template makes is not well-formed near “" + near(page, e) + "”: " + e.getMessage(),
                    "Close every element in the right order, and write entities as numbers: &#160; for &nbsp;."));
        } catch (SAXException e) {
            findings.accept(Finding.of(TypesetCodes.TEMPLATE_MARKUP, Place.ofFile(template), "",
                    "What this template makes cannot be read: " + e.getMessage(),
                    "Compare it with the template of the same name that comes with the program."));
        }
        return Optional.empty();
    }

    private static DocumentBuilder reader() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setFeature("http://apache.org/xml/features/dom/defer-node-expansion", false);
            return factory.newDocumentBuilder();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("the platform's own reader knows these features", e);
        }
    }

    private static String near(String page, SAXParseException fault) {
        String line = page.lines().skip(Math.max(0, fault.getLineNumber() - 1L)).findFirst().orElse("").strip();
        int to = Math.min(line.length(), Math.max(SHOWN, fault.getColumnNumber()));
        return line.substring(Math.max(0, to - SHOWN), to);
    }

    private static final class Strict implements ErrorHandler {

        @Override
        public void warning(SAXParseException e) {
            // A warning changes nothing in the page.
        }

        @Override
        public void error(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXException {
            throw e;
        }
    }
}
