package exergue.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

/** Whatever the text, a reading or a refusal that points into it; and what is printed is read again as the same. */
class AnyTextTest {

    private static final String[] CRUMBS = {"3", "87", "0", "12", "1", ".", ",", ":", "/", " ", "\u00A0", "\u2009", "-", "–", "−",
        "x", "×", "by", "to", "½", "¾", "⅒", "c.", "ca", "<", ">", "?", "~", "g", "gr", "gr.", "grains", "dwt", "oz", "oz t",
        "gros", "livre", "mm", "in", "\"", "″", "''", "'", "‴", "ligne", "size", "no.", "Mionnet", "h", "°", "º", "↓", "↗", "⬇\uFE0F",
        "↑", "O", "l", "missing", ":", "why", "illegible", "not applicable", "n/a", "３", "²", "\u0000", "\uD83E", "kg", "mg", "zol",
        "in air", "in water", "20 °C", "14.1 g in air, 13.1 g in water, 20 °C", "g/cm³", "mm²", "mm2"};
    private static final String[] HINTS = {"", "gr=grains", "gr=grammes", "comma", "unit=gram", "unit=mm", "unit=french-grain",
        "unit=sixteenth-inch", "scale=prime-1861", "hours", "degrees", "anticlockwise", "step=0.1", "step=300"};

    @Property(tries = 10_000)
    void anyUnicode(@ForAll Kind kind, @ForAll String text, @ForAll("hints") String hint) {
        answers(kind, text, hint);
    }

    @Property(tries = 20_000)
    void anyNearMiss(@ForAll Kind kind, @ForAll("crumbs") String text, @ForAll("hints") String hint) {
        answers(kind, text, hint);
    }

    private static void answers(Kind kind, String text, String hint) {
        Parsed parsed = ReadingParser.parse(kind, text, Hints.convention(hint));
        if (parsed instanceof Parsed.Accepted accepted) {
            assertEquals(text, accepted.reading().recorded());
            accepted.remarks().forEach(remark -> placed(remark, text));
        } else {
            placed(((Parsed.Refused) parsed).remark(), text);
        }
        assertFalse(Working.of(kind, text, Hints.convention(hint), PrintForm.DEFAULT).lines().isEmpty());
    }

    private static void placed(Remark remark, String text) {
        int length = text.codePointCount(0, text.length());
        assertTrue(remark.offset() >= 0 && remark.length() >= 0 && remark.offset() + remark.length() <= length, remark.toString());
        assertTrue(remark.length() > 0 || length == 0, remark.toString());
        assertTrue(remark.what().endsWith(".") && remark.remedy().endsWith("."), remark.toString());
    }

    @Property(tries = 10_000)
    void printedTextIsReadAgain(@ForAll("likely") Recorded recorded, @ForAll("hints") String hint,
                                @ForAll("forms") PrintForm form) {
        Kind kind = recorded.kind();
        String text = recorded.text();
        Parsed parsed = ReadingParser.parse(kind, text, Hints.convention(hint));
        Statistics.collect(parsed instanceof Parsed.Accepted);
        Statistics.coverage(checker -> checker.check(true).percentage(accepted -> accepted > 25));
        if (parsed instanceof Parsed.Accepted accepted && accepted.reading() instanceof Reading.Read read) {
            String printed = Printer.print(read, form).text();
            String plain = form.decimalMark().equals(",") ? "comma" : "";
            Reading.Read again = Hints.read(kind, printed, plain);
            assertEquals(printed, Printer.print(again, form).text(), text);
            assertEquals(printed, Printer.print(Hints.read(kind, text, hint), form).text());
        }
    }

    @Provide
    Arbitrary<String> hints() {
        return Arbitraries.of(HINTS);
    }

    @Provide
    Arbitrary<String> crumbs() {
        return Arbitraries.of(CRUMBS).list().ofMaxSize(9).map(crumbs -> String.join("", crumbs));
    }

    /** Texts built as authors build them, so that most are accepted under one convention or another. */
    @Provide
    Arbitrary<Recorded> likely() {
        return Arbitraries.of(Kind.class).flatMap(kind -> texts(kind).map(text -> new Recorded(kind, text)));
    }

    record Recorded(Kind kind, String text) { }

    private static Arbitrary<String> texts(Kind kind) {
        Arbitrary<String> before = Arbitraries.of("", "", "", "c. ", "<", "> ");
        Arbitrary<String> figure = Arbitraries.oneOf(Arbitraries.bigDecimals().between(BigDecimal.ZERO,
                new BigDecimal("400")).ofScale(2).map(BigDecimal::toPlainString),
                Arbitraries.bigDecimals().between(BigDecimal.ZERO, BigDecimal.ONE).ofScale(5)
                        .map(BigDecimal::toPlainString),
                Arbitraries.integers().between(0, 400).map(String::valueOf),
                Arbitraries.of("½", "1¾", "1 3/16", "11/16", "6:30", "12½", "3,87", "2 dwt 11", "1 livre 3 once 2"));
        Arbitrary<String> middle = kind == Kind.DIAMETER ? Arbitraries.of("", "", " x 17", "-19.55", "–400") : Arbitraries.just("");
        Arbitrary<String> unit = Arbitraries.of(Units.of(kind.dimension())).map(u -> " " + u.plural().replace("Paris lignes", "lignes"));
        Arbitrary<String> after = Arbitraries.of(unit, Arbitraries.of("", " gr", " oz", "?"))
                .flatMap(either -> either);
        return Combinators.combine(before, figure, middle, after).as((b, f, m, a) -> b + f + m + a);
    }

    @Provide
    Arbitrary<PrintForm> forms() {
        return Combinators.combine(Arbitraries.integers().between(0, 4), Arbitraries.integers().between(0, 2),
                Arbitraries.of(RoundingMode.HALF_EVEN, RoundingMode.HALF_UP), Arbitraries.of(".", ","),
                Arbitraries.of("\u202F", "\u00A0", ""))
                .as((weight, diameter, rounding, mark, space) -> new PrintForm(weight, diameter, rounding, mark, space, "h"));
    }
}
