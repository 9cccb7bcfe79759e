package exergue.check;

import exergue.check.rules.BrokenCrossReference;
import exergue.check.rules.IdUsedTwice;
import exergue.check.rules.UndeclaredConvention;
import exergue.check.rules.UnknownCollection;
import exergue.check.rules.UnknownFindSpot;
import exergue.check.rules.UnknownMetal;
import exergue.check.rules.UnknownMint;
import exergue.check.rules.UnknownRuler;
import exergue.check.rules.UnknownType;
import exergue.check.rules.UnknownWork;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.model.Catalogue;
import java.util.ArrayList;
import java.util.List;

/** Runs all the rules. */
public final class Checker {

    private static final List<Rule> RULES = List.of(
            new IdUsedTwice(), new UnknownType(), new UnknownMint(), new UnknownRuler(), new UnknownMetal(),
            new UnknownWork(), new UndeclaredConvention(), new UnknownCollection(), new UnknownFindSpot(),
            new BrokenCrossReference());

    private Checker() { }

    /** Everything that any rule has to say of the catalogue, in one run. */
    public static Findings check(Catalogue catalogue) {
        List<Finding> all = new ArrayList<>();
        for (Rule rule : RULES) {
            all.addAll(rule.faults(catalogue));
        }
        return Findings.of(all);
    }

    /** The rules in the order in which they run. */
    public static List<Rule> rules() {
        return RULES;
    }

    /** The code of every rule, for the docs. */
    public static List<Code> codes() {
        return RULES.stream().map(Rule::code).toList();
    }
}
