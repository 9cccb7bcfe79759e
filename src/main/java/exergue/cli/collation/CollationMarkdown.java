package exergue.cli.collation;

import exergue.review.change.EntryChange;
import exergue.review.content.Section;
import exergue.review.words.ConsequenceSentences;
import exergue.review.words.Sentences;
import java.util.List;

/** For a comment under a proposed change, in CommonMark; no letter of the source can act as a mark. */
final class CollationMarkdown {

    /** Places for comments take some 60,000 characters; what is beyond is counted, not shown. */
    private static final int LONGEST = 50_000;

    private CollationMarkdown() { }

    static String render(Compared compared) {
        StringBuilder text = new StringBuilder("## What has changed\n\n" + escape(compared.before()) + " → "
                + escape(compared.after()) + "\n\n**" + escape(compared.summary()) + "**\n");
        append("What follows from this", ConsequenceSentences.of(compared.collation().consequences()), text);
        append("Split, joined or exchanged", compared.collation().changes().kinships().stream().map(Sentences::of).toList(), text);
        List<EntryChange> entries = compared.collation().changes().entries();
        Section section = null;
        for (int i = 0; i < entries.size(); i++) {
            if (text.length() > LONGEST) {
                return text.append("\nAnd ").append(entries.size() - i)
                        .append(" entries more; the command collate shows them.\n").toString();
            }
            if (!entries.get(i).subject().section().equals(section)) {
                section = entries.get(i).subject().section();
                text.append("\n### ").append(section.many()).append("\n\n");
            }
            append(entries.get(i), text);
        }
        return text.toString();
    }

    private static void append(EntryChange change, StringBuilder text) {
        text.append("- **").append(escape(Sentences.heading(change))).append("**\n");
        Sentences.of(change).forEach(sentence -> text.append("  - ").append(escape(sentence)).append('\n'));
    }

    private static void append(String heading, List<String> sentences, StringBuilder text) {
        if (!sentences.isEmpty()) {
            text.append("\n### ").append(heading).append("\n\n");
            sentences.forEach(sentence -> text.append("- ").append(escape(sentence)).append('\n'));
        }
    }

    /** Backslashes before what CommonMark, or a host's additions to it, could take for a mark. */
    static String escape(String text) {
        return text.replaceAll("[\\\\`*_{}\\[\\]<>#|~!@&$]", "\\\\$0").replace('\n', ' ');
    }
}
