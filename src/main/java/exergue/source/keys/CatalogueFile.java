package exergue.source.keys;

import exergue.finding.NearMiss;
import exergue.model.BookPlan;
import exergue.model.CoinGroup;
import exergue.model.Language;
import exergue.model.Phrase;
import exergue.model.PictureRights;
import exergue.model.TemplateSet;
import exergue.model.TemplateChoice;
import exergue.model.TitleMatter;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Fields;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.ListOf;
import exergue.source.shape.MapOf;
import exergue.source.shape.PathTexts;
import exergue.source.shape.ShapeCodes;
import exergue.source.shape.Site;
import exergue.source.shape.Text;
import exergue.source.shape.Texts;
import exergue.source.yaml.Scalar;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * catalogue.yaml: the catalogue's own file.
 *
 * @param templates     the set that lays the book out, and the catalogue's own files
 * @param citationStyle path of a citation style of the catalogue's own
 * @param groups        of coins that chapters study, by id
 * @param pictures      of chapters: who took them and who allows them
 */
public record CatalogueFile(TitleMatter title, BookPlan plan, TemplateChoice templates,
                            Optional<Written<String>> citationStyle, Map<String, CoinGroup> groups,
                            List<PictureRights> pictures) {

    private static final Text<Written<String>> LANGUAGE = new Text<>("language", Language.codes(), "", false, CatalogueFile::language,
            (site, place) -> new Written<>("en", place));

    /** What else an author may call them. */
    private static final Map<String, List<String>> MEANT = Map.of("en", List.of("english", "eng", "en-gb", "en-us"),
            "fr", List.of("french", "français", "francais", "fra", "fre", "fr-fr"),
            "de", List.of("german", "deutsch", "ger", "deu", "de-de", "de-at", "de-ch"),
            "it", List.of("italian", "italiano", "ita", "it-it"));

    private static final Keys KEYS = new Keys("the catalogue");

    private static final Key<Written<String>> TITLE = KEYS.must("title", Texts.WORDS, "The title of the book.", "Coins of the Harbour");
    private static final Key<Optional<Written<String>>> SUBTITLE = KEYS.may("subtitle", Texts.WORDS, "The subtitle.", "A catalogue");
    private static final Key<List<Written<String>>> AUTHORS = KEYS.or("authors", new ListOf<>(Texts.WORDS), "",
            "The authors, in the order of the title page.", "[A. Author, B. Author]");
    private static final Key<Optional<Written<String>>> PLACE = KEYS.may("place", Texts.WORDS, "Where it is published.", "Lampron");
    private static final Key<Optional<Written<String>>> PUBLISHER = KEYS.may("publisher", Texts.WORDS, "The publisher.", "Harbour Press");
    private static final Key<Optional<Written<String>>> YEAR = KEYS.may("year", Texts.WORDS, "Year of publication.", "2026");
    private static final Key<Optional<Written<String>>> SERIES = KEYS.may("series", Texts.WORDS, "Series and volume.", "Harbour Studies 3");
    private static final Key<Optional<Phrase>> NOTICE = KEYS.may("notice", Texts.LINE, "A sentence for the title page.",
            "All of it is invented.");
    private static final Key<List<Phrase>> IMPRINT = KEYS.or("imprint", new ListOf<>(Texts.LINE), "",
            "Lines for the back of the title page.", "[First published 2026, Set in Gentium]");
    private static final Key<Written<String>> LANGUAGE_KEY = KEYS.must("language", LANGUAGE,
            "The language of the book: English, French, German or Italian.", "en");
    private static final Key<BookPlan> PARTS = KEYS.must("parts", parts(), "The parts of the book in their order.", "");
    private static final Key<Written<TemplateSet>> TEMPLATE_SET = KEYS.or("template-set",
            Texts.oneOf(List.of(TemplateSet.values()), TemplateSet::word), TemplateSet.CORPUS.word(),
            "What kind of book the pages make: a corpus (types with their specimens), a collection (one entry a coin, "
                    + "its picture beside it) or an excavation (short entries, find number and context first).",
            "collection");
    private static final Key<Optional<Written<String>>> TEMPLATES = KEYS.may("templates", PathTexts.FOLDER,
            "Folder with page templates of the catalogue's own; any file that is not in it is taken from the set.", "templates");
    private static final Key<Optional<Written<String>>> CITATION_STYLE = KEYS.may("citation-style", PathTexts.STYLE,
            "A CSL file: the style in which the works of works.json and works.bib are set.", "styles/journal.csl");

    private static final Key<Map<String, CoinGroup>> GROUPS = KEYS.or("groups", new MapOf<>(GroupKeys.BLOCK), "",
            "Groups of coins that chapters and the command metrology study, by an id of your choice.", "");

    private static final Key<List<PictureRights>> PICTURES = KEYS.or("pictures", new ListOf<>(PictureRightsKeys.BLOCK), "",
            "Pictures in chapters: whom to thank for each, and who allows it. Photographs of coins say so in their entries.", "");

    static final Block<CatalogueFile> BLOCK = KEYS.block(CatalogueFile::bind);

    private static CatalogueFile bind(Fields f) {
        TitleMatter title = new TitleMatter(f.get(TITLE), f.get(SUBTITLE), f.get(AUTHORS), f.get(PLACE), f.get(PUBLISHER),
                f.get(YEAR), f.get(SERIES), f.get(NOTICE), f.get(IMPRINT), f.get(LANGUAGE_KEY));
        TemplateChoice templates = new TemplateChoice(f.get(TEMPLATE_SET).value(), f.get(TEMPLATES).map(Written::value));
        return new CatalogueFile(title, f.get(PARTS), templates, f.get(CITATION_STYLE), f.get(GROUPS), f.get(PICTURES));
    }

    private static Block<BookPlan> parts() {
        String which = " Parts are " + String.join(", ", PathTexts.PARTS) + ", or the path of a chapter.";
        Keys keys = new Keys("the parts of the book");
        Key<List<Written<String>>> front = keys.or("front", new ListOf<>(PathTexts.PART), "",
                "Before the body, with roman page numbers." + which, "[title, imprint, contents]");
        Key<List<Written<String>>> body = keys.or("body", new ListOf<>(PathTexts.PART), "",
                "The body, with arabic page numbers from 1." + which, "[chapters/introduction.md, methods, catalogue]");
        Key<List<Written<String>>> back = keys.or("back", new ListOf<>(PathTexts.PART), "",
                "After the body; page numbers go on." + which, "[works]");
        Key<List<Written<String>>> onRight = keys.or("on-right", new ListOf<>(PathTexts.PART), "",
                "Parts of body and back that open on a right-hand page, after a blank one where need be. The first of the body "
                        + "always does.", "[catalogue, works]");
        return keys.block(f -> {
            BookPlan plan = new BookPlan(f.get(front), f.get(body), f.get(back), f.get(onRight));
            plan.onRight().forEach(part -> reportIfNowhere(part, plan, f.site()));
            return plan;
        });
    }

    private static void reportIfNowhere(Written<String> part, BookPlan plan, Site site) {
        List<String> later = Stream.concat(plan.body().stream(), plan.back().stream()).map(Written::value).toList();
        if (!later.contains(part.value())) {
            site.report(ShapeCodes.UNKNOWN_PART, part.place(), "“" + part.value() + "” is neither in body nor in back, so it opens nowhere.",
                    NearMiss.of(part.value(), later).map(near -> "Did you mean “" + near + "”? Otherwise add it to body or back, or take it away here.")
                            .orElse("Add it to body or back, or take it away here."));
        }
    }

    private static Optional<Written<String>> language(Scalar scalar, Site site) {
        if (Language.of(scalar.text()).isPresent()) {
            return Optional.of(new Written<>(scalar.text(), scalar.place()));
        }
        Optional<Language> meant = Arrays.stream(Language.values())
                .filter(language -> MEANT.get(language.code()).contains(scalar.text().toLowerCase(Locale.ROOT))).findFirst();
        site.report(ShapeCodes.LANGUAGE_NOT_YET, scalar.place(), "The language “" + scalar.text() + "” is not one a book can be set in.",
                meant.map(language -> "Write language: " + language.code() + " for " + language.englishName() + ".")
                        .orElse("Write one of these: en (English), fr (French), de (German), it (Italian)."));
        return Optional.empty();
    }
}
