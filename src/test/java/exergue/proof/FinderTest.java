package exergue.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FinderTest {

    @ParameterizedTest
    @CsvSource({"'Belmar . . . . . . . . . . . .  4', Belmar … 4", "'Rev. legend ΒΕΛ [...], cf. no. 3', 'Rev. legend ΒΕΛ [...], cf. no. 3'",
        "'lost . . . here', 'lost . . . here'"})
    void leadersDoNotHideTheWords(String line, String shown) {
        assertEquals(shown, Finder.withoutLeaders(line));
    }
}
