package exergue.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** A picture as the bytes of a PNG file. */
public final class PngFile {

    private PngFile() { }

    /** @throws IOException never, as long as there is memory */
    public static byte[] of(BufferedImage picture) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageIO.write(picture, "png", out);
        }
        return bytes.toByteArray();
    }
}
