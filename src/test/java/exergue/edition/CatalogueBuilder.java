package exergue.edition;

import exergue.dating.DateStyle;
import exergue.dating.Dating;
import exergue.dating.DatingParser;
import exergue.dating.FromWords;
import exergue.dating.Parsed;
import exergue.finding.Place;
import exergue.legend.Legend;
import exergue.legend.LegendParser;
import exergue.measure.Convention;
import exergue.measure.Convention.AxisNotation;
import exergue.measure.Convention.Direction;
import exergue.measure.Convention.GrMeans;
import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.measure.Units;
import exergue.model.Apparatus;
import exergue.model.BookPlan;
import exergue.model.BookWord;
import exergue.model.Catalogue;
import exergue.model.Chapter;
import exergue.model.Collection;
import exergue.model.FindSpot;
import exergue.model.HouseRules;
import exergue.model.HouseStyle;
import exergue.model.HouseStyle.CoinOrder;
import exergue.model.IndexStyle;
import exergue.model.Inline;
import exergue.model.Language;
import exergue.model.Metal;
import exergue.model.Mint;
import exergue.model.PictureStyle;
import exergue.model.Prose;
import exergue.model.Ruler;
import exergue.model.TemplateChoice;
import exergue.model.TitleMatter;
import exergue.model.Work;
import exergue.model.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A small invented catalogue, built in code. What is not said is as in a plain house: one bench, one mint. */
final class CatalogueBuilder {

    static final Place PLACE = Place.ofFile("catalogue.yaml");

    private final Map<String, Written<Convention>> conventions = new LinkedHashMap<>();
    private final Map<String, Work> works = new LinkedHashMap<>();
    private final Map<String, Mint> mints = new LinkedHashMap<>();
    private final Map<String, Ruler> rulers = new LinkedHashMap<>();
    private final Map<String, FindSpot> spots = new LinkedHashMap<>();
    private final Map<String, Collection> collections = new LinkedHashMap<>();
    private final Map<String, Chapter> chapters = new LinkedHashMap<>();
    private final List<TypeBuilder> types = new ArrayList<>();
    private final List<CoinBuilder> coins = new ArrayList<>();
    private final List<String> body = new ArrayList<>(List.of("methods", "catalogue", "works"));
    private List<Kind> order = List.of(Kind.WEIGHT, Kind.DIAMETER, Kind.AXIS);
    private List<Kind> inRemarks = List.of();
    private HouseStyle.OtherHands otherHands = HouseStyle.OtherHands.KEPT;
    private PrintForm form = PrintForm.DEFAULT;
    private String separator = ", ";
    private String notApplicable = "";
    private List<String> prefer = List.of();
    private CoinOrder coinOrder = CoinOrder.BY_ID;
    private Apparatus apparatus = Apparatus.NONE;
    private IndexStyle indexes = IndexStyle.DEFAULT;
    private PictureStyle pictures = PictureStyle.DEFAULT;
    private Language language = Language.ENGLISH;
    private Map<BookWord, String> ownWords = Map.of();

    CatalogueBuilder() {
        mint("lykaia", "Lykaia");
        convention(bench());
    }

    static Convention bench() {
        return new Convention("bench", "measurements at the bench", Optional.of("A. Orr"), Optional.of("2024"),
                Optional.empty(),
                new Convention.Weighing(Optional.of("electronic balance"), Optional.empty(), GrMeans.NOT_SAID,
                        Optional.of(new BigDecimal("0.01"))),
                new Convention.Sizing(Optional.of("digital callipers"), Optional.empty(), Direction.TOP_TO_BOTTOM,
                        Optional.empty(), Optional.of(new BigDecimal("0.1"))),
                new Convention.Turning(AxisNotation.HOURS, false, Optional.of(BigDecimal.ONE)), false,
                Optional.empty());
    }

    /** An old book in grains and inches that says little else. */
    static Convention old() {
        return new Convention("old-1894", "Hallowby’s catalogue", Optional.of("T. Hallowby"), Optional.of("1894"),
                Optional.of("hallowby"),
                new Convention.Weighing(Optional.empty(), Units.named("grain"), GrMeans.GRAINS,
                        Optional.of(new BigDecimal("0.006479891"))),
                new Convention.Sizing(Optional.empty(), Units.named("in"), Direction.NOT_SAID,
                        Optional.empty(), Optional.empty()),
                new Convention.Turning(AxisNotation.DEGREES, false, Optional.empty()), false, Optional.empty());
    }

    static Written<String> words(String text) {
        return new Written<>(text, PLACE);
    }

    static Optional<Written<String>> maybe(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(words(text));
    }

    CatalogueBuilder convention(Convention convention) {
        conventions.put(convention.id(), new Written<>(convention, PLACE));
        return this;
    }

    CatalogueBuilder work(String id, String sign, String in) {
        works.put(id, new Work(words(id), words(sign), false, new Work.AsPrinted(maybe("T. Hallowby"), maybe("1894"),
                words("On coins"), maybe(in), maybe("Aldmoor"))));
        return this;
    }

    CatalogueBuilder mint(String id, String name) {
        mints.put(id, new Mint(words(id), words(name), Optional.empty(), Optional.empty()));
        return this;
    }

    CatalogueBuilder ruler(String id, String name, String dates) {
        rulers.put(id, new Ruler(words(id), words(name), date(dates), Optional.empty()));
        return this;
    }

    CatalogueBuilder spot(String id, String name, String exact, boolean mayPrint) {
        spots.put(id, new FindSpot(words(id), words(name), maybe(exact), mayPrint, Optional.empty(), Optional.empty(), Optional.empty()));
        return this;
    }

    CatalogueBuilder spot(String id, String name, FindSpot.Kind kind) {
        spots.put(id, new FindSpot(words(id), words(name), Optional.empty(), false, Optional.of(new Written<>(kind, PLACE)), Optional.empty(), Optional.empty()));
        return this;
    }

    CatalogueBuilder see(String from, String to) {
        List<Apparatus.See> see = new ArrayList<>(apparatus.see());
        see.add(new Apparatus.See(words(from), words(to)));
        apparatus = new Apparatus(see, apparatus.edition(), apparatus.former(), List.of());
        return this;
    }

    CatalogueBuilder former(String coin, int number) {
        List<Apparatus.FormerNumber> former = new ArrayList<>(apparatus.former());
        former.add(new Apparatus.FormerNumber(words(coin), new Written<>(number, PLACE)));
        apparatus = new Apparatus(apparatus.see(), Optional.of(words("First edition")), former, List.of());
        return this;
    }

    CatalogueBuilder indexes(IndexStyle style) {
        indexes = style;
        return this;
    }

    CatalogueBuilder pictures(PictureStyle style) {
        pictures = style;
        return this;
    }

    CatalogueBuilder parts(String... names) {
        body.clear();
        body.addAll(List.of(names));
        return this;
    }

    CatalogueBuilder collection(String id, String sign) {
        collections.put(id, new Collection(words(id), words(sign), words(sign), Optional.empty()));
        return this;
    }

    CatalogueBuilder authorsMethods(String sentence) {
        Place place = new Place(Chapter.METHODS, 3, 1, 0);
        chapters.put(Chapter.METHODS, new Chapter(Chapter.METHODS,
                List.of(new Inline.Words("Methods")),
                List.of(new Prose.Paragraph(List.of(new Inline.Words(sentence)), place))));
        return this;
    }

    CatalogueBuilder language(Language other) {
        language = other;
        form = new PrintForm(form.weightDecimals(), form.diameterDecimals(), form.rounding(), other.decimalMark(),
                form.unitSpace(), form.hourSign(), other.circa());
        return this;
    }

    CatalogueBuilder words(Map<BookWord, String> own) {
        ownWords = own;
        return this;
    }

    CatalogueBuilder order(Kind... kinds) {
        order = List.of(kinds);
        return this;
    }

    CatalogueBuilder inRemarks(Kind... kinds) {
        inRemarks = List.of(kinds);
        return this;
    }

    CatalogueBuilder otherHandsPrinted() {
        otherHands = HouseStyle.OtherHands.PRINTED;
        return this;
    }

    CatalogueBuilder form(PrintForm form, String separator, String notApplicable) {
        this.form = form;
        this.separator = separator;
        this.notApplicable = notApplicable;
        return this;
    }

    CatalogueBuilder prefer(String... ids) {
        prefer = List.of(ids);
        return this;
    }

    /** One part more at the end of the body. */
    CatalogueBuilder part(String name) {
        body.add(name);
        return this;
    }

    CatalogueBuilder coinOrder(CoinOrder order) {
        coinOrder = order;
        return this;
    }

    TypeBuilder type(String id) {
        TypeBuilder type = new TypeBuilder(id);
        types.add(type);
        return type;
    }

    CoinBuilder coin(String id, String type) {
        CoinBuilder coin = new CoinBuilder(id, type, name -> conventions.get(name).value());
        coins.add(coin);
        return coin;
    }

    Catalogue build() {
        return new Catalogue(title(), new BookPlan(List.of(), body.stream().map(CatalogueBuilder::words).toList(),
                List.of(), List.of()), style(), conventions, works, mints, rulers, spots, collections,
                types.stream().map(TypeBuilder::build).toList(), coins.stream().map(CoinBuilder::build).toList(),
                chapters, apparatus, TemplateChoice.USUAL, Optional.empty(), java.util.Map.of());
    }

    /** From what the book should print: "c. 300 BC". */
    static Optional<Written<Dating>> date(String words) {
        return FromWords.read(words).map(meant -> ((Parsed.Accepted) DatingParser.parse(meant.edtf())).dating())
                .map(dating -> new Written<>(dating, PLACE));
    }

    static Optional<Written<Legend>> legend(String text) {
        return Optional.of(new Written<>(LegendParser.parse(text).legend(), PLACE));
    }

    private TitleMatter title() {
        return new TitleMatter(words("Coins"), Optional.empty(), List.of(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), List.of(), words(language.code()));
    }

    private HouseStyle style() {
        return new HouseStyle(order, inRemarks, separator, form, "–", notApplicable, "[–]", new HouseStyle.Signs("°", "†"),
                prefer.stream().map(CatalogueBuilder::words).toList(),
                Map.of("silver", new Metal("silver", "AR", "silver")), otherHands, HouseStyle.Rows.ALIGNED, coinOrder,
                language.quotes(), ownWords, DateStyle.DEFAULT, Map.of(), indexes,
                HouseStyle.DieNames.ONE_SERIES, pictures, HouseRules.NONE);
    }
}
