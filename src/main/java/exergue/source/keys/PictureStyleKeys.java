package exergue.source.keys;

import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.PictureStyle;
import exergue.model.PictureStyle.Colours;
import exergue.model.PictureStyle.Enlarged;
import exergue.model.PictureStyle.Ground;
import exergue.model.PrintScale;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.ShapeCodes;
import exergue.source.shape.Site;
import exergue.source.shape.Text;
import exergue.source.shape.Texts;
import exergue.source.yaml.Scalar;
import java.util.List;
import java.util.Optional;

/** {@code pictures} of the house style. */
final class PictureStyleKeys {

    /** "2:1" */
    static final Text<PrintScale> SCALE = new Text<>("scale", List.of(), PrintScale.PATTERN, false, PictureStyleKeys::scale,
            (site, place) -> PrintScale.LIFE);

    private static final String NO_BAR = "none";
    private static final List<String> BARS = List.of(NO_BAR, "10 mm", "20 mm", "30 mm", "50 mm");

    static final Block<PictureStyle> BLOCK = block();

    private PictureStyleKeys() { }

    private static Block<PictureStyle> block() {
        Keys keys = new Keys("the pictures of coins");
        Key<Written<Ground>> ground = keys.or("ground", Texts.oneOf(List.of(Ground.values()), Ground::words), "cut out",
                "Coins cut out, on white; or pictures with the ground on which the coins were photographed.", "as photographed");
        Key<Written<Colours>> colours = keys.or("colours", Texts.oneOf(List.of(Colours.values()), Colours::words),
                "as photographed", "Pictures of coins in the colours of the photographs, or in greys.", "grey");
        Key<PrintScale> scale = keys.or("scale", SCALE, "1:1",
                "How large coins are printed: 1:1 is as large as in the hand, 3:2 half as large again.", "3:2");
        Key<Optional<Optional<Enlarged>>> small = keys.may("small-coins", small(), "Enlargement of small coins.", "");
        Key<Written<Integer>> bar = keys.or("scale-bar", Texts.choice(BARS, PictureStyleKeys::millimetres), NO_BAR,
                "A scale drawn at the foot of every plate, in millimetres by turns black and white.", "30 mm");
        return keys.block(f -> new PictureStyle(f.get(ground).value(), f.get(colours).value(), f.get(scale),
                f.get(small).flatMap(enlarged -> enlarged), f.get(bar).value()));
    }

    private static int millimetres(String bar) {
        return bar.equals(NO_BAR) ? 0 : Integer.parseInt(bar.substring(0, bar.indexOf(' ')));
    }

    private static Block<Optional<Enlarged>> small() {
        Keys keys = new Keys("the enlargement of small coins");
        Key<Optional<Scalar>> below = keys.must("below", LimitsKeys.LIMIT, "Coins with a smaller diameter are enlarged.", "12 mm");
        Key<PrintScale> scale = keys.must("scale", SCALE, "How large they are printed.", "2:1");
        return keys.block(f -> LimitsKeys.limit(Kind.DIAMETER, f.get(below), f, below).map(Written::value)
                .filter(Reading.Read.class::isInstance).map(Reading.Read.class::cast)
                .map(limit -> new Enlarged(limit.first().value(), f.get(scale))));
    }

    private static Optional<PrintScale> scale(Scalar scalar, Site site) {
        Optional<PrintScale> scale = PrintScale.of(scalar.text());
        if (scale.isEmpty()) {
            site.report(ShapeCodes.NO_SCALE, scalar.place(), "“" + scalar.text() + "” is not a scale.",
                    "Write paper to coin in whole numbers with a colon between them: 1:1 as large as in the hand, 2:1 twice as large.");
        }
        return scale;
    }
}
