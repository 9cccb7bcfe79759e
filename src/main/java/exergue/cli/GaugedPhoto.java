package exergue.cli;

import exergue.files.Tree;
import exergue.photo.Gauged;
import exergue.photo.Limits;
import exergue.photo.PictureReader;
import exergue.photo.Raster;
import exergue.photo.ReadPicture;
import java.io.IOException;

/**
 * A photograph that was named on the command line.
 *
 * @param name   as it was named
 * @param inside its path in the catalogue’s folder; the name again where it lies outside
 * @param folder that it lies in
 * @param file   its name there
 */
record GaugedPhoto(String name, String inside, Tree folder, String file, Gauged gauged) {

    /** Its pixels, read anew: they are not kept. Only of one that was measured. */
    Raster raster() throws IOException {
        if (PictureReader.read(folder.read(file), Limits.USUAL) instanceof ReadPicture.Picture picture) {
            return picture.raster();
        }
        throw new IOException("the photograph “" + name + "” was changed meanwhile; measure it again");
    }
}
