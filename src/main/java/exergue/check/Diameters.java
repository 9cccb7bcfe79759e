package exergue.check;

import exergue.finding.Place;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Coin;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The diameters all hands give for one coin, in the order of its entry. */
public record Diameters(List<One> all) {

    public Diameters {
        all = List.copyOf(all);
    }

    /** One hand's diameter. */
    public record One(Reading.Read read, Convention.Direction direction, Place place, String path) {

        public String recorded() {
            return read.recorded();
        }
    }

    public static Diameters of(Coin coin) {
        List<One> all = new ArrayList<>();
        for (Hand hand : Hand.of(coin)) {
            hand.measurement().reading(Kind.DIAMETER).ifPresent(written -> {
                if (written.value() instanceof Reading.Read read) {
                    all.add(new One(read, hand.measurement().convention().sizing().direction(), written.place(),
                            hand.path() + ".diameter"));
                }
            });
        }
        return new Diameters(all);
    }

    public Optional<One> first() {
        return all.stream().findFirst();
    }

    /** The first diameter, where there are some and none of them has two figures. */
    public Optional<One> onlySingle() {
        return all.stream().allMatch(one -> one.read().form() == Reading.Form.SINGLE) ? first() : Optional.empty();
    }

    public boolean anyDirectionSaid() {
        return all.stream().anyMatch(one -> one.direction() != Convention.Direction.NOT_SAID);
    }
}
