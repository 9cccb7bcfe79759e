package exergue.typeset;

import exergue.files.Tree;
import exergue.photo.PictureReader;
import exergue.photo.PictureSize;
import java.io.IOException;
import java.util.Optional;

/**
 * How large a picture of a chapter is printed: no larger than its pixels allow at the resolution that printers ask for,
 * see {@link PressCheck#PHOTOGRAPH}. The page engine by itself takes 96 pixels for an inch, three times as large.
 */
final class ChapterPicture {

    /** Of the page engine, as CSS has it. */
    private static final int PIXELS_AN_INCH = 96;
    /** Those of page.css for pictures in text, 140 and 180 mm: a picture with pixels for more is as large as they allow. */
    private static final int WIDEST = 529;
    private static final int HIGHEST = 680;

    private ChapterPicture() { }

    /** In pixels of the page engine; empty where the style sheet alone decides, or the file cannot be read. */
    static Optional<Integer> width(Tree source, String path) {
        try {
            return PictureReader.size(source.read(path)).flatMap(ChapterPicture::width);
        } catch (IOException e) {
            return Optional.empty(); // what the engine cannot show either becomes a finding there
        }
    }

    static Optional<Integer> width(PictureSize size) {
        int width = Math.max(1, size.width() * PIXELS_AN_INCH / PressCheck.PHOTOGRAPH);
        int height = size.height() * PIXELS_AN_INCH / PressCheck.PHOTOGRAPH;
        return width <= WIDEST && height <= HIGHEST ? Optional.of(width) : Optional.empty();
    }
}
