package exergue.edition.methods.french;

import exergue.edition.methods.MethodsLanguage;
import exergue.edition.methods.MethodsTopic;
import exergue.edition.methods.StatedCount;
import exergue.edition.methods.StatedCountReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The methods statement in French. */
public final class FrenchMethods implements MethodsLanguage {

    private static final List<MethodsTopic> TOPICS = List.of(
            new MethodsTopic("Les sources", List.of(new HandsParagraph())),
            new MethodsTopic("Monnaies mesurées plusieurs fois",
                    List.of(new SecondHandParagraph(), new ComparisonParagraph())),
            new MethodsTopic("Conversion et arrondi", List.of(new ConversionParagraph(), new RoundingParagraph())),
            new MethodsTopic("Ce qui n’est pas donné", List.of(new AbsenceParagraph())),
            new MethodsTopic("Dommages", List.of(new DamageParagraph())),
            new MethodsTopic("Diamètres", List.of(new FlanParagraph())),
            new MethodsTopic("Axes", List.of(new AxisParagraph())),
            new MethodsTopic("Densité et titre", List.of(new DensityParagraph())),
            new MethodsTopic("Signes", List.of(new SignsParagraph())));

    /** From two on: "une monnaie" is mostly no count. */
    private static final StatedCountReader STATED = new StatedCountReader(2, List.of("deux", "trois", "quatre", "cinq",
            "six", "sept", "huit", "neuf", "dix", "onze", "douze", "treize", "quatorze", "quinze", "seize", "dix-sept",
            "dix-huit", "dix-neuf", "vingt"), " \u00A0\u202F", nouns());

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
        nouns.put("monnaies?|exemplaires?|pièces?", "coins");
        nouns.put("poids", "weights");
        nouns.put("diamètres?", "diameters");
        nouns.put("axes?", "die-axes");
        return nouns;
    }
}
