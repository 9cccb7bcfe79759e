package exergue.demo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** A picture as the bytes of a file that says how many pixels go to the inch. */
final class PictureFile {

    private PictureFile() { }

    static byte[] jpeg(BufferedImage picture, int perInch, float quality) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(quality);
        how.setProgressiveMode(ImageWriteParam.MODE_DISABLED);
        IIOMetadata data = writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(picture), how);
        String format = "javax_imageio_jpeg_image_1.0";
        IIOMetadataNode root = (IIOMetadataNode) data.getAsTree(format);
        IIOMetadataNode header = (IIOMetadataNode) root.getElementsByTagName("app0JFIF").item(0);
        header.setAttribute("resUnits", "1");
        header.setAttribute("Xdensity", Integer.toString(perInch));
        header.setAttribute("Ydensity", Integer.toString(perInch));
        data.setFromTree(format, root);
        return bytes(writer, picture, data, how);
    }

    static byte[] png(BufferedImage picture, int perInch) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        IIOMetadata data = writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(picture), how);
        IIOMetadataNode size = new IIOMetadataNode("pHYs");
        String perMetre = Long.toString(Math.round(perInch / 0.0254));
        size.setAttribute("pixelsPerUnitXAxis", perMetre);
        size.setAttribute("pixelsPerUnitYAxis", perMetre);
        size.setAttribute("unitSpecifier", "meter");
        IIOMetadataNode root = new IIOMetadataNode("javax_imageio_png_1.0");
        root.appendChild(size);
        data.mergeTree("javax_imageio_png_1.0", root);
        return bytes(writer, picture, data, how);
    }

    private static byte[] bytes(ImageWriter writer, BufferedImage picture, IIOMetadata data, ImageWriteParam how) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ImageOutputStream sink = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(sink);
            writer.write(null, new IIOImage(picture, null, data), how);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
