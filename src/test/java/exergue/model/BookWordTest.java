package exergue.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import exergue.measure.Alloy;
import exergue.measure.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BookWordTest {

    @ParameterizedTest
    @EnumSource(BookWord.class)
    void everyWordIsThereInEveryLanguageWithTheSamePlacesInIt(BookWord word) {
        for (Language language : Language.values()) {
            assertFalse(word.in(language).isBlank(), word + " in " + language);
            assertEquals(places(word.in(Language.ENGLISH)), places(word.in(language)), word + " in " + language);
        }
    }

    @Test
    void whateverIsPrintedOfACoinHasItsWord() {
        Arrays.stream(Damage.values()).forEach(damage -> assertNotNull(BookWord.of(damage)));
        Arrays.stream(Making.values()).forEach(making -> assertNotNull(BookWord.of(making)));
        Arrays.stream(Shape.values()).forEach(shape -> assertNotNull(BookWord.of(shape)));
        Arrays.stream(Kind.values()).forEach(kind -> assertNotNull(BookWord.of(kind)));
        Alloy.all().forEach(alloy -> assertEquals(alloy.heavier(), BookWord.metal(alloy.heavier()).in(Language.ENGLISH)));
        Alloy.all().forEach(alloy -> assertEquals(alloy.lighter(), BookWord.metal(alloy.lighter()).in(Language.ENGLISH)));
    }

    private static List<String> places(String words) {
        List<String> places = new ArrayList<>();
        Pattern.compile("\\{\\w+}").matcher(words).results().forEach(place -> places.add(place.group()));
        places.sort(null);
        return places;
    }
}
