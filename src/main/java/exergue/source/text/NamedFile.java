package exergue.source.text;

import static exergue.finding.Severity.ERROR;
import static exergue.finding.Severity.WARNING;

import exergue.files.Paths;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.finding.Place;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * A file of the tree that an entry or a chapter names.
 *
 * @param path     as written
 * @param place    where it is written
 * @param dataPath where that is in the data
 */
public record NamedFile(String path, Place place, String dataPath) {

    public static final Code PATH_LEADS_OUT = new Code("path-leads-out", ERROR, "A path leads out of the folder",
            "A catalogue is printed from its own folder alone, so that it is complete wherever it is copied, and so "
                    + "that a catalogue from somebody else cannot reach your other files or the internet.",
            "obverse: ../../pictures/lk-42.jpg", "obverse: photographs/lk-42.jpg");
    public static final Code MISSING_FILE = new Code("missing-file", ERROR, "A file that is named is not there",
            "The book cannot be set without it.",
            "body: [chapters/histroy.md]", "body: [chapters/history.md]");
    public static final Code MISSING_PHOTOGRAPH = new Code("missing-photograph", WARNING, "A photograph that is named is not there",
            "The book is set without it, and its place stays empty.",
            "obverse: photographs/lk-42-obv.JPG", "obverse: photographs/lk-42-obv.jpg");

    public static List<Code> codes() {
        return List.of(PATH_LEADS_OUT, MISSING_FILE, MISSING_PHOTOGRAPH);
    }

    /** The plain path inside the tree, if it is there; else the reason goes to the notebook, under {@code missing}. */
    public Optional<String> find(Predicate<String> isThere, Code missing, Set<String> files, Notebook notebook) {
        Optional<String> inside = Paths.inside(path);
        if (inside.isEmpty()) {
            notebook.add(Finding.of(PATH_LEADS_OUT, place, dataPath,
                    "“" + path + "” is not a path inside the folder of the catalogue.",
                    "Copy the file into the folder and write its path from there, with forward slashes."));
        } else if (!isThere.test(inside.get())) {
            notebook.add(Finding.of(missing, place, dataPath,
                    "There is no “" + path + "” in the folder of the catalogue.",
                    NearMiss.of(inside.get(), files).map(near -> "Did you mean “" + near + "”?")
                            .orElse("Check the spelling, small and capital letters included, or add the file.")));
            return Optional.empty();
        }
        return inside;
    }
}
