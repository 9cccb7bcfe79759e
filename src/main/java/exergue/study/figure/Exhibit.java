package exergue.study.figure;

import java.util.List;

/** A table or a chart. */
public sealed interface Exhibit permits FigureTable, Plot {

    /** The figures themselves, for a chart those that it draws. */
    FigureTable table();

    /** Sentences that stand under it: how the figures were reckoned, and what they say. */
    List<String> notes();
}
