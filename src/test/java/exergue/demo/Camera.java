package exergue.demo;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferUShort;
import java.util.Random;

/** From light to a file's pixels: backdrop and shadow, the softness of a lens, the grain of a sensor, the curve of sRGB. */
final class Camera {

    private final int finer;
    private final double soft;
    private final double grain;
    private final long seed;

    /**
     * @param finer how many times finer than the picture the light was drawn
     * @param soft  blur of the lens in pixels of the picture
     * @param grain noise, in levels of 255
     */
    Camera(int finer, double soft, double grain, long seed) {
        this.finer = finer;
        this.soft = soft;
        this.grain = grain;
        this.seed = seed;
    }

    /** Light of the whole picture, three fields, blurred and at the picture's own size. */
    Field[] expose(Photo photo, Backdrop backdrop, double pixelsPerMm) {
        Field shadow = backdrop.shadow() > 0 ? shadow(photo.cover(), backdrop, pixelsPerMm) : null;
        Field[] light = new Field[3];
        for (int channel = 0; channel < 3; channel++) {
            Field all = new Field(photo.cover().width, photo.cover().height);
            for (int i = 0; i < all.at.length; i++) {
                double fall = (i % all.width / (double) all.width + i / all.width / (double) all.height) / 2;
                double behind = backdrop.channel(channel) * (1 - backdrop.fall() * fall) * (shadow == null ? 1 : 1 - shadow.at[i]);
                double cover = photo.cover().at[i];
                all.at[i] = (float) (cover == 0 ? behind : photo.channel(channel).at[i] * cover + behind * (1 - cover));
            }
            light[channel] = smaller(soft > 0 ? all.blurred(soft * finer) : all);
        }
        return light;
    }

    private static Field shadow(Field cover, Backdrop backdrop, double pixelsPerMm) {
        Field soft = cover.blurred(backdrop.soft() * pixelsPerMm);
        Field near = cover.blurred(backdrop.soft() * pixelsPerMm * 0.3);
        Field shadow = new Field(cover.width, cover.height);
        double off = backdrop.away() * pixelsPerMm;
        for (int y = 0; y < cover.height; y++) {
            for (int x = 0; x < cover.width; x++) {
                double far = soft.between(x + 0.5 - off * 0.62, y + 0.5 - off * 0.79);
                double close = near.between(x + 0.5 - off * 0.25, y + 0.5 - off * 0.32);
                shadow.at[y * cover.width + x] = (float) (backdrop.shadow() * (0.65 * far + 0.35 * close));
            }
        }
        return shadow;
    }

    private Field smaller(Field fine) {
        if (finer == 1) {
            return fine;
        }
        Field small = new Field(fine.width / finer, fine.height / finer);
        for (int y = 0; y < small.height; y++) {
            for (int x = 0; x < small.width; x++) {
                double sum = 0;
                for (int part = 0; part < finer * finer; part++) {
                    sum += fine.at[(y * finer + part / finer) * fine.width + x * finer + part % finer];
                }
                small.at[y * small.width + x] = (float) (sum / (finer * finer));
            }
        }
        return small;
    }

    BufferedImage develop(Field[] light) {
        Random chance = new Random(seed);
        BufferedImage picture = new BufferedImage(light[0].width, light[0].height, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < light[0].at.length; i++) {
            double noise = grain == 0 ? 0 : chance.nextGaussian() * grain;
            int rgb = 0;
            for (Field channel : light) {
                double level = 255 * curve(channel.at[i]) + noise;
                rgb = rgb << 8 | (int) Math.round(Math.max(0, Math.min(255, level)));
            }
            picture.setRGB(i % picture.getWidth(), i / picture.getWidth(), rgb);
        }
        return picture;
    }

    /** Grey, of 16 bits. */
    BufferedImage developDeep(Field[] light) {
        Random chance = new Random(seed);
        BufferedImage picture = new BufferedImage(light[0].width, light[0].height, BufferedImage.TYPE_USHORT_GRAY);
        short[] levels = ((DataBufferUShort) picture.getRaster().getDataBuffer()).getData();
        for (int i = 0; i < levels.length; i++) {
            double grey = 0.2126 * light[0].at[i] + 0.7152 * light[1].at[i] + 0.0722 * light[2].at[i];
            double level = 65535 * curve(grey) + chance.nextGaussian() * grain * 257;
            levels[i] = (short) Math.round(Math.max(0, Math.min(65535, level)));
        }
        return picture;
    }

    /** The curve of sRGB (IEC 61966-2-1, from memory), with a shoulder so that nothing burns out. */
    static double curve(double light) {
        double rolled = light < 0.72 ? Math.max(0, light) : 0.72 + 0.28 * (1 - Math.exp(-(light - 0.72) / 0.28));
        return rolled <= 0.0031308 ? 12.92 * rolled : 1.055 * Math.pow(rolled, 1 / 2.4) - 0.055;
    }
}
