package exergue;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.state.Concatenate;
import org.apache.pdfbox.contentstream.operator.state.Restore;
import org.apache.pdfbox.contentstream.operator.state.Save;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

/** The pictures of a PDF where they stand on paper, in the order in which they are printed. */
final class PrintedPictures extends PDFStreamEngine {

    private static final double MM = 25.4 / 72;

    /**
     * @param page  from 0
     * @param place on the page, in mm from its upper left corner
     * @param image its pixels
     */
    record Printed(int page, Rectangle2D place, BufferedImage image) {

        double mmPerPixel() {
            return place.getWidth() / image.getWidth();
        }
    }

    private final List<Printed> found = new ArrayList<>();
    private int number;
    private double height;

    private PrintedPictures() {
        addOperator(new Concatenate(this));
        addOperator(new Save(this));
        addOperator(new Restore(this));
    }

    static List<Printed> of(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PrintedPictures pictures = new PrintedPictures();
            for (PDPage page : document.getPages()) {
                pictures.height = page.getMediaBox().getHeight();
                pictures.processPage(page);
                pictures.number++;
            }
            return pictures.found;
        }
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        if (operator.getName().equals("Do") && getResources().getXObject((COSName) operands.get(0)) instanceof PDImageXObject image) {
            Matrix at = getGraphicsState().getCurrentTransformationMatrix();
            found.add(new Printed(number, new Rectangle2D.Double(at.getTranslateX() * MM,
                    (height - at.getTranslateY() - at.getScalingFactorY()) * MM, at.getScalingFactorX() * MM,
                    at.getScalingFactorY() * MM), image.getImage()));
        }
        super.processOperator(operator, operands);
    }
}
