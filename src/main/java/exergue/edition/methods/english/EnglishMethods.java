package exergue.edition.methods.english;

import exergue.edition.methods.MethodsLanguage;
import exergue.edition.methods.MethodsTopic;
import exergue.edition.methods.StatedCount;
import java.util.List;

/** The methods statement in English. */
public final class EnglishMethods implements MethodsLanguage {

    private static final List<MethodsTopic> TOPICS = List.of(
            new MethodsTopic("The sources", List.of(new HandsParagraph())),
            new MethodsTopic("Coins measured more than once",
                    List.of(new SecondHandParagraph(), new ComparisonParagraph())),
            new MethodsTopic("Conversion and rounding", List.of(new ConversionParagraph(), new RoundingParagraph())),
            new MethodsTopic("What is not given", List.of(new AbsenceParagraph())),
            new MethodsTopic("Damage", List.of(new DamageParagraph())),
            new MethodsTopic("Diameters", List.of(new FlanParagraph())),
            new MethodsTopic("Die-axes", List.of(new AxisParagraph())),
            new MethodsTopic("Density", List.of(new DensityParagraph())),
            new MethodsTopic("Signs", List.of(new SignsParagraph())));

    @Override
    public List<MethodsTopic> topics() {
        return TOPICS;
    }

    @Override
    public String number(int count) {
        return Grammar.number(count);
    }

    @Override
    public List<StatedCount> statedCounts(String text) {
        return StatedCounts.READER.in(text);
    }
}
