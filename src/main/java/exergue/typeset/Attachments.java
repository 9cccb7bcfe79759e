package exergue.typeset;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** Puts data files into the PDF as PDF/A-3 wants them: named, typed, and said to be the data of this book. */
final class Attachments {

    private static final COSName RELATIONSHIP = COSName.getPDFName("AFRelationship");
    private static final COSName ASSOCIATED = COSName.getPDFName("AF");

    private Attachments() { }

    static void embed(PDDocument document, List<Attachment> attachments) throws IOException {
        if (attachments.isEmpty()) {
            return;
        }
        Map<String, PDComplexFileSpecification> named = new LinkedHashMap<>();
        COSArray associated = new COSArray();
        for (Attachment attachment : attachments) {
            PDComplexFileSpecification file = specification(document, attachment);
            named.put(attachment.name(), file);
            associated.add(file);
        }
        PDEmbeddedFilesNameTreeNode files = new PDEmbeddedFilesNameTreeNode();
        files.setNames(named);
        PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
        names.setEmbeddedFiles(files);
        document.getDocumentCatalog().setNames(names);
        document.getDocumentCatalog().getCOSObject().setItem(ASSOCIATED, associated);
    }

    private static PDComplexFileSpecification specification(PDDocument document, Attachment attachment)
            throws IOException {
        PDEmbeddedFile stream = new PDEmbeddedFile(document, new ByteArrayInputStream(attachment.bytes()),
                COSName.FLATE_DECODE);
        stream.setSubtype(attachment.type());
        stream.setSize(attachment.bytes().length);
        PDComplexFileSpecification file = new PDComplexFileSpecification();
        file.setFile(attachment.name());
        file.setFileUnicode(attachment.name());
        file.setFileDescription(attachment.description());
        file.setEmbeddedFile(stream);
        file.setEmbeddedFileUnicode(stream);
        file.getCOSObject().setItem(RELATIONSHIP, COSName.getPDFName("Data"));
        return file;
    }
}
