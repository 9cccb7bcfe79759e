package exergue.source.shape;

import exergue.finding.Code;
import exergue.finding.NearMiss;
import exergue.model.Written;
import exergue.source.text.NamedFile;
import exergue.source.yaml.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Texts that name files of the tree. What is bound is the plain path inside the tree, and it is there. */
public final class PathTexts {

    /** The parts Exergue makes itself. */
    public static final List<String> PARTS = List.of("title", "imprint", "contents", "lists", "methods", "catalogue", "finds",
            "works", "abbreviations", "concordances", "indexes", "credits", "plates");

    public static final Text<Written<String>> PHOTOGRAPH = new Text<>("path of a picture", List.of(), "", false,
            (scalar, site) -> existing(scalar, site, site.desk().files()::contains, NamedFile.MISSING_PHOTOGRAPH),
            (site, place) -> new Written<>("", place));

    public static final Text<Written<String>> FOLDER = new Text<>("path of a folder", List.of(), "", false,
            (scalar, site) -> existing(scalar, site, path -> isFolder(path, site), NamedFile.MISSING_FILE),
            (site, place) -> new Written<>("", place));

    /** Any file of the tree. */
    public static final Text<Written<String>> FILE = new Text<>("path of a file", List.of(), "", false,
            (scalar, site) -> existing(scalar, site, site.desk().files()::contains, NamedFile.MISSING_FILE),
            (site, place) -> new Written<>("", place));

    /** A citation style. */
    public static final Text<Written<String>> STYLE = new Text<>("path of a citation style", List.of(), ".+\\.csl", false,
            (scalar, site) -> existing(scalar, site, site.desk().files()::contains, NamedFile.MISSING_FILE),
            (site, place) -> new Written<>("", place));

    public static final Text<Written<String>> PART = new Text<>("part or path of a chapter", List.of(),
            "(" + String.join("|", PARTS) + "|.+\\.md)", false, PathTexts::part, (site, place) -> new Written<>("", place));

    private PathTexts() { }

    private static boolean isFolder(String path, Site site) {
        return site.desk().files().stream().anyMatch(file -> file.startsWith(path + "/"));
    }

    private static Optional<Written<String>> existing(Scalar scalar, Site site, Predicate<String> isThere, Code missing) {
        return new NamedFile(scalar.text(), scalar.place(), site.path())
                .find(isThere, missing, site.desk().files(), site.desk().notebook())
                .map(path -> Texts.written(scalar, path));
    }

    private static Optional<Written<String>> part(Scalar scalar, Site site) {
        if (PARTS.contains(scalar.text())) {
            return Optional.of(Texts.written(scalar, scalar.text()));
        }
        if (scalar.text().endsWith(".md")) {
            return existing(scalar, site, site.desk().files()::contains, NamedFile.MISSING_FILE);
        }
        List<String> known = new ArrayList<>(PARTS);
        site.desk().files().stream().filter(file -> file.endsWith(".md")).forEach(known::add);
        site.report(ShapeCodes.UNKNOWN_PART, scalar.place(), "“" + scalar.text() + "” is not a part of the book.",
                NearMiss.question(scalar.text(), known)
                        + "The parts are " + String.join(", ", PARTS) + "; a chapter is named by its path: chapters/history.md.");
        return Optional.empty();
    }
}
