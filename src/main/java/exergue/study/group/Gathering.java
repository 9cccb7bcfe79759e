package exergue.study.group;

import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.CoinField;
import exergue.model.CoinGroup;
import exergue.model.Damage;
import exergue.model.NaturalOrder;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import exergue.model.Written;
import exergue.study.Figure;
import exergue.study.die.StruckCoin;
import exergue.study.die.StruckCoins;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Gathers the coins of a catalogue into groups. Figures are chosen and read once, however many groups are asked for. */
public final class Gathering {

    /** The id of the group of every coin. */
    public static final String ALL = "all";

    /** After these the greatest or least diameter is no longer the coin's. A choice, no source. */
    private static final Set<Damage> OUTLINE_CHANGED = EnumSet.of(Damage.BROKEN, Damage.CHIPPED, Damage.CLIPPED, Damage.MOUNTED);
    private static final int HOURS = 12;
    private static final String NOTHING = "–";

    private final Catalogue catalogue;
    private final List<Member> members = new ArrayList<>();
    private final Map<CoinField, List<String>> order;

    private Gathering(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.order = Map.of(CoinField.MINT, List.copyOf(catalogue.mints().keySet()), CoinField.RULER, List.copyOf(catalogue.rulers().keySet()),
                CoinField.FIND_SPOT, List.copyOf(catalogue.findSpots().keySet()),
                CoinField.COLLECTION, List.copyOf(catalogue.collections().keySet()));
    }

    /** Coins whose type is not known belong to no group. */
    public static Gathering of(Catalogue catalogue) {
        Gathering gathering = new Gathering(catalogue);
        Map<String, Type> types = new HashMap<>();
        catalogue.types().forEach(type -> types.putIfAbsent(type.id().value(), type));
        ReadingChoice choice = ReadingChoice.of(catalogue.style());
        StruckCoins dies = new StruckCoins(catalogue.style().dieNames());
        for (Coin coin : catalogue.coins()) {
            Type type = types.get(coin.type().value());
            if (type != null) {
                gathering.members.add(member(coin, type, choice, dies.of(coin, type)));
            }
        }
        return gathering;
    }

    private static Member member(Coin coin, Type type, ReadingChoice choice, StruckCoin struck) {
        Optional<Reading.Read> weighed = choice.choose(coin, type, Kind.WEIGHT).figure().filter(Figure::isExact);
        OptionalDouble weight = weighed.isPresent() ? OptionalDouble.of(Figure.of(weighed.get())) : OptionalDouble.empty();
        boolean whole = coin.damage().stream().noneMatch(damage -> OUTLINE_CHANGED.contains(damage.value()));
        OptionalDouble diameter = whole ? figure(coin, type, choice, Kind.DIAMETER) : OptionalDouble.empty();
        OptionalDouble axis = type.hasAxis() ? figure(coin, type, choice, Kind.AXIS) : OptionalDouble.empty();
        OptionalDouble onTheClock = axis.isPresent() ? OptionalDouble.of(axis.getAsDouble() % HOURS) : axis;
        return new Member(coin, type, weight, weight.isPresent() && coin.weightInStatistics(),
                weighed.map(Gathering::places).orElse(0), diameter, onTheClock,
                choice.choose(coin, type, Kind.DENSITY).figure().filter(Figure::isExact).map(Reading.Read::first), struck);
    }

    private static int places(Reading.Read read) {
        BigDecimal step = read.first().resolution();
        return Math.max(0, step.scale() - step.precision() + 1);
    }

    private static OptionalDouble figure(Coin coin, Type type, ReadingChoice choice, Kind kind) {
        Optional<Reading.Read> read = choice.choose(coin, type, kind).figure().filter(Figure::isExact);
        return read.isPresent() ? OptionalDouble.of(Figure.of(read.get())) : OptionalDouble.empty();
    }

    /** The declared group of that id, divided as it says; empty where there is none. */
    public Optional<List<Coins>> declared(String id) {
        return Optional.ofNullable(catalogue.groups().get(id)).map(this::of);
    }

    private List<Coins> of(CoinGroup group) {
        List<Member> own = members.stream().filter(member -> group.has(member.coin(), member.type())).toList();
        if (group.by().isEmpty()) {
            return List.of(new Coins(group.id().value(), group.title(), Optional.of(group), own));
        }
        return divided(own, group.by().stream().map(Written::value).toList(), Optional.of(group));
    }

    /** Every coin of the catalogue, divided by these fields. */
    public List<Coins> by(List<CoinField> fields) {
        return divided(members, fields, Optional.empty());
    }

    /** Every coin, as one group. */
    public Coins all(String name) {
        return new Coins(ALL, name, Optional.empty(), members);
    }

    /** Parts come in the order of the files that declare their values, otherwise in natural order; coins without a value last. */
    private List<Coins> divided(List<Member> whole, List<CoinField> fields, Optional<CoinGroup> declared) {
        Map<List<String>, List<Member>> parts = new HashMap<>();
        for (Member member : whole) {
            List<String> values = fields.stream().map(field -> field.of(member.coin(), member.type()).orElse("")).toList();
            parts.computeIfAbsent(values, any -> new ArrayList<>()).add(member);
        }
        return parts.keySet().stream().sorted(inOrder(fields))
                .map(values -> new Coins(String.join(",", values), name(fields, values), declared, parts.get(values))).toList();
    }

    private Comparator<List<String>> inOrder(List<CoinField> fields) {
        List<Comparator<String>> comparators = fields.stream().map(this::comparator).toList();
        return (one, other) -> {
            for (int i = 0; i < comparators.size(); i++) {
                int difference = comparators.get(i).compare(one.get(i), other.get(i));
                if (difference != 0) {
                    return difference;
                }
            }
            return 0;
        };
    }

    private Comparator<String> comparator(CoinField field) {
        List<String> declared = order.getOrDefault(field, List.of());
        Map<String, Integer> places = new HashMap<>();
        declared.forEach(value -> places.put(value, places.size()));
        return Comparator.comparing(String::isEmpty)
                .thenComparing(value -> places.getOrDefault(value, Integer.MAX_VALUE))
                .thenComparing(NaturalOrder.INSTANCE);
    }

    private String name(List<CoinField> fields, List<String> values) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < fields.size(); i++) {
            names.add(values.get(i).isEmpty() ? NOTHING : name(fields.get(i), values.get(i)));
        }
        return String.join(", ", names);
    }

    private String name(CoinField field, String value) {
        return switch (field) {
            case MINT -> Optional.ofNullable(catalogue.mints().get(value)).map(mint -> mint.name().value()).orElse(value);
            case RULER -> Optional.ofNullable(catalogue.rulers().get(value)).map(ruler -> ruler.name().value()).orElse(value);
            case FIND_SPOT -> Optional.ofNullable(catalogue.findSpots().get(value)).map(spot -> spot.name().value()).orElse(value);
            case COLLECTION -> Optional.ofNullable(catalogue.collections().get(value)).map(one -> one.sign().value()).orElse(value);
            case METAL -> Optional.ofNullable(catalogue.style().metals().get(value)).map(metal -> metal.sign()).orElse(value);
            default -> value;
        };
    }

    /** Ids of the declared groups. */
    public Collection<String> ids() {
        return catalogue.groups().keySet();
    }
}
