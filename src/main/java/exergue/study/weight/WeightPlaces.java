package exergue.study.weight;

import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.study.group.Coins;
import exergue.study.group.Member;

/** To how many decimals the weights of a group are worth printing: as the house prints weights, but no finer than the finest was read. */
final class WeightPlaces {

    private WeightPlaces() { }

    static int of(Coins group, PrintForm form) {
        int read = group.members().stream().filter(Member::counts).mapToInt(Member::weightPlaces).max().orElse(0);
        return Math.min(form.decimals(Kind.WEIGHT), read);
    }
}
