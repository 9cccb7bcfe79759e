package exergue.photo.print;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Random;
import javax.imageio.ImageIO;

/** Photographs for tests, painted from shapes whose measures are known. Invented; the noise comes from a fixed seed. */
public final class PaintedCoin {

    private static final int SPECKS = 400;

    private final BufferedImage image;
    private Color metal = new Color(150, 140, 120);
    private int seed = 1;

    public PaintedCoin(int width, int height, Color ground) {
        this.image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(ground);
        pen.fillRect(0, 0, width, height);
        pen.dispose();
    }

    public PaintedCoin metal(Color colour) {
        metal = colour;
        return this;
    }

    /** An ellipse: whole axes in pixels, the first turned clockwise from upright. */
    public static Shape ellipse(double x, double y, double along, double across, double degrees) {
        return new AffineTransform(AffineTransform.getRotateInstance(Math.toRadians(degrees), x, y))
                .createTransformedShape(new Ellipse2D.Double(x - across / 2, y - along / 2, across, along));
    }

    /** The shape with a hole of this diameter in its middle. */
    public static Shape pierced(Shape coin, double diameter) {
        Area area = new Area(coin);
        area.subtract(new Area(ellipse(coin.getBounds2D().getCenterX(), coin.getBounds2D().getCenterY(), diameter, diameter, 0)));
        return area;
    }

    /** Metal with specks of other light, so that it is no even disc. */
    public PaintedCoin coin(Shape shape) {
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setColor(metal);
        pen.fill(shape);
        AffineTransform smaller = AffineTransform.getTranslateInstance(shape.getBounds2D().getCenterX(), shape.getBounds2D().getCenterY());
        smaller.scale(0.9, 0.9);
        smaller.translate(-shape.getBounds2D().getCenterX(), -shape.getBounds2D().getCenterY());
        pen.setClip(smaller.createTransformedShape(shape));
        Random chance = new Random(seed++);
        for (int i = 0; i < SPECKS; i++) {
            pen.setColor(chance.nextBoolean() ? metal.brighter() : metal.darker());
            pen.fillOval(chance.nextInt(image.getWidth()), chance.nextInt(image.getHeight()), 5, 5);
        }
        pen.dispose();
        return this;
    }

    /** The grain of a sensor over the whole picture: the same for every channel, with this standard deviation, of 255. */
    public PaintedCoin grain(double deviation) {
        Random chance = new Random(seed++);
        int[] row = new int[image.getWidth()];
        for (int y = 0; y < image.getHeight(); y++) {
            image.getRGB(0, y, row.length, 1, row, 0, row.length);
            for (int x = 0; x < row.length; x++) {
                int add = (int) Math.round(deviation * chance.nextGaussian());
                row[x] = added(row[x] >> 16 & 0xFF, add) << 16 | added(row[x] >> 8 & 0xFF, add) << 8 | added(row[x] & 0xFF, add);
            }
            image.setRGB(0, y, row.length, 1, row, 0, row.length);
        }
        return this;
    }

    private static int added(int sample, int more) {
        return Math.max(0, Math.min(255, sample + more));
    }

    public byte[] png() {
        return written("png");
    }

    public byte[] tiff() {
        return written("tiff");
    }

    public byte[] jpeg() {
        return JpegFile.of(image, 300);
    }

    private byte[] written(String format) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, format, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
