package exergue.study.figure;

import exergue.study.group.Coins;
import java.util.List;
import java.util.Optional;

/** Something that can be shown of groups of coins. */
public interface Subject {

    /** By which chapters and the command line ask for it: "weights". */
    String word();

    /** The forms it can be shown in; the first where none is named. */
    List<String> forms();

    /** Empty where the coins have nothing to show. @param form one of {@link #forms} */
    Optional<Exhibit> show(String form, Request request);

    /** The form in which every two groups are compared, which grows with the square of their number. */
    String COMPARISON = "comparison";

    /** As many groups fit into one table or chart of this form. */
    default int most(String form) {
        return Integer.MAX_VALUE;
    }

    /** The single figures it has for running text: "mean weight". */
    List<String> figures();

    /** With its unit, as printed; a dash where it is undefined. @param name one of {@link #figures} */
    String figure(String name, Coins coins, Wording wording);
}
