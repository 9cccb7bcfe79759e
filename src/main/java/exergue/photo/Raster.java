package exergue.photo;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.ComponentSampleModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.DataBufferInt;
import java.awt.image.DataBufferUShort;
import java.util.Arrays;

/**
 * The pixels of a picture: grey, or red, green and blue, 8 or 16 bits, as they are written in sRGB. Parts and turned
 * pictures share the samples of the whole; nothing can change them.
 */
public final class Raster {

    private static final float FULL_8 = 255f;
    private static final float FULL_16 = 65535f;
    private static final int TO_16 = 257;

    private final int width;
    private final int height;
    private final Samples samples;

    /**
     * @param eight   samples of 8 bits, or null
     * @param sixteen samples of 16 bits, where there are none of 8
     * @param start   where the upper left pixel begins
     * @param across  from a pixel to the next one to the right
     * @param down    from a pixel to the one below
     * @param bands   where the samples of one pixel stand, from its beginning: one, or red, green, blue
     */
    private record Samples(byte[] eight, short[] sixteen, int start, int across, int down, int[] bands) { }

    private Raster(int width, int height, Samples samples) {
        this.width = width;
        this.height = height;
        this.samples = samples;
    }

    /** Grey samples from 0 to 1, row by row. */
    public static Raster grey(int width, int height, float[] values) {
        return of(width, height, 1, values);
    }

    /** Red, green and blue samples from 0 to 1, pixel by pixel, row by row. */
    public static Raster rgb(int width, int height, float[] values) {
        return of(width, height, 3, values);
    }

    private static Raster of(int width, int height, int channels, float[] values) {
        short[] sixteen = new short[width * height * channels];
        for (int i = 0; i < sixteen.length; i++) {
            sixteen[i] = (short) Math.round(Math.min(1, Math.max(0, values[i])) * FULL_16);
        }
        return new Raster(width, height, new Samples(null, sixteen, 0, channels, width * channels, bands(channels)));
    }

    /** A copy of this image; what is transparent in it is laid on white. */
    public static Raster of(BufferedImage image) {
        return flat(copy(image));
    }

    /** As {@link #of(BufferedImage)}, but without a copy where none is needed: nobody else may keep the image. */
    static Raster over(BufferedImage image) {
        return isFlat(image) ? flat(image) : flat(copy(image));
    }

    private static boolean isFlat(BufferedImage image) {
        ColorSpace space = image.getColorModel().getColorSpace();
        return image.getRaster().getSampleModel() instanceof ComponentSampleModel
                && image.getRaster().getNumDataElements() == image.getColorModel().getNumColorComponents()
                && image.getRaster().getDataBuffer().getNumBanks() == 1
                && (image.getRaster().getDataBuffer() instanceof DataBufferByte
                        || image.getRaster().getDataBuffer() instanceof DataBufferUShort)
                && (space.isCS_sRGB() || space.getType() == ColorSpace.TYPE_GRAY);
    }

    private static BufferedImage copy(BufferedImage image) {
        boolean grey = image.getColorModel().getColorSpace().getType() == ColorSpace.TYPE_GRAY && !image.getColorModel().hasAlpha()
                && isFlat(image);
        if (grey) {
            BufferedImage same = new BufferedImage(image.getColorModel(), image.getRaster().createCompatibleWritableRaster(),
                    false, null);
            same.setData(image.getRaster());
            return same;
        }
        BufferedImage flat = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
        if (image.getColorModel().hasAlpha() || image.getColorModel().getColorSpace().isCS_sRGB()) {
            var pen = flat.createGraphics();
            pen.setColor(java.awt.Color.WHITE);
            pen.fillRect(0, 0, flat.getWidth(), flat.getHeight());
            pen.drawImage(image, 0, 0, null);
            pen.dispose();
        } else {
            new ColorConvertOp(null).filter(image, flat);
        }
        return flat;
    }

    private static Raster flat(BufferedImage image) {
        ComponentSampleModel model = (ComponentSampleModel) image.getRaster().getSampleModel();
        DataBuffer buffer = image.getRaster().getDataBuffer();
        int start = buffer.getOffset() - image.getRaster().getSampleModelTranslateX() * model.getPixelStride()
                - image.getRaster().getSampleModelTranslateY() * model.getScanlineStride();
        return new Raster(image.getWidth(), image.getHeight(),
                new Samples(buffer instanceof DataBufferByte bytes ? bytes.getData() : null,
                        buffer instanceof DataBufferUShort shorts ? shorts.getData() : null,
                        start, model.getPixelStride(), model.getScanlineStride(), model.getBandOffsets()));
    }

    private static int[] bands(int channels) {
        return channels == 1 ? new int[] {0} : new int[] {0, 1, 2};
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** 1 for grey; 3 for red, green and blue. */
    public int channels() {
        return samples.bands.length;
    }

    /** 8 or 16. */
    public int bits() {
        return samples.eight != null ? 8 : 16;
    }

    /** One sample as it is written, 0 to 1. A grey picture has the same in every channel. */
    public float at(int x, int y, int channel) {
        int[] bands = samples.bands;
        int at = samples.start + x * samples.across + y * samples.down + bands[bands.length == 1 ? 0 : channel];
        return samples.eight != null ? (samples.eight[at] & 0xFF) / FULL_8 : (samples.sixteen[at] & 0xFFFF) / FULL_16;
    }

    /** How light a pixel is, 0 to 1, still as written: the luma of ITU-R BT.709. */
    public float grey(int x, int y) {
        return channels() == 1 ? at(x, y, 0) : 0.2126f * at(x, y, 0) + 0.7152f * at(x, y, 1) + 0.0722f * at(x, y, 2);
    }

    /** One channel as it is written, 0 to 1. */
    Plane plane(int channel) {
        Plane plane = new Plane(width, height);
        int channels = channels();
        int[] row = new int[width * channels];
        for (int y = 0; y < height; y++) {
            row(y, 0, width, row);
            for (int x = 0; x < width; x++) {
                plane.set(x, y, row[x * channels + channel] / FULL_16);
            }
        }
        return plane;
    }

    /** The part that begins at x, y. */
    public Raster part(int x, int y, int partWidth, int partHeight) {
        if (x < 0 || y < 0 || partWidth < 1 || partHeight < 1 || x + partWidth > width || y + partHeight > height) {
            throw new IllegalArgumentException(x + ", " + y + ", " + partWidth + " × " + partHeight + " is not inside "
                    + width + " × " + height);
        }
        Samples s = samples;
        return new Raster(partWidth, partHeight,
                new Samples(s.eight, s.sixteen, s.start + x * s.across + y * s.down, s.across, s.down, s.bands));
    }

    /** The same, left and right exchanged. */
    public Raster mirrored() {
        Samples s = samples;
        return new Raster(width, height,
                new Samples(s.eight, s.sixteen, s.start + (width - 1) * s.across, -s.across, s.down, s.bands));
    }

    /** The same, turned a quarter clockwise. */
    public Raster turned() {
        Samples s = samples;
        return new Raster(height, width,
                new Samples(s.eight, s.sixteen, s.start + (height - 1) * s.down, -s.down, s.across, s.bands));
    }

    /** Smaller: each pixel is the mean of so many by so many. What is left over at the right and below is dropped. */
    public Raster reduced(int times) {
        if (times == 1) {
            return this;
        }
        int newWidth = Math.max(1, width / times);
        int newHeight = Math.max(1, height / times);
        int channels = channels();
        int wide = Math.min(times, width);
        int high = Math.min(times, height);
        short[] means = new short[newWidth * newHeight * channels];
        long[] sums = new long[newWidth * channels];
        for (int y = 0; y < newHeight; y++) {
            Arrays.fill(sums, 0);
            for (int below = 0; below < high; below++) {
                addUp(y * times + below, wide, sums);
            }
            long count = (long) wide * high;
            for (int i = 0; i < sums.length; i++) {
                means[y * sums.length + i] = (short) ((sums[i] + count / 2) / count);
            }
        }
        return new Raster(newWidth, newHeight, new Samples(null, means, 0, channels, sums.length, bands(channels)));
    }

    /** Adds so many neighbouring pixels of a row, 0 to 65535, to each sum. Every pixel of a large picture passes here. */
    private void addUp(int y, int pixels, long[] sums) {
        int channels = samples.bands.length;
        int across = samples.across;
        for (int c = 0; c < channels; c++) {
            int at = samples.start + y * samples.down + samples.bands[c];
            for (int to = c; to < sums.length; to += channels) {
                int sum = 0;
                if (samples.eight != null) {
                    for (int i = 0; i < pixels; i++, at += across) {
                        sum += samples.eight[at] & 0xFF;
                    }
                    sum *= TO_16;
                } else {
                    for (int i = 0; i < pixels; i++, at += across) {
                        sum += samples.sixteen[at] & 0xFFFF;
                    }
                }
                sums[to] += sum;
            }
        }
    }

    /**
     * The samples of one row, pixel by pixel, 0 to 65535: for whoever looks at every pixel of a large picture.
     *
     * @param from   its first pixel
     * @param to     the one after its last
     * @param filled has room for all channels of all these pixels
     */
    public void row(int y, int from, int to, int[] filled) {
        int channels = samples.bands.length;
        for (int c = 0; c < channels; c++) {
            int at = samples.start + from * samples.across + y * samples.down + samples.bands[c];
            if (samples.eight != null) {
                eight(at, to - from, c, filled);
            } else {
                sixteen(at, to - from, c, filled);
            }
        }
    }

    private void eight(int first, int count, int channel, int[] filled) {
        byte[] all = samples.eight;
        int across = samples.across;
        int channels = samples.bands.length;
        int at = first;
        for (int i = 0; i < count; i++) {
            filled[i * channels + channel] = (all[at] & 0xFF) * TO_16;
            at += across;
        }
    }

    private void sixteen(int first, int count, int channel, int[] filled) {
        short[] all = samples.sixteen;
        int across = samples.across;
        int channels = samples.bands.length;
        int at = first;
        for (int i = 0; i < count; i++) {
            filled[i * channels + channel] = all[at] & 0xFFFF;
            at += across;
        }
    }

    /** A picture of 8 bits for drawing on and writing; grey or RGB. */
    public BufferedImage image() {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                pixels[y * width + x] = byteAt(x, y, 0) << 16 | byteAt(x, y, 1) << 8 | byteAt(x, y, 2);
            }
        }
        return image;
    }

    private int byteAt(int x, int y, int channel) {
        return Math.round(at(x, y, channel) * FULL_8);
    }
}
