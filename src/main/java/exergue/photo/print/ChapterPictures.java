package exergue.photo.print;

import exergue.files.Cache;
import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.model.Catalogue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Pictures in chapters: printed as they are, but each opened once to see that it can be. The page engine would leave it out in silence.
 * It knows nothing either of what a camera notes of how it was held: a picture that lies on its side is printed upright from a copy.
 */
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

    /** @param copies what stands in the place of these pictures, by their paths */
    record Looked(List<Finding> findings, Map<String, Cut> copies) {
        Looked {
            findings = List.copyOf(findings);
            copies = Map.copyOf(copies);
        }
    }

    /** @throws IOException if a picture cannot be read from the disk */
    Looked look(Catalogue catalogue) throws IOException {
        List<Finding> findings = new ArrayList<>();
        Map<String, Cut> copies = new TreeMap<>();
        try {
            catalogue.chapters().values().stream().flatMap(chapter -> chapter.pictures()).filter(picture -> source.has(picture.path()))
                    .forEach(picture -> {
                        String fault = look(picture.path(), copies);
                        if (!fault.isEmpty()) {
                            findings.add(finding(picture.path(), picture.place(), fault));
                        }
                    });
            return new Looked(findings, copies);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static Finding finding(String path, Place place, String words) {
        return Finding.of(PrintCodes.UNPRINTABLE, place, "", "The picture “" + path + "” cannot be opened: " + words + ".", REMEDY);
    }

    /** Its fault, or nothing. */
    private String look(String path, Map<String, Cut> copies) {
        try {
            Negative negative = new Negative(path, source, cache, opener);
            try {
                Whole whole = negative.whole();
                if (whole.copied()) {
                    copies.put(path, negative.copy(whole));
                    negative.develop(copies.get(path));
                }
                return whole.fault();
            } finally {
                negative.putAway();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
