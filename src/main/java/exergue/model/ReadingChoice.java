package exergue.model;

import exergue.measure.Kind;
import exergue.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Which of several readings of one coin is printed and counted.
 *
 * <p>The house's {@code prefer} list comes first: the first convention in it that has a figure. Then the coin's own
 * {@code measured} block, then {@code also-measured} in order. Where nobody has a figure, the first reading in that
 * same order that says why not. Where the entry is silent, a figure is missing, or, for the axis of a uniface or
 * punched coin, cannot be; a thickness, density or surface is then simply not given.
 */
public final class ReadingChoice {

    private final List<Written<String>> prefer;

    private ReadingChoice(List<Written<String>> prefer) {
        this.prefer = prefer;
    }

    public static ReadingChoice of(HouseStyle style) {
        return new ReadingChoice(style.prefer());
    }

    /** What stands in the place of a figure; not given is a thing that nobody expects of every coin, such as a density. */
    public enum Status {
        READ("read"), MISSING("missing"), NOT_APPLICABLE("not applicable"), ILLEGIBLE("illegible"), NOT_GIVEN("not given");

        private final String words;

        Status(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * @param measurement the block the reading stands in; empty where no block says anything of this kind
     * @param reading     empty where the entry is silent
     */
    public record Chosen(Kind kind, Optional<Measurement> measurement, Optional<Written<Reading>> reading,
                         Status status) {

        /** The figure, if there is one. */
        public Optional<Reading.Read> figure() {
            return reading.map(Written::value).filter(Reading.Read.class::isInstance).map(Reading.Read.class::cast);
        }

        /** Id of the convention it was read under. */
        public Optional<String> by() {
            return measurement.map(m -> m.by().value());
        }

        /** Why there is no figure, in the entry's words; empty for a figure and where the entry gives no reason. */
        public Optional<String> why() {
            return reading.map(Written::value).map(ReadingChoice::reason).filter(words -> !words.isBlank());
        }
    }

    public Chosen choose(Coin coin, Type type, Kind kind) {
        List<Measurement> inOrder = inOrder(coin);
        for (Measurement measurement : inOrder) {
            Optional<Written<Reading>> reading = measurement.reading(kind);
            if (reading.isPresent() && reading.get().value() instanceof Reading.Read) {
                return new Chosen(kind, Optional.of(measurement), reading, Status.READ);
            }
        }
        for (Measurement measurement : blocks(coin)) {
            Optional<Written<Reading>> reading = measurement.reading(kind);
            if (reading.isPresent()) {
                return new Chosen(kind, Optional.of(measurement), reading, status(reading.get().value()));
            }
        }
        if (!kind.isUsual()) {
            return new Chosen(kind, Optional.empty(), Optional.empty(), Status.NOT_GIVEN);
        }
        boolean cannotBe = kind == Kind.AXIS && !type.hasAxis();
        return new Chosen(kind, Optional.empty(), Optional.empty(),
                cannotBe ? Status.NOT_APPLICABLE : Status.MISSING);
    }

    /**
     * The main convention of a catalogue: the first of {@code prefer} under which any figure is printed, otherwise
     * the one under which most figures are printed (of equals, the first by id). Empty where no figure is printed.
     */
    public Optional<String> mainConvention(Catalogue catalogue, Map<String, Type> types) {
        Map<String, Integer> printed = new TreeMap<>();
        for (Coin coin : catalogue.coins()) {
            Type type = types.get(coin.type().value());
            if (type != null) {
                for (Kind kind : catalogue.style().printed()) {
                    Chosen chosen = choose(coin, type, kind);
                    if (chosen.status() == Status.READ) {
                        printed.merge(chosen.by().orElseThrow(), 1, Integer::sum);
                    }
                }
            }
        }
        for (Written<String> id : prefer) {
            if (printed.containsKey(id.value())) {
                return Optional.of(id.value());
            }
        }
        String most = null;
        for (Map.Entry<String, Integer> entry : printed.entrySet()) {
            if (most == null || entry.getValue() > printed.get(most)) {
                most = entry.getKey();
            }
        }
        return Optional.ofNullable(most);
    }

    /** The coin's measurements as its entry gives them. */
    private static List<Measurement> blocks(Coin coin) {
        List<Measurement> blocks = new ArrayList<>();
        coin.measured().ifPresent(blocks::add);
        blocks.addAll(coin.alsoMeasured());
        return blocks;
    }

    private List<Measurement> inOrder(Coin coin) {
        List<Measurement> blocks = blocks(coin);
        if (prefer.isEmpty() || blocks.size() < 2) {
            return blocks;
        }
        List<Measurement> ordered = new ArrayList<>();
        for (Written<String> id : prefer) {
            for (Measurement block : blocks) {
                if (block.by().value().equals(id.value())) {
                    ordered.add(block);
                }
            }
        }
        ordered.addAll(blocks);
        return ordered;
    }

    private static Status status(Reading reading) {
        if (reading instanceof Reading.Missing) {
            return Status.MISSING;
        }
        if (reading instanceof Reading.NotApplicable) {
            return Status.NOT_APPLICABLE;
        }
        return reading instanceof Reading.Illegible ? Status.ILLEGIBLE : Status.READ;
    }

    private static String reason(Reading reading) {
        if (reading instanceof Reading.Missing missing) {
            return missing.why();
        }
        if (reading instanceof Reading.NotApplicable cannotBe) {
            return cannotBe.why();
        }
        return reading instanceof Reading.Illegible illegible ? illegible.why() : "";
    }
}
