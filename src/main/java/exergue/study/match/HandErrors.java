package exergue.study.match;

import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.model.Catalogue;
import exergue.study.Agreement;
import exergue.study.Differences;
import exergue.study.TwoHands;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How far readings under two conventions lie apart. Where two hands have measured ten coins of the catalogue or more, from
 * their differences; otherwise from the steps in which the conventions measure, with a least error for each kind.
 */
final class HandErrors {

    /** Fewer shared coins tell less than the steps do. A choice, no source. */
    private static final int ENOUGH = 10;
    /** Two weighings of one coin differ by a hundredth of a gram easily: dust, handling, the balance. Choices, no source. */
    private static final double WEIGHT = 0.01;
    private static final double DIAMETER = 0.3;
    private static final double DIAMETER_ANOTHER_WAY = 0.6;
    private static final double AXIS = 0.4;

    private final Map<List<String>, TwoHands> known = new HashMap<>();

    private HandErrors() { }

    static HandErrors of(Catalogue catalogue) {
        HandErrors errors = new HandErrors();
        Agreement.of(catalogue).pairs().forEach(pair -> errors.known.put(List.of(pair.first().id(), pair.second().id()), pair));
        return errors;
    }

    /** Of a fresh reading under one convention less a recorded one under another. */
    HandError between(Kind kind, Convention fresh, Convention recorded) {
        HandError bySteps = bySteps(kind, fresh, recorded);
        return difference(kind, fresh, recorded)
                .map(seen -> new HandError(seen.bias(), Math.max(seen.sd(), kind == Kind.WEIGHT ? WEIGHT : DIAMETER))).orElse(bySteps);
    }

    private Optional<HandError> difference(Kind kind, Convention fresh, Convention recorded) {
        TwoHands straight = known.get(List.of(fresh.id(), recorded.id()));
        if (straight != null) {
            return differences(kind, straight).map(seen -> new HandError(seen.bias(), seen.sd()));
        }
        TwoHands turned = known.get(List.of(recorded.id(), fresh.id()));
        return turned == null ? Optional.empty() : differences(kind, turned).map(seen -> new HandError(-seen.bias(), seen.sd()));
    }

    private static Optional<Differences> differences(Kind kind, TwoHands pair) {
        Optional<Differences> found = switch (kind) {
            case WEIGHT -> pair.weight();
            case DIAMETER -> pair.diameter();
            default -> Optional.empty();
        };
        return found.filter(differences -> differences.n() >= ENOUGH);
    }

    private static HandError bySteps(Kind kind, Convention fresh, Convention recorded) {
        double least = switch (kind) {
            case WEIGHT -> WEIGHT;
            case DIAMETER -> sameWay(fresh, recorded) ? DIAMETER : DIAMETER_ANOTHER_WAY;
            default -> AXIS;
        };
        double rounding = Math.hypot(step(kind, fresh), step(kind, recorded)) / Math.sqrt(12);
        return new HandError(0, Math.hypot(least, rounding));
    }

    private static boolean sameWay(Convention one, Convention other) {
        return one.sizing().direction() == other.sizing().direction() && one.sizing().direction() != Convention.Direction.NOT_SAID;
    }

    /** In g, mm or hours; what a convention does not say is taken to be two decimals, one millimetre, one hour. */
    private static double step(Kind kind, Convention hand) {
        return switch (kind) {
            case WEIGHT -> hand.weighing().resolution().map(BigDecimal::doubleValue).orElse(WEIGHT);
            case DIAMETER -> hand.sizing().resolution().map(BigDecimal::doubleValue).orElse(1.0);
            default -> hand.turning().resolution().map(BigDecimal::doubleValue).orElse(1.0);
        };
    }
}
