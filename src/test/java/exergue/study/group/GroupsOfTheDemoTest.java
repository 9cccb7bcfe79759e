package exergue.study.group;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.FolderTree;
import exergue.finding.Place;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.CoinField;
import exergue.model.Damage;
import exergue.model.Written;
import exergue.source.SourceReader;
import exergue.study.figure.Exhibit;
import exergue.study.figure.Request;
import exergue.study.figure.Subject;
import exergue.study.figure.Subjects;
import exergue.study.figure.Wording;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What must hold of groups whatever the catalogue, tried on the demonstration catalogue. */
class GroupsOfTheDemoTest {

    private static final Catalogue DEMO = read();

    private static Catalogue read() {
        try {
            return SourceReader.read(new FolderTree(Path.of("catalogue-src"))).catalogue().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Property(tries = 20)
    void theOrderOfTheCoinsChangesNothing(@ForAll long seed) {
        List<Coin> shuffled = new ArrayList<>(DEMO.coins());
        Collections.shuffle(shuffled, new Random(seed));
        assertEquals(everything(DEMO, CoinField.MINT), everything(DEMO.with(DEMO.types(), shuffled), CoinField.MINT));
    }

    @Property(tries = 20)
    void aDamagedCoinMoreChangesNoWeight(@ForAll @IntRange(max = 165) int index) {
        Coin coin = DEMO.coins().get(index);
        Gathering before = Gathering.of(DEMO);
        Gathering after = Gathering.of(DEMO.with(DEMO.types(), with(broken(coin))));
        for (CoinField field : CoinField.values()) {
            List<Coins> old = before.by(List.of(field));
            List<Coins> grown = after.by(List.of(field));
            for (int i = 0; i < old.size(); i++) {
                assertEquals(list(old.get(i).weights()), list(grown.get(i).weights()), field.word());
            }
        }
    }

    @Test
    void groupsShareOutEveryCoinOnce() {
        Gathering gathering = Gathering.of(DEMO);
        for (CoinField field : CoinField.values()) {
            List<Coins> groups = gathering.by(List.of(field, CoinField.MINT));
            assertEquals(DEMO.coins().size(), groups.stream().mapToInt(group -> group.members().size()).sum(), field.word());
        }
        assertEquals(List.of("Arkeneia", "Phormantis", "Ormassos"),
                gathering.by(List.of(CoinField.MINT)).stream().map(Coins::name).toList());
    }

    @Test
    void aDeclaredGroupHasTheCoinsThatFitEveryLine() {
        List<Coins> one = Gathering.of(DEMO).declared("royal-tetradrachms").orElseThrow();
        assertEquals(1, one.size());
        assertTrue(one.get(0).members().stream().allMatch(member -> member.type().denomination().value().equals("Tetradrachm")
                && member.type().mint().value().equals("arkeneia")));
        List<Coins> divided = Gathering.of(DEMO).declared("tetradrachms-by-king").orElseThrow();
        assertEquals(one.get(0).members().size(), divided.stream().mapToInt(group -> group.members().size()).sum());
        assertEquals(Optional.empty(), Gathering.of(DEMO).declared("no-such-group"));
    }

    /** Every form of every subject shows something, in every language other words, and counts that agree with the table. */
    @Test
    void everySubjectShowsEveryForm() {
        List<Coins> groups = Gathering.of(DEMO).declared("tetradrachms-by-king").orElseThrow();
        for (Subject subject : Subjects.metrology()) {
            for (String form : subject.forms()) {
                Exhibit exhibit = subject.show(form, new Request(groups, Optional.empty(), Wording.PLAIN))
                        .orElseThrow(() -> new AssertionError(subject.word() + " as " + form));
                int columns = exhibit.table().head().size();
                assertEquals(columns, exhibit.table().align().size());
                exhibit.table().rows().forEach(row -> assertEquals(columns, row.size(), subject.word() + " as " + form));
                exhibit.notes().forEach(note -> assertTrue(!note.contains("{"), note));
            }
            for (String figure : subject.figures()) {
                assertNotEquals("", subject.figure(figure, groups.get(0), Wording.PLAIN), figure);
            }
        }
    }

    @Test
    void aGroupWithoutFiguresPrintsDashes() {
        Coins empty = new Coins("none", "nothing", Optional.empty(), List.of());
        for (Subject subject : Subjects.metrology()) {
            for (String form : subject.forms()) {
                assertEquals(Optional.empty(), subject.show(form, new Request(List.of(empty), Optional.empty(), Wording.PLAIN)), form);
            }
            for (String figure : subject.figures()) {
                String text = subject.figure(figure, empty, Wording.PLAIN);
                assertTrue(text.matches("–|0|too few to tell"), figure + ": " + text);
            }
        }
    }

    private static String everything(Catalogue catalogue, CoinField field) {
        Request request = new Request(Gathering.of(catalogue).by(List.of(field)), Optional.empty(), Wording.PLAIN);
        StringBuilder all = new StringBuilder();
        for (Subject subject : Subjects.metrology()) {
            subject.forms().forEach(form -> all.append(subject.show(form, request).map(Exhibit::table)).append('\n'));
        }
        return all.toString();
    }

    private static List<Coin> with(Coin more) {
        List<Coin> coins = new ArrayList<>(DEMO.coins());
        coins.add(more);
        return coins;
    }

    private static Coin broken(Coin c) {
        List<Written<Damage>> damage = new ArrayList<>(c.damage());
        damage.add(new Written<>(Damage.BROKEN, Place.ofFile("coins/another.yaml")));
        return new Coin(c.id(), c.type(), c.number(), c.measured(), c.alsoMeasured(), damage, Optional.empty(), c.dies(), c.eraDate(),
                c.obverse(), c.reverse(), c.holding(), c.find(), c.provenance(), c.countermark(), c.references(), c.photograph(),
                c.diameterMeans(), c.note(), c.excused(), c.place());
    }

    private static List<Double> list(double[] figures) {
        return java.util.Arrays.stream(figures).boxed().toList();
    }
}
