package exergue.photo;

import java.util.List;
import java.util.OptionalDouble;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataFormatImpl;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * What a file says of itself beside its pixels.
 *
 * @param orientation how the pixels are to be turned, in the words of Java's neutral form of metadata: "Rotate90"
 * @param channels    of the file, alpha with them; 0 where it does not say
 * @param bits        of a sample, rounded up to whole bytes
 */
record FileFacts(String orientation, OptionalDouble ppi, int channels, int bits) {

    private static final double MM_PER_INCH = 25.4;
    private static final String NORMAL = "Normal";

    /** What programs write that know nothing of it. */
    private static final double NOT_KNOWN = 72;

    static FileFacts of(IIOMetadata metadata, ReadPicture.Format format) {
        if (metadata == null || !metadata.isStandardMetadataFormatSupported()) {
            return new FileFacts(NORMAL, OptionalDouble.empty(), 0, Byte.SIZE);
        }
        Element root = (Element) metadata.getAsTree(IIOMetadataFormatImpl.standardMetadataFormatName);
        String orientation = format == ReadPicture.Format.JPEG ? exchanged(value(root, "ImageOrientation"))
                : value(root, "ImageOrientation");
        String channels = value(root, "NumChannels");
        return new FileFacts(orientation.isEmpty() ? NORMAL : orientation,
                ppi(number(value(root, "HorizontalPixelSize")), number(value(root, "VerticalPixelSize"))),
                channels.isEmpty() ? 0 : Integer.parseInt(channels), bits(value(root, "BitsPerSample")));
    }

    /** One figure for each channel, or none. */
    private static int bits(String each) {
        int most = Byte.SIZE;
        for (String one : each.isBlank() ? new String[0] : each.strip().split("\\s+")) {
            most = Math.max(most, Integer.parseInt(one));
        }
        return (most + Byte.SIZE - 1) / Byte.SIZE * Byte.SIZE;
    }

    /** What the pixels of such a picture take while it is read: as they are, and for some kinds once more as red, green and blue. */
    long bytes(long pixels) {
        boolean plain = channels == 1 || channels == 3;
        return pixels * (Math.max(channels, 1) * (bits / Byte.SIZE) + (plain ? 0 : 3));
    }

    /** The reader of JPEG, unlike that of TIFF, calls EXIF's 5 and 7 each by the other's name. */
    private static String exchanged(String orientation) {
        return switch (orientation) {
            case "FlipHRotate90" -> "FlipVRotate90";
            case "FlipVRotate90" -> "FlipHRotate90";
            default -> orientation;
        };
    }

    private static OptionalDouble ppi(double across, double down) {
        boolean alike = across > 0 && Math.abs(across - down) < 0.001 * across;
        return alike && Math.abs(MM_PER_INCH / across - NOT_KNOWN) > 0.01 ? OptionalDouble.of(MM_PER_INCH / across)
                : OptionalDouble.empty();
    }

    private static double number(String text) {
        return text.isEmpty() ? 0 : Double.parseDouble(text);
    }

    private static String value(Element root, String name) {
        NodeList found = root.getElementsByTagName(name);
        Node node = found.getLength() == 0 ? null : found.item(0).getAttributes().getNamedItem("value");
        return node == null ? "" : node.getNodeValue();
    }

    /** As Java’s neutral metadata name the values of EXIF 2.32, tag 0x0112, in their order from 1; see {@link #upright}. */
    private static final List<String> ORIENTATIONS = List.of(NORMAL, "FlipH", "Rotate180", "FlipV", "FlipHRotate90", "Rotate270",
            "FlipVRotate90", "Rotate90");

    /** The same with what EXIF says of how the camera was held; any other figure than 1 to 8 says nothing. */
    FileFacts held(int exif) {
        return exif < 1 || exif > ORIENTATIONS.size() ? this : new FileFacts(ORIENTATIONS.get(exif - 1), ppi, channels, bits);
    }

    boolean isUpright() {
        return orientation.equals(NORMAL);
    }

    /**
     * Java's neutral metadata name what is to be done in flips and then turns against the clock; the values of EXIF 2.32,
     * tag 0x0112, are given beside each.
     */
    Raster upright(Raster raster) {
        return switch (orientation) {
            case "FlipH" -> raster.mirrored(); // 2
            case "Rotate180" -> raster.turned().turned(); // 3
            case "FlipV" -> raster.mirrored().turned().turned(); // 4
            case "FlipHRotate90" -> raster.mirrored().turned().turned().turned(); // 5
            case "Rotate270" -> raster.turned(); // 6
            case "FlipVRotate90" -> raster.mirrored().turned(); // 7
            case "Rotate90" -> raster.turned().turned().turned(); // 8
            default -> raster;
        };
    }
}
