package exergue.edition.methods.english;

import exergue.edition.methods.MethodsParagraph;
import java.util.List;

/** The paragraphs of the statement, in order. */
public final class EnglishMethods {

    public static final List<MethodsParagraph> PARAGRAPHS = List.of(new HandsParagraph(), new SecondHandParagraph(),
            new ConversionParagraph(), new RoundingParagraph(), new AbsenceParagraph(), new DamageParagraph(),
            new FlanParagraph(), new AxisParagraph(), new SignsParagraph());

    private EnglishMethods() { }
}
