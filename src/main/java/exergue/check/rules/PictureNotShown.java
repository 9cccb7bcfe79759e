package exergue.check.rules;

import exergue.check.ChapterPictures;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Prose;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Somebody is named for a picture that the book does not have. */
public final class PictureNotShown implements Rule {

    private static final Code CODE = new Code("picture-not-shown", Severity.WARNING,
            "A picture is credited that no chapter shows",
            "Either the picture was taken out of its chapter, or the chapter shows another file, which then has no credit.",
            """
                    pictures:
                      - {picture: photographs/harbour.jpg, credit: Town Museum, permission: not needed}
                    """,
            """
                    ![The harbour from the mole](../photographs/harbour.jpg)
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        Set<String> shown = ChapterPictures.in(catalogue).map(Prose.Picture::path).collect(Collectors.toSet());
        return catalogue.apparatus().pictures().stream().map(rights -> rights.picture())
                .filter(picture -> !picture.value().isEmpty() && !shown.contains(picture.value()))
                .map(picture -> Finding.of(CODE, picture.place(), "pictures", "No chapter shows “" + picture + "”.",
                        "Show it in a chapter, name the file that is shown, or take the line away; "
                                + "photographs of coins have credit: and permission: in their entries.")).toList();
    }
}
