package exergue.photo.print;

import exergue.photo.ReadPicture;

/**
 * A picture that is printed whole.
 *
 * @param fault   why it cannot be opened, as the end of a sentence; empty if it can
 * @param copied  true where it cannot be printed as it is: one that a camera wrote lying on its side, a JPEG in the inks of a printer
 * @param width   in pixels, upright
 * @param height  likewise
 */
record Whole(String fault, boolean copied, int width, int height, boolean grey) {

    private static final int FIGURES = 4;

    static Whole of(ReadPicture read) {
        if (read instanceof ReadPicture.Unreadable unreadable) {
            return new Whole(unreadable.words(), false, 0, 0, false);
        }
        ReadPicture.Picture picture = (ReadPicture.Picture) read;
        return new Whole("", picture.kind().format() == ReadPicture.Format.JPEG && !picture.asItIs()
                || picture.kind().format() == ReadPicture.Format.PNG && picture.turned(), picture.raster().width(),
                picture.raster().height(), picture.raster().channels() == 1);
    }

    /** @param text as {@link #text} gives it */
    static Whole of(String text) {
        String[] parts = text.split(" ", FIGURES + 1);
        return new Whole(parts[FIGURES], Boolean.parseBoolean(parts[0]), Integer.parseInt(parts[1]), Integer.parseInt(parts[2]),
                Boolean.parseBoolean(parts[FIGURES - 1]));
    }

    /** For the cache. */
    String text() {
        return copied + " " + width + " " + height + " " + grey + " " + fault;
    }
}
