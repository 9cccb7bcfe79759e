package exergue.edition;

import exergue.edition.EntryBlock.ReferenceText;
import exergue.model.Reference;
import exergue.model.Reference.Relation;
import exergue.model.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * References as printed: those of the same relation together, plain ones first, the words of a relation once before all
 * of its references.
 */
final class ReferenceTexts {

    private ReferenceTexts() { }

    static List<ReferenceText> of(List<Reference> references, Map<String, Work> works, BookWords words) {
        List<ReferenceText> texts = new ArrayList<>();
        for (Relation relation : Relation.values()) {
            String before = words.relation(relation).replace(' ', '\u00A0');
            for (Reference reference : references) {
                if (reference.relation() == relation) {
                    texts.add(new ReferenceText(before, sign(reference, works), Unbroken.number(reference.number().value())));
                    before = "";
                }
            }
        }
        return List.copyOf(texts);
    }

    /** A line for each relation: "A 1; B 2", "this coin: C 3; D 4", "same dies: E 5". */
    static List<String> lines(List<ReferenceText> texts) {
        List<String> lines = new ArrayList<>();
        for (ReferenceText text : texts) {
            String words = text.sign() + (text.number().isEmpty() ? "" : "\u00A0" + text.number());
            if (lines.isEmpty() || !text.relation().isEmpty()) {
                lines.add((text.relation().isEmpty() ? "" : text.relation() + " ") + words);
            } else {
                lines.set(lines.size() - 1, lines.get(lines.size() - 1) + "; " + words);
            }
        }
        return lines;
    }

    private static String sign(Reference reference, Map<String, Work> works) {
        Work work = works.get(reference.work().value());
        return work == null ? reference.work().value() : work.sign().value();
    }
}
