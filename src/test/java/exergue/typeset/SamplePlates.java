package exergue.typeset;

import exergue.edition.DrawnScale;
import exergue.edition.Part;
import exergue.edition.Plate;
import exergue.edition.Specimen;
import exergue.model.PrintScale;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Two small plates of the invented book. */
final class SamplePlates {

    static final List<Part> BACK = List.of(new Part.Plates("plates", SampleBook.words("Plates"), List.of(
            new Plate("plate.I", "I", "Plate I", "Lykaia 1–3", List.of(row("0", 2, "1", "2"), row("20", 2, "3")), new BigDecimal("30")),
            new Plate("plate.II", "II", "Plate II", "Lykaia 4", List.of(row("0", 2, "4")), new BigDecimal("50"))),
            List.of("Scale 1:1.", "Thornbury cabinet: no. 3."), new DrawnScale(20, PrintScale.LIFE)));

    private SamplePlates() { }

    private static Plate.Row row(String above, int places, String... numbers) {
        return new Plate.Row(java.util.Arrays.stream(numbers).map(SamplePlates::pair).toList(), new BigDecimal(above),
                new BigDecimal("20"), new BigDecimal("79"), places);
    }

    private static Plate.Pair pair(String number) {
        return new Plate.Pair("lk-" + number, number, new Specimen.Picture(
                Optional.of(SampleBook.face("photographs/obv 3.jpg", "Obverse of no. " + number)),
                Optional.of(SampleBook.face("photographs/rev.png", "Reverse of no. " + number)), Optional.empty(), true,
                number.equals("2") ? "2:1" : ""));
    }
}
