package exergue.typeset;

import com.openhtmltopdf.pdfboxout.PageSupplier;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * The named properties of a page's marked content. The engine gives the ground of every box, drawn or not, properties
 * of its own: without this they are three quarters of all objects of a book, and looked through again for each new
 * one. Here the grounds of a page share one entry, which says as much: not text, but layout.
 */
final class Grounds extends COSDictionary {

    private static final COSName SHARED = COSName.getPDFName("Ground");

    private Grounds() {
        COSDictionary layout = new COSDictionary();
        layout.setItem(COSName.TYPE, COSName.getPDFName("Layout"));
        setItem(SHARED, layout);
    }

    /** New pages at the end of the document, with such properties. */
    static PageSupplier pages() {
        return (document, width, height, number, shadow) -> {
            COSDictionary resources = new COSDictionary();
            resources.setItem(COSName.PROPERTIES, new Grounds());
            PDPage page = new PDPage(new PDRectangle(width, height));
            page.setResources(new PDResources(resources));
            document.addPage(page);
            return page;
        };
    }

    /** Asked before properties are added; any but a ground's are always new. */
    @Override
    public boolean containsValue(Object properties) {
        return properties instanceof COSDictionary given && COSName.BACKGROUND.equals(given.getCOSName(COSName.TYPE));
    }

    @Override
    public COSName getKeyForValue(Object properties) {
        return containsValue(properties) ? SHARED : super.getKeyForValue(properties);
    }
}
