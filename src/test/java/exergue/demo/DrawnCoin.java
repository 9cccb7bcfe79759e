package exergue.demo;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.util.Random;

/** One invented coin: its flan, how well the dies hit it, and its metal. The same seed gives the same coin. */
final class DrawnCoin {

    /** 16 pixels to the millimetre are 406 to the inch. */
    static final double PIXELS_PER_MM = 16;
    private static final double MARGIN_MM = 0.6;
    private static final int HARMONICS = 7;

    private final double diameter;
    private final Color metal;
    private final Font face;
    private final double[] swell = new double[HARMONICS];
    private final double[] phase = new double[HARMONICS];
    private final Random chance;
    private final double scale;

    /** What is drawn on one side. */
    record Side(String motif, String legend, boolean dots, boolean mirrored) { }

    enum Color {
        SILVER(196, 194, 190), GOLD(222, 178, 84), COPPER_ALLOY(122, 104, 70), BILLON(150, 140, 124), LEAD(138, 140, 140);

        private final int red;
        private final int green;
        private final int blue;

        Color(int red, int green, int blue) {
            this.red = red;
            this.green = green;
            this.blue = blue;
        }
    }

    DrawnCoin(double diameter, Color metal, Font face, long seed) {
        this.diameter = diameter;
        this.metal = metal;
        this.face = face;
        this.chance = new Random(seed);
        for (int i = 0; i < HARMONICS; i++) {
            swell[i] = chance.nextGaussian() * 0.016 / (1 + i * 0.7);
            phase[i] = chance.nextDouble() * 2 * Math.PI;
        }
        double widest = 0;
        for (int degree = 0; degree < 180; degree++) {
            widest = Math.max(widest, edge(Math.toRadians(degree), 1) + edge(Math.toRadians(degree + 180), 1));
        }
        this.scale = diameter / widest;
    }

    /** Of the whole picture, in mm. */
    double width() {
        return pixels() / PIXELS_PER_MM;
    }

    private int pixels() {
        return (int) Math.ceil((diameter + 2 * MARGIN_MM) * PIXELS_PER_MM);
    }

    /** Distance of the flan's edge from its middle, in mm, in this direction. */
    private double edge(double turn, double times) {
        double edge = 1;
        for (int i = 0; i < HARMONICS; i++) {
            edge += swell[i] * Math.cos((i + 2) * turn + phase[i]);
        }
        return edge * times;
    }

    BufferedImage draw(Side side) {
        int size = pixels();
        Relief relief = new Relief(size);
        double die = diameter * PIXELS_PER_MM / 2 * 0.93;
        double across = size / 2.0 + chance.nextGaussian() * die * 0.035;
        double down = size / 2.0 + chance.nextGaussian() * die * 0.035;
        AffineTransform place = AffineTransform.getTranslateInstance(across, down);
        place.rotate(chance.nextGaussian() * 0.05);
        place.scale(die, die);
        engrave(relief, side, place, die);
        relief.wear(PIXELS_PER_MM * 0.03);
        roughen(relief, size);
        return lit(relief, side, size);
    }

    private void engrave(Relief relief, Side side, AffineTransform place, double die) {
        double motif = side.legend().isEmpty() ? 0.98 : 0.76;
        AffineTransform middle = new AffineTransform(place);
        middle.scale(motif, motif);
        for (Motif.Layer layer : Motif.of(side.motif()).layers()) {
            relief.raise(layer.shape(), middle, layer.height() * 0.8, layer.soft() * die * motif * 0.6);
        }
        if (side.dots()) {
            int count = (int) (2 * Math.PI * 0.93 / 0.075);
            for (int dot = 0; dot < count; dot++) {
                double turn = 2 * Math.PI * dot / count;
                relief.raise(new Ellipse2D.Double(0.93 * Math.cos(turn) - 0.022, 0.93 * Math.sin(turn) - 0.022, 0.044, 0.044),
                        place, 0.45, die * 0.008);
            }
        }
        double step = Math.min(0.30, 4.6 / Math.max(1, side.legend().length()));
        double turn = -Math.PI / 2 - step * (side.legend().length() - 1) / 2;
        for (char letter : side.legend().toCharArray()) {
            AffineTransform spot = new AffineTransform(place);
            spot.rotate(turn + Math.PI / 2);
            spot.translate(0, -0.77);
            spot.scale(0.0020, 0.0020);
            var glyph = face.deriveFont(Font.BOLD, 100f).createGlyphVector(new FontRenderContext(null, true, true),
                    String.valueOf(letter));
            var bounds = glyph.getOutline().getBounds2D();
            spot.translate(-bounds.getCenterX(), 0);
            relief.raise(glyph.getOutline(), spot, 0.55, die * 0.006);
            turn += step;
        }
    }

    /** Flow of the metal, pits and scratches. */
    private void roughen(Relief relief, int size) {
        for (double grain : new double[] {3.2, 1.1, 0.35}) {
            int cells = (int) (size / (grain * PIXELS_PER_MM)) + 3;
            double[] grid = new double[cells * cells];
            for (int i = 0; i < grid.length; i++) {
                grid[i] = chance.nextGaussian();
            }
            double strength = 0.05 * Math.pow(grain / 3.2, 0.75);
            for (int i = 0; i < size * size; i++) {
                double x = i % size / (grain * PIXELS_PER_MM);
                double y = i / size / (grain * PIXELS_PER_MM);
                relief.add(i % size, i / size, strength * between(grid, cells, x, y));
            }
        }
    }

    private static double between(double[] grid, int cells, double x, double y) {
        int left = (int) x;
        int top = (int) y;
        double right = smooth(x - left);
        double below = smooth(y - top);
        double upper = grid[top * cells + left] * (1 - right) + grid[top * cells + left + 1] * right;
        double lower = grid[(top + 1) * cells + left] * (1 - right) + grid[(top + 1) * cells + left + 1] * right;
        return upper * (1 - below) + lower * below;
    }

    private static double smooth(double part) {
        double p = Math.min(1, Math.max(0, part));
        return p * p * (3 - 2 * p);
    }

    private BufferedImage lit(Relief relief, Side side, int size) {
        double[] inside = new double[size * size];
        for (int i = 0; i < inside.length; i++) {
            double x = i % size + 0.5 - size / 2.0;
            double y = i / size + 0.5 - size / 2.0;
            double turn = Math.atan2(y, side.mirrored() ? -x : x);
            inside[i] = edge(turn, scale * PIXELS_PER_MM) - Math.hypot(x, y);
            double rim = smooth((inside[i] + 0.1 * PIXELS_PER_MM) / (0.55 * PIXELS_PER_MM));
            relief.add(i % size, i / size, 1.0 * rim);
        }
        float[] standing = relief.standing((int) (0.5 * PIXELS_PER_MM));
        BufferedImage picture = new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < inside.length; i++) {
            double light = relief.light(i % size, i / size, PIXELS_PER_MM * 0.62);
            double tone = light * (0.94 + 0.55 * Math.max(-0.45, Math.min(0.30, standing[i])));
            double cover = Math.min(1, Math.max(0, inside[i] + 0.5));
            picture.setRGB(i % size, i / size, mixed(tone, cover));
        }
        return picture;
    }

    private int mixed(double tone, double cover) {
        return shade(metal.red, tone, cover) << 16 | shade(metal.green, tone, cover) << 8 | shade(metal.blue, tone, cover);
    }

    private static int shade(int colour, double tone, double cover) {
        double lit = tone <= 1 ? colour * tone : colour + (255 - colour) * Math.min(1, (tone - 1) * 1.6);
        return (int) Math.round(Math.min(255, Math.max(0, lit)) * cover + 255 * (1 - cover));
    }
}
