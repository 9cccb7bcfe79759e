package exergue.edition;

import exergue.edition.EntryBlock.ReferenceText;
import exergue.model.Reference;
import exergue.model.Reference.Relation;
import exergue.model.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** References as printed: those of the same relation together, plain ones first, each with its own words before it. */
final class ReferenceTexts {

    private ReferenceTexts() { }

    static List<ReferenceText> of(List<Reference> references, Map<String, Work> works, BookWords words) {
        List<ReferenceText> texts = new ArrayList<>();
        for (Relation relation : Relation.values()) {
            for (Reference reference : references) {
                if (reference.relation() == relation) {
                    texts.add(new ReferenceText(words.relation(relation), sign(reference, works),
                            reference.number().value()));
                }
            }
        }
        return List.copyOf(texts);
    }

    /** All in one line, the words of a relation once for all of its references: "this coin: A 1, B 2; same dies: C 3". */
    static String line(List<ReferenceText> texts) {
        StringBuilder line = new StringBuilder();
        String before = null;
        for (ReferenceText text : texts) {
            boolean same = text.relation().equals(before);
            line.append(before == null ? "" : same ? ", " : "; ");
            line.append(same || text.relation().isEmpty() ? "" : text.relation() + " ");
            line.append(text.sign()).append(text.number().isEmpty() ? "" : "\u00A0" + text.number());
            before = text.relation();
        }
        return line.toString();
    }

    private static String sign(Reference reference, Map<String, Work> works) {
        Work work = works.get(reference.work().value());
        return work == null ? reference.work().value() : work.sign().value();
    }
}
