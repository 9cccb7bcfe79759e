package exergue.legend;

import java.util.List;

/** A legend, and everything wrong with it; where anything is, its parts are not to be relied on. */
public record Parsed(Legend legend, List<Remark> remarks) {

    public Parsed {
        remarks = List.copyOf(remarks);
    }
}
