package exergue.typeset;

import com.openhtmltopdf.css.style.CalculatedStyle;
import com.openhtmltopdf.layout.LayoutContext;
import com.openhtmltopdf.pdfboxout.PdfBoxImage;
import com.openhtmltopdf.pdfboxout.PdfBoxImageElement;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.InlineLayoutBox;
import com.openhtmltopdf.render.PageBox;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** Every picture of a book that is laid out, with its size and place on the sheet. */
final class PictureFinder {

    private final List<PageBox> pages;
    private final LayoutContext context;
    private final float dots;
    private final List<PlacedPicture> found = new ArrayList<>();

    private PictureFinder(PdfBoxRenderer laidOut) {
        this.pages = laidOut.getRootBox().getLayer().getPages();
        this.context = laidOut.getSharedContext().newLayoutContextInstance();
        this.dots = laidOut.getDotsPerPoint();
    }

    static List<PlacedPicture> find(PdfBoxRenderer laidOut) {
        PictureFinder finder = new PictureFinder(laidOut);
        finder.look(laidOut.getRootBox());
        return List.copyOf(finder.found);
    }

    private void look(Box box) {
        if (box instanceof BlockBox block && block.getReplacedElement() instanceof PdfBoxImageElement element
                && element.getImage() instanceof PdfBoxImage image && image.getXObject() != null
                && image.getUri().startsWith(TreeResources.TREE + ":")) {
            found.add(placed(block, image));
        }
        if (box instanceof InlineLayoutBox inline) {
            for (Object child : inline.getInlineChildren()) {
                if (child instanceof Box nested) {
                    look(nested);
                }
            }
        }
        for (int i = 0; i < box.getChildCount(); i++) {
            look(box.getChild(i));
        }
    }

    private PlacedPicture placed(BlockBox box, PdfBoxImage image) {
        PDImageXObject pixels = image.getXObject();
        int number = pageAt(box.getAbsY());
        PageBox page = pages.get(number);
        float width = box.getContentWidth() / dots;
        float height = box.getHeight() / dots;
        float left = (box.getAbsX() + page.getMarginBorderPadding(context, CalculatedStyle.LEFT)) / dots;
        float top = (box.getAbsY() - page.getTop() + page.getMarginBorderPadding(context, CalculatedStyle.TOP)) / dots;
        return new PlacedPicture(TreeResources.pathOf(image.getUri()), number, pixels.getWidth(), pixels.getHeight(),
                width, height, left, page.getWidth(context) / dots - left - width, top,
                page.getHeight(context) / dots - top - height, pixels.getBitsPerComponent(), colours(pixels));
    }

    private static int colours(PDImageXObject pixels) {
        try {
            return pixels.getColorSpace().getNumberOfComponents();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private int pageAt(int y) {
        int page = 0;
        while (page + 1 < pages.size() && pages.get(page + 1).getTop() <= y) {
            page++;
        }
        return page;
    }
}
