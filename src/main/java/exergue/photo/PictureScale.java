package exergue.photo;

/**
 * How large a picture is in life.
 *
 * @param pixelsPerMm above 0
 */
public record PictureScale(double pixelsPerMm, Source source) {

    private static final double MM_PER_INCH = 25.4;

    /** Where a scale comes from, the surest first. */
    public enum Source {
        SCALE_BAR("the scale bar"), DECLARED_WIDTH("the width that the entry gives"),
        PIXELS_PER_INCH("the pixels to the inch that the file gives"), RECORDED_DIAMETER("the recorded diameter");

        private final String words;

        Source(String words) {
            this.words = words;
        }

        /** With its article: "the scale bar". */
        public String words() {
            return words;
        }
    }

    public static PictureScale of(ScaleBarRead.Read bar) {
        return new PictureScale(bar.pixelsPerMm(), Source.SCALE_BAR);
    }

    /** Right for a scan; what a camera writes there is only a wish how large to print. */
    public static PictureScale ofPpi(double ppi) {
        return new PictureScale(ppi / MM_PER_INCH, Source.PIXELS_PER_INCH);
    }

    /** Of a whole picture of so many pixels whose width stands for so many millimetres. */
    public static PictureScale ofWidth(int pixels, double mm) {
        return new PictureScale(pixels / mm, Source.DECLARED_WIDTH);
    }

    /** Such that the coin has its recorded diameter along the line on which that was taken. */
    public static PictureScale ofDiameter(Outline outline, double mm, DiameterLine line) {
        return new PictureScale(line.on(outline) / mm, Source.RECORDED_DIAMETER);
    }

    /** The outline in millimetres. */
    public Outline life(Outline pixels) {
        return pixels.times(1 / pixelsPerMm);
    }
}
