package exergue.study.figure;

import exergue.model.CoinGroup;
import exergue.model.Written;
import exergue.study.group.Coins;
import java.util.List;
import java.util.Optional;
import java.math.BigDecimal;

/**
 * What is asked of a subject.
 *
 * @param groups shown side by side, at least one
 * @param steps  of a frequency table, in the unit of its figures; empty where the groups or the tool choose
 */
public record Request(List<Coins> groups, Optional<BigDecimal> steps, Wording wording) {

    public Request {
        groups = List.copyOf(groups);
    }

    /** Steps that were asked for, or else those that a group declares. */
    public Optional<BigDecimal> declaredSteps() {
        return steps.or(() -> groups.stream().flatMap(coins -> coins.declared().stream())
                .flatMap(group -> group.steps().stream()).map(Written::value).findFirst());
    }

    /** The weight standard of the first group that declares one. */
    public Optional<CoinGroup.WeightStandard> standard() {
        return groups.stream().flatMap(coins -> coins.declared().stream()).flatMap(group -> group.standard().stream()).findFirst();
    }
}
