package exergue.source.keys;

import exergue.model.HouseRules.Treated;
import exergue.model.Treatment;
import exergue.model.Written;
import exergue.source.shape.MapOf;
import exergue.source.shape.Text;
import exergue.source.shape.Texts;
import java.util.List;

/** The part of the house style that says what is wanted of the entries. */
final class HouseRulesKeys {

    /** The id is the code; nothing here knows which codes there are. */
    static final MapOf<Treated> FINDINGS = new MapOf<>(treatment());

    private HouseRulesKeys() { }

    private static Text<Treated> treatment() {
        Text<Written<Treatment>> word = Texts.oneOf(List.of(Treatment.values()), Treatment::word);
        return new Text<>(word.name(), word.words(), "", false,
                (scalar, site) -> word.conversion().convert(scalar, site).map(said -> new Treated(site.entry(), said.value())),
                (site, place) -> new Treated(site.entry(), Treatment.WARNING));
    }
}
