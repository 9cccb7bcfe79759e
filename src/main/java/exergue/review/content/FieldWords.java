package exergue.review.content;

import java.util.Map;

/** What the trade calls a field. A field that is not in the table is called by the names the model has for it. */
public final class FieldWords {

    /** Words by section and path; "{}" stands for the one that is meant of several. */
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("coins type", "type"),
            Map.entry("coins number", "pinned number"),
            Map.entry("coins measured.by", "measured by"),
            Map.entry("coins measured.weight", "weight"),
            Map.entry("coins measured.diameter", "diameter"),
            Map.entry("coins measured.axis", "axis"),
            Map.entry("coins measured.thickness", "thickness"),
            Map.entry("coins measured.density", "density"),
            Map.entry("coins measured.surface", "surface"),
            Map.entry("coins alsoMeasured.weight", "weight by {}"),
            Map.entry("coins alsoMeasured.diameter", "diameter by {}"),
            Map.entry("coins alsoMeasured.axis", "axis by {}"),
            Map.entry("coins alsoMeasured.thickness", "thickness by {}"),
            Map.entry("coins alsoMeasured.density", "density by {}"),
            Map.entry("coins alsoMeasured.surface", "surface by {}"),
            Map.entry("coins damage", "damage"),
            Map.entry("coins weightCounts.counts", "weight counts in statistics"),
            Map.entry("coins weightCounts.why", "why the weight counts or not"),
            Map.entry("coins dies.obverse", "obverse die"),
            Map.entry("coins dies.reverse", "reverse die"),
            Map.entry("coins holding.collection", "collection"),
            Map.entry("coins holding.number", "number in the collection"),
            Map.entry("coins find.spot", "find-spot"),
            Map.entry("coins find.context", "find context"),
            Map.entry("coins find.number", "find number"),
            Map.entry("coins photograph.obverse", "photograph of the obverse"),
            Map.entry("coins photograph.reverse", "photograph of the reverse"),
            Map.entry("coins photograph.width", "width of the photograph"),
            Map.entry("coins photograph.credit", "credit of the photograph"),
            Map.entry("coins photograph.permission", "permission for the photograph"),
            Map.entry("coins diameterMeans", "what the diameter means"),
            Map.entry("types diameterMeans", "what the diameter means"),
            Map.entry("types order", "place among the types of its ruler"),
            Map.entry("types standard", "weight standard"),
            Map.entry("types making", "making"),
            Map.entry("eraDate.era", "era on the coin"),
            Map.entry("eraDate.year", "year on the coin"),
            Map.entry("obverse.legend", "obverse legend"),
            Map.entry("reverse.legend", "reverse legend"),
            Map.entry("obverse.retrograde", "obverse legend retrograde"),
            Map.entry("reverse.retrograde", "reverse legend retrograde"),
            Map.entry("obverse.description", "obverse"),
            Map.entry("reverse.description", "reverse"),
            Map.entry("references", "reference {}"),
            Map.entry("note", "note"),
            Map.entry("chapters blocks", "text"),
            Map.entry("style order", "members of the measurement line"),
            Map.entry("style inRemarks", "measurements among the remarks"),
            Map.entry("style form.weightDecimals", "decimals of weights"),
            Map.entry("style form.diameterDecimals", "decimals of diameters"),
            Map.entry("style form.rounding", "rounding"),
            Map.entry("style prefer", "hands in order of preference"),
            Map.entry("style rows", "rows of specimens"),
            Map.entry("style coinOrder", "order of coins"),
            Map.entry("style words", "word for {}"),
            Map.entry("style metals.sign", "sign of the metal {}"),
            Map.entry("style metals.name", "name of the metal {}"),
            Map.entry("plan front", "parts of the front matter"),
            Map.entry("plan body", "parts of the body"),
            Map.entry("plan back", "parts of the back matter"),
            Map.entry("apparatus former.number", "former number of {}"),
            Map.entry("apparatus see", "see-references"),
            Map.entry("findSpots exact", "exact place"),
            Map.entry("findSpots mayPrint", "the exact place may be printed"),
            Map.entry("findSpots kind", "how the coins came to light"),
            Map.entry("conventions by", "who measured"),
            Map.entry("conventions when", "when it was measured"),
            Map.entry("conventions weighing.gr", "what gr means"),
            Map.entry("conventions turning.anticlockwise", "axis counted anticlockwise"),
            Map.entry("order", "order in the book"),
            Map.entry("files ", "content"));

    private FieldWords() { }

    /** "weight", "reference hallam-1931", "obverse die" */
    public static String of(Section section, Field field) {
        String known = WORDS.getOrDefault(section.name() + " " + field.path(), WORDS.get(field.path()));
        if (known != null) {
            return known.replace("{}", field.of());
        }
        String words = Section.spelt(field.path().replace('.', ' '));
        return field.of().isEmpty() ? words : words + " of " + field.of();
    }
}
