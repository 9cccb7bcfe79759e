package exergue.photo;

import exergue.photo.ReadPicture.Picture;
import exergue.photo.ReadPicture.Unreadable;
import java.util.OptionalDouble;

/** One file of a picture, read and measured; of which coin is not yet asked. */
public sealed interface Gauged {

    /**
     * @param width in pixels, upright
     * @param ppi   as the file says; see {@link Picture}
     */
    record Measured(int width, int height, ReadPicture.Kind kind, OptionalDouble ppi, Outlined outlined, ScaleBarRead bar) implements Gauged { }

    /** @param words as in {@link Unreadable} */
    record NotRead(ReadPicture.Reason reason, String words) implements Gauged { }

    /** What the bytes of a file show. The same bytes always give the same answer. */
    static Gauged of(byte[] bytes, Limits limits) {
        return of(PictureReader.read(bytes, limits));
    }

    private static Gauged of(ReadPicture read) {
        if (read instanceof Unreadable unreadable) {
            return new NotRead(unreadable.reason(), unreadable.words());
        }
        Picture picture = (Picture) read;
        Outlined outlined = Outliner.find(picture.raster());
        ScaleBarRead bar = ScaleBar.find(picture.raster());
        boolean onCoin = bar instanceof ScaleBarRead.Read asBar && outlined instanceof Outlined.Found found
                && found.outlines().stream().anyMatch(asBar::liesOn);
        return new Measured(picture.raster().width(), picture.raster().height(), picture.kind(), picture.ppi(), outlined,
                onCoin ? new ScaleBarRead.NotRead(ScaleBarRead.Reason.NONE) : bar);
    }
}
