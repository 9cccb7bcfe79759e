package exergue.cli;

import exergue.AllCodes;
import exergue.finding.Code;
import exergue.finding.NearMiss;
import exergue.finding.Severity;
import java.util.List;

/** The page of one kind of finding, and the list of all of them. The docs hold the same text. */
final class CodePage {

    private static final String FENCE = "```";

    private CodePage() { }

    /** @throws UsageException if there is none of this name */
    static Code named(String id) {
        List<Code> all = AllCodes.all();
        return all.stream().filter(code -> code.id().equals(id)).findFirst()
                .orElseThrow(() -> new UsageException("No finding is called “" + id + "”."
                        + NearMiss.of(id, all.stream().map(Code::id).toList())
                                .map(near -> " Did you mean “" + near + "”?")
                                .orElse(" “exergue explain” lists them all.")));
    }

    static String of(Code code) {
        return "# " + code.id() + "\n\n"
                + "**" + code.title() + ".** " + effect(code.severity()) + "\n\n"
                + code.why() + "\n\n"
                + "Instead of\n\n" + sample(code.faulty()) + "\nwrite\n\n" + sample(code.mended())
                + "\n" + otherwise(code);
    }

    /** The same for a screen, without the marks of Markdown. */
    static String plain(Code code) {
        return code.id() + "\n\n"
                + code.title() + ". " + effect(code.severity()) + "\n\n"
                + code.why() + "\n\n"
                + "Instead of\n\n" + indented(code.faulty()) + "\nwrite\n\n" + indented(code.mended())
                + "\n" + otherwise(code);
    }

    /** The index: one row for each code, in alphabetical order. */
    static String index(List<Code> codes) {
        StringBuilder page = new StringBuilder("# What Exergue finds\n\nEvery finding has a code. "
                + "`exergue explain CODE` shows the same page on the screen.\n\n| code | | what |\n| --- | --- | --- |\n");
        for (Code code : codes) {
            page.append("| [").append(code.id()).append("](").append(code.id()).append(".md) | ")
                    .append(code.severity().word()).append(" | ")
                    .append(code.title().replace("|", "\\|")).append(" |\n");
        }
        return page.toString();
    }

    private static String effect(Severity severity) {
        return switch (severity) {
            case ERROR -> "This is an error: no book is made until it is mended.";
            case WARNING -> "This is a warning: the book is made all the same.";
            case NOTE -> "This is a note: nothing need be done.";
        };
    }

    /** How a house or an entry has it otherwise. */
    private static String otherwise(Code code) {
        return code.severity() == Severity.ERROR ? "Neither the house style nor an entry can wave it through.\n"
                : "A house that sees it otherwise writes under “findings” in house-style.yaml: " + code.id()
                        + ": error, or: off. Where it is right as it is, the coin or type says so under “excused”, with the reason; for a "
                        + "chapter, a list or any other file, house-style.yaml does.\n";
    }

    private static String indented(String text) {
        return text.stripTrailing().indent(4);
    }

    private static String sample(String text) {
        return FENCE + "\n" + text.stripTrailing() + "\n" + FENCE + "\n";
    }
}
