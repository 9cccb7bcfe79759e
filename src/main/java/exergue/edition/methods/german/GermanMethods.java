package exergue.edition.methods.german;

import exergue.edition.methods.MethodsLanguage;
import exergue.edition.methods.MethodsTopic;
import exergue.edition.methods.StatedCount;
import exergue.edition.methods.StatedCountReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The methods statement in German. */
public final class GermanMethods implements MethodsLanguage {

    private static final List<MethodsTopic> TOPICS = List.of(
            new MethodsTopic("Die Quellen", List.of(new HandsParagraph())),
            new MethodsTopic("Mehrfach gemessene Münzen",
                    List.of(new SecondHandParagraph(), new ComparisonParagraph())),
            new MethodsTopic("Umrechnung und Rundung", List.of(new ConversionParagraph(), new RoundingParagraph())),
            new MethodsTopic("Was nicht angegeben ist", List.of(new AbsenceParagraph())),
            new MethodsTopic("Beschädigung", List.of(new DamageParagraph())),
            new MethodsTopic("Durchmesser", List.of(new FlanParagraph())),
            new MethodsTopic("Stempelstellungen", List.of(new AxisParagraph())),
            new MethodsTopic("Dichte und Feingehalt", List.of(new DensityParagraph())),
            new MethodsTopic("Zeichen", List.of(new SignsParagraph())));

    /** From two on: "eine Münze" is mostly no count. */
    private static final StatedCountReader STATED = new StatedCountReader(2, List.of("zwei", "drei", "vier", "fünf",
            "sechs", "sieben", "acht", "neun", "zehn", "elf", "zwölf", "dreizehn", "vierzehn", "fünfzehn", "sechzehn",
            "siebzehn", "achtzehn", "neunzehn", "zwanzig"), ". \u00A0\u202F", nouns());

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
        nouns.put("münzen?|exemplaren?|exemplare?|stücken?", "coins");
        nouns.put("gewichten?|gewichte?", "weights");
        nouns.put("durchmessern?", "diameters");
        nouns.put("stempelstellung(?:en)?", "die-axes");
        return nouns;
    }
}
