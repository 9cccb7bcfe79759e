package exergue.check;

import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.model.Catalogue;
import java.util.List;

/** One fault that a catalogue can have. A pure function: the same catalogue gives the same findings. */
public interface Rule {

    /** What the fault is called, how much it matters, and what its page in the docs says. */
    Code code();

    /** Every place where the catalogue has the fault; all of them bear {@link #code()}. In any order. */
    List<Finding> faults(Catalogue catalogue);
}
