package exergue.source.keys;

import exergue.dating.Dating;
import exergue.measure.Alloy;
import exergue.model.EraDate;
import exergue.model.Excuse;
import exergue.model.Limits;
import exergue.model.Making;
import exergue.model.Prose;
import exergue.model.Reference;
import exergue.model.Shape;
import exergue.model.Side;
import exergue.model.Type;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Fields;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.ListOf;
import exergue.source.shape.Texts;
import java.util.List;
import java.util.Optional;

/** types/&lt;id&gt;.yaml: one type. */
final class TypeKeys {

    private static final Keys KEYS = new Keys("a type");

    private static final Key<Written<String>> ID = KEYS.must("id", Texts.OWN_ID,
            "The type's own id, the same as the name of its file.", "owl-drachm");
    private static final Key<Written<String>> MINT = KEYS.must("mint", Texts.ID, "The mint, from mints.yaml.", "lampron");
    private static final Key<Optional<Written<String>>> RULER = KEYS.may("ruler", Texts.ID,
            "The ruler, magistrate or period, from rulers.yaml.", "archon-i");
    private static final Key<Optional<Written<Integer>>> ORDER = KEYS.may("order", Texts.WHOLE_NUMBER,
            "Place among the types of its ruler; types without one follow, by id.", "3");
    private static final Key<Optional<Written<String>>> ISSUE = KEYS.may("issue", Texts.WORDS,
            "Small heading above this type and those after it with the same issue. Types without one stand before "
                    + "those with one.", "First issue");
    private static final Key<Written<String>> DENOMINATION = KEYS.must("denomination", Texts.WORDS,
            "The denomination, as printed.", "Drachm");
    private static final Key<Written<String>> METAL = KEYS.must("metal", Texts.ID,
            "The metal: gold, silver, billon, copper-alloy, copper, lead, or one the house style adds.", "silver");
    private static final Key<Optional<Written<Alloy>>> ALLOY = KEYS.may("alloy", Texts.oneOf(Alloy.all(), Alloy::id, ""),
            "The two metals its coins are taken to be made of; where a coin has a density, a fineness is worked out from it.",
            "gold-silver");
    private static final Key<Optional<Written<Dating>>> DATE = KEYS.may("date", Dates.EDTF,
            "When it was struck, in EDTF: -0211~/-0207~ is c. 212–208 BC.", "-0211~/-0207~");
    private static final Key<Optional<EraDate>> ERA_DATE = KEYS.may("era-date", Dates.ERA_DATE,
            "The year of an era that stands on the coins; printed with its years BC or AD.", "");
    private static final Key<Optional<Written<String>>> STANDARD = KEYS.may("standard", Texts.WORDS, "The weight standard, as printed.",
            "reduced local standard");
    private static final Key<Written<Shape>> SHAPE = KEYS.or("shape", Texts.oneOf(List.of(Shape.values()), Shape::word, ""), "round",
            "The outline of the flan.", "square");
    private static final Key<Written<Making>> MADE = KEYS.or("made", Texts.oneOf(List.of(Making.values()), Making::word, ""), "struck",
            "How it was made; this decides what its axis means.", "cast");
    private static final Key<Written<Boolean>> UNIFACE = KEYS.or("uniface", Texts.YES_OR_NO, "no",
            "Whether one side is blank; then there is no axis.", "yes");
    private static final Key<Optional<Written<String>>> DIAMETER_MEANS = KEYS.may("diameter-means", Texts.WORDS,
            "What is measured as diameter on a flan that is not round.", "across the flats");
    private static final Key<Optional<Side>> OBVERSE = KEYS.may("obverse", SideKeys.BLOCK, "The obverse.", "");
    private static final Key<Optional<Side>> REVERSE = KEYS.may("reverse", SideKeys.BLOCK, "The reverse.", "");
    private static final Key<List<Reference>> REFERENCES = KEYS.or("references", new ListOf<>(ReferenceKeys.BLOCK), "",
            "What other works say of the type, in the order they are printed.", "");
    private static final Key<List<Written<String>>> KEYWORDS = KEYS.or("keywords", new ListOf<>(Texts.WORDS), "",
            "What the index of types and attributes has it under.", "[heron, incuse square]");
    private static final Key<Optional<Limits>> LIMITS = KEYS.may("limits", LimitsKeys.BLOCK,
            "Weights and diameters you expect; a coin outside them is pointed out.", "");
    private static final Key<List<Prose>> NOTE = KEYS.or("note", Texts.PROSE, "", "Anything else worth printing, in Markdown.",
            "The die-cutter also worked for the neighbouring mint.");
    private static final Key<List<Excuse>> EXCUSED = ExcuseKeys.in(KEYS);

    static final Block<Type> BLOCK = KEYS.block(TypeKeys::bind);

    private TypeKeys() { }

    private static Type bind(Fields f) {
        return new Type(f.get(ID), f.get(MINT), f.get(RULER), f.get(ORDER), f.get(ISSUE), f.get(DENOMINATION), f.get(METAL),
                f.get(ALLOY), f.get(DATE), f.get(ERA_DATE), f.get(STANDARD), f.get(SHAPE), f.get(MADE), f.get(UNIFACE), f.get(DIAMETER_MEANS),
                f.get(OBVERSE).orElse(Side.BLANK), f.get(REVERSE).orElse(Side.BLANK), f.get(REFERENCES), f.get(KEYWORDS), f.get(LIMITS),
                f.get(NOTE), f.get(EXCUSED), f.place());
    }
}
