package exergue.exchange.list;

import exergue.exchange.list.RowFindings.Spot;
import exergue.finding.Code;
import exergue.finding.Excused;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Parsed;
import exergue.measure.Quantity;
import exergue.measure.Reading;
import exergue.measure.ReadingParser;
import exergue.measure.Unit;
import exergue.model.Coin;
import exergue.model.Excuse;
import exergue.model.Measurement;
import exergue.model.Written;
import exergue.source.list.ListCodes;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A row held against the entry of its coin. Nothing here changes anything. */
final class EntryComparison {

    private final Draft draft;
    private final Coin coin;
    private final EntryNode written;
    private final RowFindings findings;
    private final List<Excused> excused = new ArrayList<>();

    /** @param written the entry as its file has it */
    EntryComparison(Draft draft, Coin coin, EntryNode written, RowFindings findings) {
        this.draft = draft;
        this.coin = coin;
        this.written = written;
        this.findings = findings;
    }

    /** Says where row and entry differ; returns the figures of hands that the entry has nothing of. */
    Map<String, Map<Kind, Draft.Figure>> look() {
        for (Draft.Field field : draft.fields()) {
            if (field.ofRow()) {
                compare(field.node(), Optional.of(written), "", field.spot());
            }
        }
        Map<String, Map<Kind, Draft.Figure>> missing = new LinkedHashMap<>();
        draft.hands().forEach((by, readings) -> {
            Optional<Measurement> same = Stream.concat(coin.measured().stream(), coin.alsoMeasured().stream())
                    .filter(one -> one.by().value().equals(by)).findFirst();
            if (same.isPresent()) {
                readings.forEach((kind, figure) -> compare(kind, figure, same.get()));
            } else if (readings.entrySet().stream().anyMatch(one -> isFigure(one.getKey(), one.getValue().text()))) {
                missing.put(by, readings);
            }
        });
        return missing;
    }

    /** What would be found, had the entry not excused it. */
    List<Excused> excused() {
        return excused;
    }

    /** Under “excused” the entry of a coin can say that it rightly differs from what others have on their lists. */
    private void say(Code code, Spot spot, String what, String remedy) {
        Optional<Excuse> excuse = coin.excused().stream().filter(one -> one.finding().value().equals(code.id())).findFirst();
        RowFindings alone = new RowFindings();
        (excuse.isPresent() ? alone : findings).add(code, spot, what, remedy);
        excuse.ifPresent(one -> excused.add(new Excused(alone.all().get(0), one.because().value(), one.finding().place())));
    }

    /** False for a reason why there is none, which is the same text under every convention. */
    private static boolean isFigure(Kind kind, String text) {
        return !(ReadingParser.parse(kind, text, Convention.UNDECLARED) instanceof Parsed.Accepted accepted)
                || accepted.reading() instanceof Reading.Read;
    }

    /** Key by key down to words; of a list every member is looked for. */
    private void compare(EntryNode ofList, Optional<EntryNode> ofEntry, String path, Spot spot) {
        if (ofList instanceof EntryNode.Keys keys && (ofEntry.isEmpty() || ofEntry.get() instanceof EntryNode.Keys)) {
            keys.byKey().forEach((key, value) -> compare(value, ofEntry.map(entry -> ((EntryNode.Keys) entry).byKey().get(key)),
                    path.isEmpty() ? key : path + "." + key, spot));
        } else if (ofEntry.isEmpty()) {
            (ofList instanceof EntryNode.Members members ? members.all() : List.of(ofList)).forEach(one -> more(path, one, spot));
        } else if (ofList instanceof EntryNode.Members members && ofEntry.get() instanceof EntryNode.Members there) {
            members.all().stream().filter(one -> there.all().stream().noneMatch(other -> says(other, one)))
                    .forEach(one -> more(path, one, spot));
        } else if (!plain(ofEntry.get()).contains(plain(ofList)) || !path.equals("note") && !plain(ofEntry.get()).equals(plain(ofList))) {
            differs(path, ofList.shown(), ofEntry.get().shown(), spot);
        }
    }

    /** True where a member of the entry says at least as much: a step of a provenance may have got a date since. */
    private static boolean says(EntryNode entry, EntryNode list) {
        if (list instanceof EntryNode.Words && entry instanceof EntryNode.Keys keys) {
            return keys.byKey().containsKey("words") && says(keys.byKey().get("words"), list);
        }
        if (list instanceof EntryNode.Keys wanted && entry instanceof EntryNode.Keys keys) {
            return wanted.byKey().entrySet().stream().allMatch(one -> keys.byKey().containsKey(one.getKey())
                    && says(keys.byKey().get(one.getKey()), one.getValue()));
        }
        return plain(entry).equals(plain(list));
    }

    private static String plain(EntryNode node) {
        return node.shown().strip().replaceAll("\\s+", " ");
    }

    private void compare(Kind kind, Draft.Figure figure, Measurement measurement) {
        Spot spot = figure.spot();
        String text = figure.text();
        Optional<Written<Reading>> there = measurement.reading(kind);
        String key = kind.word() + " by " + measurement.by().value();
        if (there.isEmpty()) {
            if (!measurement.mentions(kind)) {
                more(key, EntryNode.words(text), spot);
            }
            return;
        }
        Reading reading = there.get().value();
        boolean same = reading.recorded().strip().equals(text.strip())
                || ReadingParser.parse(kind, text, measurement.convention()) instanceof Parsed.Accepted accepted && same(accepted.reading(), reading);
        if (!same) {
            differs(key, text, reading.recorded(), spot);
        }
    }

    /** The same figure, however it is written; in one unit also to the same step: 3.9 g is not 3.90 g. */
    private static boolean same(Reading one, Reading other) {
        return one instanceof Reading.Read first && other instanceof Reading.Read second && first.form() == second.form()
                && first.qualifier() == second.qualifier() && (units(first).equals(units(second)) ? first.normal().equals(second.normal())
                : values(first).equals(values(second)));
    }

    private static List<Unit> units(Reading.Read read) {
        return read.asRecorded().stream().map(Quantity::unit).toList();
    }

    private static List<BigDecimal> values(Reading.Read read) {
        return read.normal().stream().map(quantity -> quantity.value().stripTrailingZeros()).toList();
    }

    private void differs(String what, String list, String entry, Spot spot) {
        say(ListCodes.DIFFERS, spot, "The coin is in the catalogue as “" + coin.id() + "”, and of its " + what.replace('.', ' ')
                        + " the list says “" + list + "”, the entry “" + entry + "”.",
                "Look at the coin or its record, and mend whichever is wrong. The entry, " + coin.place().file() + ", is left as it is.");
    }

    private void more(String what, EntryNode list, Spot spot) {
        say(ListCodes.SAYS_MORE, spot, "The coin is in the catalogue as “" + coin.id() + "”, whose entry does not have this "
                        + what.replace('.', ' ') + ": “" + list.shown() + "”.",
                "Write it into " + coin.place().file() + " if it is wanted; a list adds nothing to an entry but figures, and those only with --add-figures.");
    }
}
