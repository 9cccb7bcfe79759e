package exergue.measure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Finds the words that stand for units and settles the ones with several meanings: {@code gr} by what the convention
 * says, {@code oz}, {@code dram} and {@code grains} by the units beside them or the convention's own unit. What stays open is refused.
 */
final class UnitWords {

    private static final int LONGEST = 4;
    private static final List<String> GR = List.of("gr", "grs");
    private static final List<String> OUNCES = List.of("oz", "ounce", "ounces");
    private static final List<String> DRAMS = List.of("dr", "drs", "dram", "drams", "drachm", "drachms");

    private static final Map<String, List<Unit>> MEANINGS = meanings();

    private UnitWords() { }

    private static Map<String, List<Unit>> meanings() {
        Map<String, List<Unit>> meanings = new HashMap<>();
        for (Unit unit : Units.all()) {
            unit.spellings().forEach(spelling -> meanings.put(spelling, List.of(unit)));
        }
        GR.forEach(word -> meanings.put(word, List.of(Units.GRAIN, Units.FRENCH_GRAIN, Units.GRAM)));
        List.of("grain", "grains").forEach(word -> meanings.put(word, List.of(Units.GRAIN, Units.FRENCH_GRAIN)));
        OUNCES.forEach(word -> meanings.put(word, List.of(Units.TROY_OUNCE, Units.OUNCE)));
        DRAMS.forEach(word -> meanings.put(word, List.of(Units.APOTHECARIES_DRAM, Units.DRAM)));
        return meanings;
    }

    /** The pieces with every word, or row of words, that stands for a unit marked as one. */
    static List<Piece> in(List<Piece> pieces) {
        List<Piece> marked = new ArrayList<>();
        int i = 0;
        while (i < pieces.size()) {
            int taken = Math.min(LONGEST, pieces.size() - i);
            while (taken > 0 && !MEANINGS.containsKey(words(pieces, i, taken))) {
                taken--;
            }
            if (taken == 0) {
                marked.add(pieces.get(i));
                i++;
            } else {
                String word = words(pieces, i, taken);
                marked.add(new Piece.UnitWord(word, MEANINGS.get(word), pieces.get(i).from(),
                        pieces.get(i + taken - 1).to()));
                i += taken;
            }
        }
        return marked;
    }

    private static String words(List<Piece> pieces, int from, int count) {
        return pieces.subList(from, from + count).stream()
                .map(piece -> piece instanceof Piece.Word word ? word.text() : "?").collect(Collectors.joining(" "));
    }

    /**
     * The one unit a word stands for.
     *
     * @param figure the figure it follows
     * @param beside all unit words of the same reading
     */
    static Step<Unit> settle(Piece.UnitWord word, Piece.Figure figure, List<Piece.UnitWord> beside, Task task) {
        if (word.meanings().size() > 1) {
            return several(word, figure, beside, task);
        }
        Unit unit = word.meanings().get(0);
        if (unit.dimension() != task.kind().dimension()) {
            return task.stop(ReadingFault.UNIT_OF_ANOTHER_KIND, word, task.quoted(word) + " is a unit of "
                    + measured(unit) + ", but this is " + task.kind().one() + ".", "Move the figure to the key it "
                    + "belongs to, or give the " + task.kind().word() + " in " + known(task.kind()) + ".");
        }
        return Step.done(unit);
    }

    private static Step<Unit> several(Piece.UnitWord word, Piece.Figure figure, List<Piece.UnitWord> beside,
                                      Task task) {
        if (task.kind() != Kind.WEIGHT) {
            return task.stop(ReadingFault.UNIT_OF_ANOTHER_KIND, word, task.quoted(word)
                    + " is a unit of weight, but this is " + task.kind().one() + ".",
                    "Move the figure to the key weight, or give the " + task.kind().word() + " in " + known(task.kind()) + ".");
        }
        Convention.Weighing weighing = task.convention().weighing();
        if (GR.contains(word.word()) && weighing.gr() == Convention.GrMeans.GRAMMES) {
            return Step.done(Units.GRAM);
        }
        Optional<Unit> settled = beside.stream().filter(other -> other.meanings().size() == 1)
                .flatMap(other -> ofSystem(word, other.meanings().get(0)).stream()).findFirst();
        boolean gr = GR.contains(word.word()) && weighing.gr() == Convention.GrMeans.NOT_SAID;
        if (settled.isEmpty() && !gr) {
            settled = weighing.unit().flatMap(unit -> ofSystem(word, unit));
        }
        if (settled.isEmpty() && !gr && !OUNCES.contains(word.word()) && !DRAMS.contains(word.word())) {
            settled = Optional.of(Units.GRAIN);
        }
        return settled.<Step<Unit>>map(Step::done).orElseGet(() -> open(word, figure, task));
    }

    /** The meaning that belongs to the system of another unit; the gram never counts, it is only in the list to be offered. */
    private static Optional<Unit> ofSystem(Piece.UnitWord word, Unit other) {
        return word.meanings().stream().filter(unit -> unit != Units.GRAM && unit.system() == other.system()).findFirst();
    }

    private static Step<Unit> open(Piece.UnitWord word, Piece.Figure figure, Task task) {
        if (OUNCES.contains(word.word())) {
            return task.stop(ReadingFault.OUNCE_NOT_SAID, word, task.quoted(word)
                            + " can mean the troy ounce of 31.10 g or the avoirdupois ounce of 28.35 g.",
                    "Write oz t or oz av, or name the unit in the convention.");
        }
        if (DRAMS.contains(word.word())) {
            return task.stop(ReadingFault.DRAM_NOT_SAID, word, task.quoted(word)
                            + " can mean the avoirdupois dram of 1.77 g or the apothecaries’ dram of 3.89 g.",
                    "Write dr av or dr ap, or name the unit in the convention.");
        }
        return task.stop(ReadingFault.GR_NOT_SAID, word, task.quoted(word) + " can mean grains or grammes, and "
                        + task.silent("say which") + ": " + GrAmbiguity.offer(figure) + ".",
                "Write g or grains in the entry, or say gr: grains or gr: grammes in the convention of this source.");
    }

    /** The units a kind of reading may stand in, as a list for a message. */
    static String known(Kind kind) {
        return switch (kind) {
            case WEIGHT -> "g, mg, kg, grains, dwt, oz t, oz av, dr av, dr ap, carats, tolas, livres, onces, gros, "
                    + "French grains, zolotniks or dolyas";
            case DIAMETER, THICKNESS -> "mm, cm, in, sixteenths of an inch or Paris lignes";
            case AXIS -> "clock hours (6 h), degrees (180°) or an arrow (↓)";
            case DENSITY -> "g/cm³";
            case SURFACE -> "mm² or cm²";
        };
    }

    private static String measured(Unit unit) {
        return switch (unit.dimension()) {
            case MASS -> "weight";
            case LENGTH -> "length";
            case TURN -> "the die-axis";
            case DENSITY -> "density";
            case AREA -> "surface";
        };
    }
}
