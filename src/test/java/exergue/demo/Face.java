package exergue.demo;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.Random;

/** One side of a coin as a surface: edge, ground, relief, wear, corrosion. Heights in pixels, the table lies at 0. */
final class Face {

    final Field height;
    final Field cover;
    final Field inward;
    final double pixelsPerMm;
    private final AffineTransform place;
    private final Noise noise;
    private final long seed;

    /** @param place from millimetres on the flan to pixels of the picture */
    Face(Flan flan, AffineTransform place, int width, int height, long seed) {
        this.place = place;
        this.pixelsPerMm = Math.sqrt(Math.abs(place.getDeterminant()));
        Shape shape = place.createTransformedShape(flan.shape());
        this.cover = Field.covered(shape, width, height);
        this.inward = cover.inward();
        this.height = new Field(width, height);
        this.noise = new Noise(seed);
        this.seed = seed;
    }

    /** @param dieRadius in mm */
    void strike(Die die, Strike strike, double dieRadius, double rough) {
        AffineTransform there = new AffineTransform(place);
        there.translate(strike.across() * dieRadius, strike.down() * dieRadius);
        there.scale(dieRadius, dieRadius);
        Field relief = new Field(height.width, height.height);
        die.engrave(new Graver(relief, there));
        Field soft = relief.blurred(pixelsPerMm * 0.022);
        worn(soft, strike);
        ground(die, there, dieRadius, strike);
        for (int i = 0; i < height.at.length; i++) {
            if (cover.at[i] > 0) {
                height.at[i] += (float) (soft.at[i] * dieRadius * pixelsPerMm * met(i, strike));
            }
        }
        texture(strike, rough);
        edge();
    }

    /** High points are rubbed down first, and lose their detail. */
    private void worn(Field relief, Strike strike) {
        double top = 0.17 - 0.115 * strike.wear();
        double knee = 0.03;
        Field smooth = relief.blurred(pixelsPerMm * (0.05 + 0.30 * strike.wear()));
        for (int i = 0; i < relief.at.length; i++) {
            double high = Math.min(1, Math.max(0, (smooth.at[i] - 0.25 * top) / (0.7 * top)));
            double rubbed = strike.wear() * (0.25 + 0.75 * high);
            double mixed = relief.at[i] * (1 - rubbed) + smooth.at[i] * rubbed;
            double above = (mixed - top) / knee;
            relief.at[i] = (float) (above > 20 ? top : mixed - knee * Math.log1p(Math.exp(above)));
        }
    }

    private double met(int pixel, Strike strike) {
        if (strike.weak() == 0) {
            return 1;
        }
        double x = (pixel % height.width - height.width / 2.0) / (pixelsPerMm * 10);
        double y = (pixel / height.width - height.height / 2.0) / (pixelsPerMm * 10);
        double turn = Math.toRadians(strike.weakSide() - 90);
        double toward = x * Math.cos(turn) + y * Math.sin(turn) + 0.22 * noise.rough(x * 2, y * 2, 2);
        double weak = Math.min(1, Math.max(0, (toward - 0.30) / 0.5));
        return 1 - strike.weak() * weak;
    }

    private void ground(Die die, AffineTransform there, double dieRadius, Strike strike) {
        double half = 0.74;
        Shape square = there.createTransformedShape(Graver.corners(-half, -half, half, -half + 0.02, half - 0.02, half, -half, half - 0.03));
        Field sunk = die.ground == Die.Ground.INCUSE_SQUARE ? Field.covered(square, height.width, height.height).blurred(pixelsPerMm * 0.10) : null;
        double middleX = there.getTranslateX();
        double middleY = there.getTranslateY();
        for (int i = 0; i < height.at.length; i++) {
            double x = (i % height.width + 0.5 - middleX) / (dieRadius * pixelsPerMm);
            double y = (i / height.width + 0.5 - middleY) / (dieRadius * pixelsPerMm);
            double far = Math.hypot(x, y);
            double level = strike.hollow() * Math.min(1.3, far * far);
            double beyond = Math.min(1, Math.max(0, (far - 1.03) / 0.06));
            level += 0.13 * beyond * beyond * (3 - 2 * beyond);
            if (sunk != null) {
                level += (1 - sunk.at[i]) * (0.62 + 0.16 * noise.rough(x * 2.2, y * 2.2, 3));
            }
            height.at[i] += (float) (level * pixelsPerMm);
        }
    }

    /** Waves of the flan, flow towards the edge, grain, pits, scratches. */
    private void texture(Strike strike, double rough) {
        Noise fine = new Noise(seed * 7 + 1);
        Noise where = new Noise(seed * 13 + 2);
        int octaves = pixelsPerMm < 25 ? 2 : 4;
        for (int i = 0; i < height.at.length; i++) {
            if (cover.at[i] == 0) {
                continue;
            }
            double x = (i % height.width - height.width / 2.0) / pixelsPerMm;
            double y = (i / height.width - height.height / 2.0) / pixelsPerMm;
            double turn = Math.atan2(y, x);
            double far = Math.hypot(x, y);
            double nearRim = Math.min(1, Math.max(0, 1 - inward.at[i] / (3.2 * pixelsPerMm)));
            double level = 0.075 * noise.at(x / 4.2, y / 4.2) + 0.018 * noise.rough(x / 1.1, y / 1.1, octaves == 4 ? 3 : 2);
            level += 0.013 * nearRim * fine.at(turn * 38, far * 0.8);
            level += (0.0045 + 0.014 * rough) * fine.rough(x * 3.1, y * 3.1, octaves);
            double eaten = strike.pits() * (0.55 + 0.9 * where.rough(x / 3, y / 3, 2));
            if (eaten > 0) {
                double pit = fine.rough(x * 1.5 + 40, y * 1.5, octaves) - 0.42 + 0.42 * eaten;
                level -= pit > 0 ? Math.min(0.16, pit * 0.55) * Math.min(1, eaten * 1.6) : 0;
                level += 0.020 * eaten * fine.rough(x * 2.2, y * 2.2 + 30, octaves - 1);
            }
            height.at[i] += (float) (level * pixelsPerMm);
        }
        scratches();
    }

    private void scratches() {
        Random chance = new Random(seed);
        Graver knife = new Graver(height, place);
        for (int i = 0; i < 9; i++) {
            double reach = 0.40 * Math.min(height.width, height.height) / pixelsPerMm;
            double x = chance.nextGaussian() * reach * 0.5;
            double y = chance.nextGaussian() * reach * 0.5;
            double turn = chance.nextDouble() * Math.PI;
            double length = (0.6 + 2.4 * chance.nextDouble()) * reach / 8;
            knife.groove(0.05 + 0.04 * chance.nextDouble(), (0.010 + 0.022 * chance.nextDouble()) * pixelsPerMm, x, y,
                    x + Math.cos(turn) * length, y + Math.sin(turn) * length + 0.1, x + 2 * Math.cos(turn) * length, y + 2 * Math.sin(turn) * length);
        }
    }

    /** The shoulder of the flan: a quarter of a circle, uneven as hammered edges are. */
    private void edge() {
        Field softer = inward.blurred(pixelsPerMm * 0.03);
        for (int i = 0; i < height.at.length; i++) {
            if (cover.at[i] == 0) {
                height.at[i] = 0;
                continue;
            }
            double x = (i % height.width) / pixelsPerMm;
            double y = (i / height.width) / pixelsPerMm;
            double wide = pixelsPerMm * (0.50 + 0.16 * noise.at(x / 1.4 + 7, y / 1.4));
            double share = Math.min(1, softer.at[i] / wide);
            height.at[i] += (float) (pixelsPerMm * 1.6 - wide * 0.95 * (1 - Math.sqrt(share * (2 - share))));
        }
    }

    /** Cuts, flaws, solder: work on the finished surface, in millimetres. */
    Graver onTop() {
        return new Graver(height, place);
    }

    double millimetre() {
        return pixelsPerMm;
    }
}
