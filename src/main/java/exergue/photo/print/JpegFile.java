package exergue.photo.print;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.w3c.dom.Element;

/** A picture as a JPEG file for print: grey or RGB, little compressed, with a colour for every pixel. */
final class JpegFile {

    private static final float QUALITY = 0.95f;
    private static final String TREE = "javax_imageio_jpeg_image_1.0";
    private static final String JAVAS_OWN = "com.sun.imageio.";

    private JpegFile() { }

    /** @param ppi pixels an inch, for programs that show the file alone */
    static byte[] of(BufferedImage image, int ppi) {
        ImageWriter writer = writer();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            IIOMetadata metadata = writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), param);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, adapted(metadata, ppi)), param);
        } catch (IOException e) {
            throw new UncheckedIOException("memory can be written to", e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    /** The one that comes with Java, whichever others are there, so that the bytes are the same everywhere. */
    private static ImageWriter writer() {
        Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName("jpeg");
        while (writers.hasNext()) {
            ImageWriter writer = writers.next();
            if (writer.getClass().getName().startsWith(JAVAS_OWN)) {
                return writer;
            }
        }
        throw new IllegalStateException("Java has no writer of JPEG");
    }

    private static IIOMetadata adapted(IIOMetadata metadata, int ppi) throws IIOInvalidTreeException {
        IIOMetadataNode root = (IIOMetadataNode) metadata.getAsTree(TREE);
        Element jfif = (Element) root.getElementsByTagName("app0JFIF").item(0);
        jfif.setAttribute("resUnits", "1");
        jfif.setAttribute("Xdensity", String.valueOf(ppi));
        jfif.setAttribute("Ydensity", String.valueOf(ppi));
        Element luma = (Element) root.getElementsByTagName("componentSpec").item(0);
        luma.setAttribute("HsamplingFactor", "1"); // else one colour would do for four pixels
        luma.setAttribute("VsamplingFactor", "1");
        metadata.setFromTree(TREE, root);
        return metadata;
    }
}
