package exergue.source.works;

import exergue.finding.Place;
import java.util.List;
import java.util.Map;

/** What a JSON file is made of, with places. */
sealed interface Json {

    Place place();

    /** Text, number, or true and false, as text. */
    record Plain(String text, Place place) implements Json { }

    record Many(List<Json> members, Place place) implements Json { }

    record Pairs(Map<String, Json> values, Place place) implements Json {

        String plain(String key) {
            return values.get(key) instanceof Plain plain ? plain.text() : "";
        }
    }

    /** Nothing at all. */
    record None(Place place) implements Json { }
}
