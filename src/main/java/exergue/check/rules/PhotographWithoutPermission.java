package exergue.check.rules;

import exergue.check.ChapterPictures;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.PictureRights;
import exergue.model.Written;
import java.util.List;
import java.util.stream.Stream;

/** A photograph is printed and nobody is said to allow it. */
public final class PhotographWithoutPermission implements Rule {

    static final Code CODE = new Code("photograph-without-permission", Severity.WARNING,
            "A photograph has no permission",
            "A publisher must be able to show for every picture who allows it to be printed. Where nobody need be asked, "
                    + "because the author took it or it is free, the entry says so, so that it cannot have been forgotten.",
            """
                    photograph: {obverse: photographs/lk-1-obv.jpg, credit: Town Museum}
                    """,
            """
                    photograph: {obverse: photographs/lk-1-obv.jpg, credit: Town Museum, permission: not needed}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        Stream<Finding> ofCoins = catalogue.coins().stream().filter(coin -> coin.photograph()
                        .filter(photograph -> photograph.permission().isEmpty()).isPresent())
                .flatMap(coin -> first(coin.photograph().orElseThrow())
                        .map(path -> fault(path.place(), "photograph", "The photograph “" + path + "” of coin " + coin.id(), "")));
        Stream<Finding> ofChapters = ChapterPictures.without(catalogue, PictureRights::permission).stream().map(picture ->
                fault(picture.place(), "", "The picture “" + picture.path() + "”", " under pictures: in catalogue.yaml, with picture: "
                        + picture.path() + ","));
        return Stream.concat(ofCoins, ofChapters).toList();
    }

    private static Finding fault(Place place, String path, String picture, String where) {
        return Finding.of(CODE, place, path, picture + " has no permission.",
                "Write" + where + " permission: and who gives it, as the list of credits should say it; or permission: "
                        + Coin.Photograph.NOT_NEEDED + ".");
    }

    static Stream<Written<String>> first(Coin.Photograph photograph) {
        return photograph.obverse().or(photograph::reverse).stream();
    }
}
