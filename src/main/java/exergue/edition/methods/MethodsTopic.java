package exergue.edition.methods;

import java.util.List;

/** What stands under one heading of a long methods statement. */
public record MethodsTopic(String heading, List<MethodsParagraph> paragraphs) {

    public MethodsTopic {
        paragraphs = List.copyOf(paragraphs);
    }

    public List<Passage> passages(Tally tally) {
        return paragraphs.stream().flatMap(paragraph -> paragraph.passages(tally).stream()).toList();
    }
}
