package exergue.photo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Pictures with what was measured drawn on them, side by side, so that a person can see whether it is right. */
public final class Annotation {

    private static final String FACE = "/exergue/fonts/GentiumBookPlus-Regular.ttf";
    private static final int TALLEST = 900;
    private static final Color EDGE = new Color(0xD5, 0x00, 0x6D);
    private static final Color GREATEST = new Color(0x00, 0x5A, 0xB5);
    private static final Color LEAST = new Color(0xE6, 0x6B, 0x00);
    private static final float FINE = 1.6f;

    private final Graphics2D pen;
    private final Font face;
    private final double times;

    private Annotation(Graphics2D pen, Font face, double times) {
        this.pen = pen;
        this.face = face;
        this.times = times;
    }

    /** One picture with the outlines found on it. @param scale empty where lengths are only known in pixels */
    public record Sheet(Raster raster, List<Outline> outlines, ScaleBarRead bar, Optional<PictureScale> scale) {
        public Sheet {
            outlines = List.copyOf(outlines);
        }
    }

    /** A PNG file. Outlines are drawn in red, greatest diameters in blue, least in orange, a scale bar that was read in blue. */
    public static byte[] png(List<Sheet> sheets) throws IOException {
        List<BufferedImage> drawn = new ArrayList<>();
        for (Sheet sheet : sheets) {
            drawn.add(drawn(sheet));
        }
        BufferedImage all = new BufferedImage(drawn.stream().mapToInt(BufferedImage::getWidth).sum(),
                drawn.stream().mapToInt(BufferedImage::getHeight).max().orElse(1), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = all.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, all.getWidth(), all.getHeight());
        int x = 0;
        for (BufferedImage image : drawn) {
            pen.drawImage(image, x, 0, null);
            x += image.getWidth();
        }
        pen.dispose();
        return PngFile.of(all);
    }

    private static BufferedImage drawn(Sheet sheet) throws IOException {
        BufferedImage whole = sheet.raster().image();
        double times = Math.min(2, TALLEST / (double) whole.getHeight());
        BufferedImage image = new BufferedImage((int) Math.ceil(whole.getWidth() * times), (int) Math.ceil(whole.getHeight() * times),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.drawImage(whole, AffineTransform.getScaleInstance(times, times), null);
        Annotation annotation = new Annotation(pen, face().deriveFont((float) Math.max(13, image.getHeight() / 32.0)), times);
        sheet.outlines().forEach(outline -> annotation.draw(outline, sheet.scale()));
        if (sheet.bar() instanceof ScaleBarRead.Read bar) {
            annotation.line(bar.from(), bar.to(), GREATEST);
            annotation.label(bar.divisions() + " mm", bar.to(), GREATEST);
        }
        pen.dispose();
        return image;
    }

    private static Font face() throws IOException {
        try (InputStream in = Annotation.class.getResourceAsStream(FACE)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (FontFormatException e) {
            throw new IOException("the face that is shipped cannot be used: " + FACE, e);
        }
    }

    private void draw(Outline outline, Optional<PictureScale> scale) {
        pen.setStroke(new BasicStroke(FINE));
        pen.setColor(EDGE);
        pen.draw(path(outline.edge()));
        outline.holes().forEach(hole -> pen.draw(path(hole)));
        line(outline.greatest().from(), outline.greatest().to(), GREATEST);
        line(outline.least().from(), outline.least().to(), LEAST);
        label(length(outline.greatest(), scale), outline.greatest().to(), GREATEST);
        label(length(outline.least(), scale), outline.least().to(), LEAST);
    }

    private static String length(Caliper caliper, Optional<PictureScale> scale) {
        return scale.map(s -> String.format(Locale.ROOT, "%.1f mm", caliper.length() / s.pixelsPerMm()))
                .orElseGet(() -> String.format(Locale.ROOT, "%.0f px", caliper.length()));
    }

    private Path2D path(Ring ring) {
        Path2D path = new Path2D.Double();
        path.moveTo(ring.at(0).x() * times, ring.at(0).y() * times);
        for (int i = 1; i < ring.size(); i++) {
            path.lineTo(ring.at(i).x() * times, ring.at(i).y() * times);
        }
        path.closePath();
        return path;
    }

    private void line(Point from, Point to, Color colour) {
        pen.setStroke(new BasicStroke(FINE));
        pen.setColor(colour);
        pen.draw(new Line2D.Double(from.x() * times, from.y() * times, to.x() * times, to.y() * times));
    }

    /** Words at a place, kept inside the picture, with white about them so that they are read on any coin. */
    private void label(String words, Point at, Color colour) {
        TextLayout layout = new TextLayout(words, face, pen.getFontRenderContext());
        var clip = pen.getDeviceConfiguration().getBounds();
        double x = Math.max(2, Math.min(clip.width - layout.getAdvance() - 2, at.x() * times - layout.getAdvance() / 2));
        double y = Math.max(layout.getAscent() + 2, Math.min(clip.height - layout.getDescent() - 2, at.y() * times));
        var shape = layout.getOutline(AffineTransform.getTranslateInstance(x, y));
        pen.setStroke(new BasicStroke(4));
        pen.setColor(Color.WHITE);
        pen.draw(shape);
        pen.setColor(colour);
        pen.fill(shape);
    }
}
