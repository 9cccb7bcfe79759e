package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.FindSpot;
import java.util.ArrayList;
import java.util.List;

/** The exact place of a find-spot is released for print. */
public final class ExactFindSpotPrinted implements Rule {

    static final Code CODE = new Code("exact-find-spot-printed", Severity.NOTE,
            "An exact find-spot will be printed",
            "An exact place in print leads looters to it. Finds may have to be reported, and what may be "
                    + "published about their place is ruled by the law and the codes of the country where they were "
                    + "made; this tool cannot know them. The default is to print the coarse name only.",
            """
                    lower-town:
                      name: the lower town
                      exact: field 14, north bank
                      exact-may-be-printed: yes
                    """,
            """
                    lower-town:
                      name: the lower town
                      exact: field 14, north bank
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (FindSpot spot : catalogue.findSpots().values()) {
            if (spot.mayPrint() && spot.exact().isPresent()) {
                faults.add(Finding.of(CODE, spot.exact().get().place(), spot.id() + ".exact",
                        "The exact place of “" + spot.id() + "” will be printed and can lead looters to it.",
                        "Make sure that the site is safe or built over, and that the find has been reported as local "
                                + "law and codes demand. Otherwise take “exact-may-be-printed: yes” away: then only “"
                                + spot.name() + "” is printed."));
            }
        }
        return faults;
    }
}
