package exergue.photo;

import java.util.ArrayList;
import java.util.List;

/**
 * A picture of moderate size, looked at in three ways: each channel as written, as the distance of each pixel from the plain ground,
 * and as how steeply it changes.
 *
 * @param expected what the ground would be, were nothing on it, in each channel
 * @param times what coordinates here are to be multiplied by to come back to the whole picture
 */
record Scene(List<Plane> written, List<Plane> expected, Ground ground, Plane distance, Plane steepness, int times) {

    /** Longest side that is worked on: a coin that fills it is then drawn to a hundredth of a per cent. */
    private static final int LONGEST = 1500;
    /** Measured on colour pictures: planes, masks and whatever is reckoned from them. */
    private static final long BYTES_A_PIXEL = 70;
    /** Blur against the grain of the sensor, in pixels, for a picture that has little. */
    static final double SOFT = 0.8;
    private static final double LITTLE_GRAIN = 0.008;
    private static final double SOFTER = 70;
    private static final double SOFTEST = 2;
    /** How much softer a picture is seen to tell sharp edges from soft ones. */
    private static final double OUT_OF_FOCUS = 4;
    /** Darker than this a ground shows no shadow. */
    private static final double SHOWS_SHADOW = 0.1;
    private static final double DEEPEST_SHADOW = 0.18;
    private static final double LIGHTEST_SHADOW = 0.95;
    private static final double SHADOW_COLOUR = 0.06;

    Scene {
        written = List.copyOf(written);
        expected = List.copyOf(expected);
    }

    static int reduction(Raster raster) {
        return Math.max(1, (Math.max(raster.width(), raster.height()) + LONGEST - 1) / LONGEST);
    }

    /** Bytes that looking for coins on a picture of this size takes, the picture itself apart. */
    static long memory(int width, int height) {
        long times = Math.max(1, (Math.max(width, height) + LONGEST - 1) / LONGEST);
        return (width / times + 1) * (height / times + 1) * BYTES_A_PIXEL;
    }

    static Scene of(Raster reduced, Ground ground, int times) {
        List<Plane> written = new ArrayList<>();
        List<Plane> expected = new ArrayList<>();
        Plane slopes = new Plane(reduced.width(), reduced.height());
        for (int c = 0; c < reduced.channels(); c++) {
            Plane one = reduced.plane(c);
            written.add(one);
            expected.add(ground.plane(c));
            one.blurred(soft(ground)).addSlopesTo(slopes);
        }
        return new Scene(written, expected, ground, distance(written, expected).blurred(soft(ground)), slopes.roots(reduced.channels()), times);
    }

    /** How far each pixel is from the ground: the root of the mean square over the channels. */
    private static Plane distance(List<Plane> written, List<Plane> expected) {
        Plane squares = new Plane(written.get(0).width(), written.get(0).height());
        for (int c = 0; c < written.size(); c++) {
            squares.addSquaresOf(written.get(c), expected.get(c));
        }
        return squares.roots(written.size());
    }

    private static double soft(Ground ground) {
        return Math.min(SOFTEST, SOFT + SOFTER * Math.max(0, ground.noise() - LITTLE_GRAIN));
    }

    /** Blur against grain, in pixels; the more of it, the fewer details of the edge can be trusted. */
    double soft() {
        return soft(ground);
    }

    /** A part of it, as if the picture ended there. */
    Scene part(int x, int y, int width, int height) {
        return new Scene(written.stream().map(plane -> plane.part(x, y, width, height)).toList(),
                expected.stream().map(plane -> plane.part(x, y, width, height)).toList(), ground,
                distance.part(x, y, width, height), steepness.part(x, y, width, height), times);
    }

    /** How steep the plain ground is by its noise alone: the median along the frame. */
    double steepOfGround() {
        List<Float> along = new ArrayList<>();
        for (int x = 2; x < width() - 2; x++) {
            along.add(steepness.at(x, 2));
            along.add(steepness.at(x, height() - 3));
        }
        for (int y = 2; y < height() - 2; y++) {
            along.add(steepness.at(2, y));
            along.add(steepness.at(width() - 3, y));
        }
        along.sort(null);
        return along.get(along.size() / 2);
    }

    /**
     * How much steeper each pixel is seen sharply than softly: much at the edge of a thing, which the lens alone blurs, and little at
     * that of its shadow, which runs out over many pixels.
     */
    Plane sharpness() {
        Plane softly = new Plane(width(), height());
        written.forEach(plane -> plane.blurred(OUT_OF_FOCUS * soft()).addSlopesTo(softly));
        return steepness.beyond(softly.roots(written.size()));
    }

    int width() {
        return distance.width();
    }

    int height() {
        return distance.height();
    }

    /** How light a pixel is as a part of the ground that would be there. */
    float shade(int x, int y) {
        double product = 0;
        double square = 0;
        for (int c = 0; c < written.size(); c++) {
            double lit = expected.get(c).at(x, y);
            product += written.get(c).at(x, y) * lit;
            square += lit * lit;
        }
        return (float) (product / Math.max(1e-9, square));
    }

    /** True for a pixel that could be the ground in a shadow: darker, of the same colour. */
    boolean likeShadow(int x, int y) {
        double square = 0;
        for (int c = 0; c < written.size(); c++) {
            square += expected.get(c).at(x, y) * expected.get(c).at(x, y);
        }
        double part = shade(x, y);
        if (square / written.size() < SHOWS_SHADOW * SHOWS_SHADOW || part > LIGHTEST_SHADOW || part < DEEPEST_SHADOW) {
            return false;
        }
        double apart = 0;
        for (int c = 0; c < written.size(); c++) {
            double other = written.get(c).at(x, y) - part * expected.get(c).at(x, y);
            apart += other * other;
        }
        return Math.sqrt(apart / square) < SHADOW_COLOUR;
    }
}
