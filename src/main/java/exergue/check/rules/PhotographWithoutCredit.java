package exergue.check.rules;

import exergue.check.ChapterPictures;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.PictureRights;
import java.util.List;
import java.util.stream.Stream;

/** A photograph is printed and nobody is thanked for it. */
public final class PhotographWithoutCredit implements Rule {

    static final Code CODE = new Code("photograph-without-credit", Severity.WARNING,
            "A photograph has no credit",
            "The list of credits names for every picture who took or lent it, the author’s own among them.",
            """
                    photograph: {obverse: photographs/lk-1-obv.jpg, permission: not needed}
                    """,
            """
                    photograph: {obverse: photographs/lk-1-obv.jpg, permission: not needed, credit: the author}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        Stream<Finding> ofCoins = catalogue.coins().stream().filter(coin -> coin.photograph()
                        .filter(photograph -> photograph.credit().isEmpty()).isPresent())
                .flatMap(coin -> PhotographWithoutPermission.first(coin.photograph().orElseThrow())
                        .map(path -> fault(path.place(), "photograph", "The photograph “" + path + "” of coin " + coin.id(), "")));
        Stream<Finding> ofChapters = ChapterPictures.without(catalogue, PictureRights::credit).stream().map(picture ->
                fault(picture.place(), "", "The picture “" + picture.path() + "”", " under pictures: in catalogue.yaml, with picture: "
                        + picture.path() + ","));
        return Stream.concat(ofCoins, ofChapters).toList();
    }

    private static Finding fault(Place place, String path, String picture, String where) {
        return Finding.of(CODE, place, path, picture + " has no credit.",
                "Write" + where + " credit: and whom to thank, as printed; for a picture of your own, your name.");
    }
}
