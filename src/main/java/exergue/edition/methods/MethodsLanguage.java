package exergue.edition.methods;

import java.util.List;

/** A language in which the methods statement can be written, and in which an author's own counts can be read. */
public interface MethodsLanguage {

    /** In the order of the statement. */
    List<MethodsTopic> topics();

    /** A count as it stands in running text. */
    String number(int count);

    /** Counts that a text of an author states. */
    List<StatedCount> statedCounts(String text);
}
