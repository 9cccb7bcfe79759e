package exergue;

import exergue.finding.Finding;
import exergue.finding.Findings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One slip in a figure shows in several ways: it is far off those of its type, another hand disagrees, and it may be finer
 * than its instrument. The stages do not know of each other, so what they say of one figure is brought together here:
 * the finding that holds the figure against its type keeps the word, with the other hand's figure as a related place.
 */
final class OneCause {

    private static final List<String> AGAINST_ITS_TYPE = List.of("weight-far-off", "diameter-far-off", "outside-limits");
    private static final String AGAINST_ANOTHER_HAND = "hands-disagree";
    private static final String AGAINST_ITS_INSTRUMENT = "finer-than-instrument";

    private final List<Finding> all;

    private OneCause(Findings all) {
        this.all = all.all();
    }

    static Findings of(Findings findings) {
        return Findings.of(new OneCause(findings).kept(), findings.excused());
    }

    private List<Finding> kept() {
        List<Finding> kept = new ArrayList<>();
        for (Finding finding : all) {
            if (is(finding, AGAINST_ANOTHER_HAND) && strangeFigure(finding).isPresent()
                    || is(finding, AGAINST_ITS_INSTRUMENT) && isToldBetter(finding)) {
                continue;
            }
            kept.add(AGAINST_ITS_TYPE.contains(finding.code().id()) ? withOtherHands(finding) : finding);
        }
        return kept;
    }

    private static boolean is(Finding finding, String code) {
        return finding.code().id().equals(code);
    }

    /** What is said of one of the two figures against its type. */
    private Optional<Finding> strangeFigure(Finding hands) {
        return all.stream().filter(finding -> AGAINST_ITS_TYPE.contains(finding.code().id()) && concerns(hands, finding)).findFirst();
    }

    private static boolean concerns(Finding hands, Finding strange) {
        return hands.place().equals(strange.place())
                || hands.related().stream().anyMatch(other -> other.place().equals(strange.place()));
    }

    private boolean isToldBetter(Finding instrument) {
        return all.stream().anyMatch(finding -> finding.path().equals(instrument.path())
                && finding.place().file().equals(instrument.place().file())
                && finding.place().line() == instrument.place().line()
                && (AGAINST_ITS_TYPE.contains(finding.code().id()) || is(finding, AGAINST_ANOTHER_HAND)));
    }

    private Finding withOtherHands(Finding strange) {
        List<Finding.Related> related = new ArrayList<>(strange.related());
        for (Finding hands : all) {
            if (is(hands, AGAINST_ANOTHER_HAND) && concerns(hands, strange)) {
                hands.related().stream().filter(other -> !other.place().equals(strange.place())).forEach(related::add);
                if (!hands.place().equals(strange.place())) {
                    related.add(new Finding.Related(hands.place(), "what another hand says of this coin"));
                }
            }
        }
        return new Finding(strange.code(), strange.place(), strange.path(), strange.what(), strange.remedy(), related, strange.edit());
    }
}
