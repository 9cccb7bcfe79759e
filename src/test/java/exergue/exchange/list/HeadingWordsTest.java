package exergue.exchange.list;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.source.list.ColumnContent;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Headings of lists in four languages: common practice, no source. */
class HeadingWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", value = {
        "Wt (g) | weight | g", "Weight, grains | weight | grains", "Weight in g | weight | g", "Wt. (grs) | weight | grs", "Mass [mg] | weight | mg",
        "Poids (g) | weight | g", "Gew. (g) | weight | g", "Gewicht | weight | -", "Peso, g | weight | g",
        "Diam. | diameter | -", "Ø (mm) | diameter | mm", "Dm. in mm | diameter | mm", "Durchmesser | diameter | -", "Diamètre (mm) | diameter | mm",
        "Module | diameter | -", "Diametro | diameter | -", "Die-axis | axis | -", "Axe (h) | axis | h", "Stempelstellung | axis | -", "Asse | axis | -",
        "Inv. No. | inventory number | -", "Accession number | inventory number | -", "N° inv. | inventory number | -",
        "Inv.-Nr. | inventory number | -", "Inventarnummer | inventory number | -", "Numero di inventario | inventory number | -",
        "Mint | mint | -", "Atelier | mint | -", "Münzstätte | mint | -", "Zecca | mint | -",
        "Findspot | find-spot | -", "Find-spot | find-spot | -", "Lieu de découverte | find-spot | -", "FUNDORT | find-spot | -",
        "Luogo di rinvenimento | find-spot | -", "Obv. | obverse description | -", "Vs. | obverse description | -", "Rückseite | reverse description | -",
        "Remarks | note | -", "Bemerkungen | note | -", "État | note | -", "Erhaltung | note | -",
        "Provenance | - | -", "Herkunft | - | -", "Provenienza | - | -", "Ref. | - | -", "Literatur | - | -", "Shelf | - | -", "Weight watchers | - | -",
        "(g) | - | g", "Weight g | weight | g", "Ø mm | diameter | mm", "⌀ | diameter | -", "Wt (g) 1890 | weight | g", "Weight (mg) (2) | weight | mg",
        "Diam. 2 | diameter | -", "Inv. no. 1890 | - | -", "Weight (best) | - | -", "N° d'inv. | inventory number | -", "Münzst. | mint | -",
        "Bem. | note | -", "Erh. | note | -", "Obs. | note | -", "Anm. | note | -", "FO | find-spot | -", "Lég. dr. | obverse legend | -",
        "Stempel Rv. | reverse die | -", "Kat. | - | -", "Rif. | - | -", "Obv./Rev. | - | -", "Size (ins) | - | ins",
    })
    void areUnderstoodOrLeftToTheAuthor(String heading, String content, String unit) {
        assertEquals(content, HeadingWords.content(heading).map(ColumnContent::word).orElse(null));
        assertEquals(unit, HeadingWords.unit(heading).orElse(null));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1931/7 | 1931-7", "TM 0042 | tm-0042", "1931.42 | 1931.42", "Mü Ø 7 ß | mu-o-7-ss", "A.-B | a-b", "..7.. | 7",
        "ΑΒΓ | ''", "No. 12 (a) | no-12-a"})
    void anIdIsMadeOfWhatIdsMayHave(String text, String id) {
        assertEquals(id, IdPattern.slug(text));
    }
}
