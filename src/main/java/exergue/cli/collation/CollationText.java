package exergue.cli.collation;

import exergue.review.change.EntryChange;
import exergue.review.content.Section;
import exergue.review.words.ConsequenceSentences;
import exergue.review.words.Sentences;

/** For a screen: section by section, an entry in a line with its changes below. */
final class CollationText {

    private CollationText() { }

    static String render(Compared compared) {
        StringBuilder text = new StringBuilder(compared.before() + " → " + compared.after() + "\n");
        Section section = null;
        for (EntryChange change : compared.collation().changes().entries()) {
            if (!change.subject().section().equals(section)) {
                section = change.subject().section();
                text.append('\n').append(section.many()).append('\n');
            }
            text.append("  ").append(Sentences.heading(change)).append('\n');
            Sentences.of(change).forEach(sentence -> text.append("      ").append(sentence).append('\n'));
        }
        appendRest(compared, text);
        return text.append('\n').append(compared.summary()).append('\n').toString();
    }

    private static void appendRest(Compared compared, StringBuilder text) {
        if (!compared.collation().changes().kinships().isEmpty()) {
            text.append("\nSplit, joined or exchanged\n");
            compared.collation().changes().kinships().forEach(kin -> text.append("  ").append(Sentences.of(kin)).append('\n'));
        }
        if (!compared.collation().consequences().isEmpty()) {
            text.append("\nWhat follows from this\n");
            ConsequenceSentences.of(compared.collation().consequences())
                    .forEach(sentence -> text.append("  ").append(sentence).append('\n'));
        }
    }
}
