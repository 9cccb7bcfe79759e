package exergue.edition.methods.italian;

import exergue.edition.methods.MethodsLanguage;
import exergue.edition.methods.MethodsTopic;
import exergue.edition.methods.StatedCount;
import exergue.edition.methods.StatedCountReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The methods statement in Italian. */
public final class ItalianMethods implements MethodsLanguage {

    private static final List<MethodsTopic> TOPICS = List.of(
            new MethodsTopic("Le fonti", List.of(new HandsParagraph())),
            new MethodsTopic("Monete misurate più volte",
                    List.of(new SecondHandParagraph(), new ComparisonParagraph())),
            new MethodsTopic("Conversione e arrotondamento",
                    List.of(new ConversionParagraph(), new RoundingParagraph())),
            new MethodsTopic("Ciò che non è indicato", List.of(new AbsenceParagraph())),
            new MethodsTopic("Danni", List.of(new DamageParagraph())),
            new MethodsTopic("Diametri", List.of(new FlanParagraph())),
            new MethodsTopic("Assi dei conii", List.of(new AxisParagraph())),
            new MethodsTopic("Densità e titolo", List.of(new DensityParagraph())),
            new MethodsTopic("Segni", List.of(new SignsParagraph())));

    /** From two on: "una moneta" is mostly no count. */
    private static final StatedCountReader STATED = new StatedCountReader(2, List.of("due", "tre", "quattro", "cinque",
            "sei", "sette", "otto", "nove", "dieci", "undici", "dodici", "tredici", "quattordici", "quindici", "sedici",
            "diciassette", "diciotto", "diciannove", "venti"), ". \u00A0\u202F", nouns());

    @Override
    public List<MethodsTopic> topics() {
        return TOPICS;
    }

    @Override
    public String number(int count) {
        return Grammar.NUMBERS.of(count);
    }

    @Override
    public List<StatedCount> statedCounts(String text) {
        return STATED.in(text);
    }

    private static Map<String, String> nouns() {
        Map<String, String> nouns = new LinkedHashMap<>();
        nouns.put("monet[ae]|esemplar[ei]|pezz[oi]", "coins");
        nouns.put("pes[oi]", "weights");
        nouns.put("diametr[oi]", "diameters");
        nouns.put("ass[ei]", "die-axes");
        return nouns;
    }
}
