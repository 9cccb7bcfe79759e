package exergue.typeset;

import exergue.edition.Book;
import exergue.model.Written;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;

/** What the file says of itself: title, authors, standards, page labels, identifier. No dates. */
final class Passport {

    private static final String PRODUCER = "Exergue";

    private Passport() { }

    /** @param origin what the source was at, if that is known */
    static void write(PDDocument document, Book book, SetPages pages, Stamp stamp, Optional<String> origin)
            throws IOException {
        write(document, book, pages, stamp, about(book) + origin.map(at -> "<dc:source>" + Markup.escape(at)
                + "</dc:source>\n").orElse("") + "<pdfuaid:part>1</pdfuaid:part>");
    }

    /** For pages without tags, which cannot keep PDF/UA; that nothing is trapped stands where a printer looks for it. */
    static void writeForPress(PDDocument document, Book book, SetPages pages, Stamp stamp) throws IOException {
        write(document, book, pages, stamp, about(book));
        document.getDocumentInformation().setTrapped("False");
    }

    private static void write(PDDocument document, Book book, SetPages pages, Stamp stamp, String properties)
            throws IOException {
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(book.title().title().value());
        if (!authors(book).isEmpty()) {
            information.setAuthor(authors(book));
        }
        information.setProducer(PRODUCER);
        document.setDocumentInformation(information);
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(xmp(properties).getBytes(StandardCharsets.UTF_8));
        document.getDocumentCatalog().setMetadata(metadata);
        document.getDocumentCatalog().setLanguage(book.language());
        label(document, pages);
        identify(document, stamp);
    }

    private static String authors(Book book) {
        return book.title().authors().stream().map(Written::value).collect(Collectors.joining(", "));
    }

    private static void label(PDDocument document, SetPages pages) throws IOException {
        PDPageLabels labels = new PDPageLabels(document);
        if (pages.front() > 0) {
            labels.setLabelItem(0, range(PDPageLabelRange.STYLE_ROMAN_LOWER));
        }
        if (pages.front() < pages.count()) {
            labels.setLabelItem(pages.front(), range(PDPageLabelRange.STYLE_DECIMAL));
        }
        document.getDocumentCatalog().setPageLabels(labels);
    }

    private static PDPageLabelRange range(String style) {
        PDPageLabelRange range = new PDPageLabelRange();
        range.setStyle(style);
        range.setStart(1);
        return range;
    }

    private static void identify(PDDocument document, Stamp stamp) {
        COSString identifier = new COSString(stamp.identifier());
        COSArray both = new COSArray();
        both.add(identifier);
        both.add(identifier);
        document.getDocument().getTrailer().setItem(COSName.ID, both);
    }

    private static String about(Book book) {
        String creator = authors(book).isEmpty() ? ""
                : "<dc:creator><rdf:Seq><rdf:li>" + Markup.escape(authors(book)) + "</rdf:li></rdf:Seq></dc:creator>\n";
        return "<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">" + Markup.escape(book.title().title().value())
                + "</rdf:li></rdf:Alt></dc:title>\n" + creator + "<dc:language><rdf:Bag><rdf:li>"
                + Markup.escape(book.language()) + "</rdf:li></rdf:Bag></dc:language>\n";
    }

    private static String xmp(String properties) {
        return String.format(Locale.ROOT, """
                <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
                 xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
                 xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
                <pdfaid:part>3</pdfaid:part><pdfaid:conformance>U</pdfaid:conformance>
                <dc:format>application/pdf</dc:format>
                %s
                <pdf:Producer>%s</pdf:Producer>
                </rdf:Description>
                %s</rdf:RDF></x:xmpmeta>
                <?xpacket end="r"?>
                """, properties, PRODUCER, EXTENSION);
    }

    /** PDF/A wants every name that is not its own explained; PDF/UA's identifier is one of them. */
    private static final String EXTENSION = """
            <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
             xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
             xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
            <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
            <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
            <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
            <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
            <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
            <pdfaProperty:name>part</pdfaProperty:name><pdfaProperty:valueType>Integer</pdfaProperty:valueType>
            <pdfaProperty:category>internal</pdfaProperty:category>
            <pdfaProperty:description>Part of the PDF/UA standard</pdfaProperty:description>
            </rdf:li></rdf:Seq></pdfaSchema:property>
            </rdf:li></rdf:Bag></pdfaExtension:schemas>
            </rdf:Description>
            """;
}
