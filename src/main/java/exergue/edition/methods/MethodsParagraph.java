package exergue.edition.methods;

import java.util.List;

/** One paragraph of the methods statement in one language: what it has to say of this tally, nothing if nothing. */
public interface MethodsParagraph {

    /** In order; no passage is empty. */
    List<Passage> passages(Tally tally);
}
