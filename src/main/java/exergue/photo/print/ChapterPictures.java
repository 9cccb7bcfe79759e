package exergue.photo.print;

import exergue.files.Cache;
import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.model.Catalogue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/** Pictures in chapters: printed as they are, but each opened once to see that it can be. The page engine would leave it out in silence. */
final class ChapterPictures {

    private static final String REMEDY = "Copy it anew from where it came; if it is too large, save it with fewer pixels.";

    private final Tree source;
    private final Cache cache;
    private final Opener opener;

    ChapterPictures(Tree source, Cache cache, Opener opener) {
        this.source = source;
        this.cache = cache;
        this.opener = opener;
    }

    /** @throws IOException if a picture cannot be read from the disk */
    List<Finding> check(Catalogue catalogue) throws IOException {
        try {
            return catalogue.chapters().values().stream().flatMap(chapter -> chapter.pictures())
                    .flatMap(picture -> fault(picture.path()).map(words -> finding(picture.path(), picture.place(), words)).stream()).toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static Finding finding(String path, Place place, String words) {
        return Finding.of(PrintCodes.UNPRINTABLE, place, "", "The picture “" + path + "” cannot be opened: " + words + ".", REMEDY);
    }

    /** Nothing is said here of a file that is not there. */
    private Optional<String> fault(String path) {
        if (!source.has(path)) {
            return Optional.empty();
        }
        try {
            Negative negative = new Negative(path, source, cache, opener);
            try {
                return negative.fault();
            } finally {
                negative.putAway();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
