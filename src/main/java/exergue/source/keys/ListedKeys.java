package exergue.source.keys;

import exergue.dating.Dating;
import exergue.model.Collection;
import exergue.model.FindSpot;
import exergue.model.FindsElsewhere;
import exergue.model.Mint;
import exergue.model.Phrase;
import exergue.model.Ruler;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.ListOf;
import exergue.source.shape.Texts;
import exergue.source.works.WorkEntry;
import java.util.List;
import java.util.Optional;

/** What stands under an id in works, mints, rulers, find-spots and collections. */
final class ListedKeys {

    static final Block<WorkEntry> WORK = work();
    static final Block<Mint> MINT = mint();
    static final Block<Ruler> RULER = ruler();
    static final Block<FindSpot> FIND_SPOT = findSpot();
    static final Block<Collection> COLLECTION = collection();

    private ListedKeys() { }

    private static Block<WorkEntry> work() {
        Keys keys = new Keys("a work");
        Key<Optional<Written<String>>> sign = keys.may("sign", Texts.WORDS, "The abbreviation printed in references. "
                + "It must be there, unless the work is in works.json or works.bib.", "Hallam");
        Key<Written<Boolean>> standard = keys.or("standard", Texts.YES_OR_NO, "no",
                "Whether the work belongs in the part “abbreviations”, if the book has one, and not in “works”.", "yes");
        Key<Optional<Written<String>>> authors = keys.may("authors", Texts.WORDS, "Authors as printed.", "Hallam, R.");
        Key<Optional<Written<String>>> year = keys.may("year", Texts.WORDS, "Year as printed.", "1931");
        Key<Optional<Written<String>>> title = keys.may("title", Texts.WORDS,
                "The title. It must be there, unless the work is in works.json or works.bib.", "The coins of the harbour");
        Key<Optional<Written<String>>> in = keys.may("in", Texts.WORDS, "Journal, series or collected volume, set in italic.",
                "Papers of the Harbour Society");
        Key<Optional<Written<String>>> rest = keys.may("rest", Texts.WORDS, "Volume, place, pages: what follows, as printed.",
                "4, pp. 12–80");
        return keys.block(f -> new WorkEntry(f.site().entry(), f.get(sign), f.get(standard).value(),
                new WorkEntry.Printed(f.get(authors), f.get(year), f.get(title), f.get(in), f.get(rest)), f.place()));
    }

    private static Block<Mint> mint() {
        Keys keys = new Keys("a mint");
        Key<Written<String>> name = keys.must("name", Texts.WORDS, "The heading of the mint.", "Lampron");
        Key<Optional<Written<Dating>>> dates = keys.may("dates", Dates.EDTF,
                "When it worked, in EDTF, as far as is known; printed under the heading.", "-0349~/-0264");
        Key<Optional<Phrase>> note = keys.may("note", Texts.LINE, "A paragraph under the heading.", "The mint by the harbour.");
        return keys.block(f -> new Mint(f.site().entry(), f.get(name), f.get(dates), f.get(note)));
    }

    private static Block<Ruler> ruler() {
        Keys keys = new Keys("a ruler");
        Key<Written<String>> name = keys.must("name", Texts.WORDS, "The heading of the ruler.", "Archon I");
        Key<Optional<Written<Dating>>> dates = keys.may("dates", Dates.EDTF, "From when to when, in EDTF: -0211/-0197 is 212–198 BC.",
                "-0211/-0197");
        Key<Optional<Phrase>> note = keys.may("note", Texts.LINE, "A paragraph under the heading.", "He moved the mint.");
        return keys.block(f -> new Ruler(f.site().entry(), f.get(name), f.get(dates), f.get(note)));
    }

    private static Block<FindSpot> findSpot() {
        Keys keys = new Keys("a find-spot");
        Key<Written<String>> name = keys.must("name", Texts.WORDS,
                "A coarse name that is safe to print: a district, or a site open to the public.", "Harbour quarter");
        Key<Optional<Written<String>>> exact = keys.may("exact", Texts.WORDS,
                "The exact place; never printed unless the next key allows it.", "north quay, square C4");
        Key<Written<Boolean>> mayPrint = keys.or("exact-may-be-printed", Texts.YES_OR_NO, "no",
                "Whether the exact place may be printed.", "yes");
        Key<Optional<Written<FindSpot.Kind>>> kind = keys.may("kind",
                Texts.oneOf(List.of(FindSpot.Kind.values()), FindSpot.Kind::words, ""),
                "How the coins came to light; find tables are made for those that say it.", "hoard");
        Key<Optional<Written<Dating>>> closed = keys.may("closed", Dates.EDTF,
                "The closing date of a hoard, in EDTF: after it, nothing was added; printed before its find tables.", "-0264~");
        Key<Optional<FindsElsewhere>> compared = keys.may("compared-with", findsElsewhere(),
                "Other finds, with which its coins are compared period by period.", "");
        return keys.block(f -> new FindSpot(f.site().entry(), f.get(name), f.get(exact), f.get(mayPrint).value(), f.get(kind), f.get(closed), f.get(compared)));
    }

    private static Block<FindsElsewhere> findsElsewhere() {
        Keys keys = new Keys("the finds compared");
        Key<Written<String>> title = keys.must("title", Texts.WORDS, "What they are, as printed.", "nine sites of the coast");
        Key<List<FindsElsewhere.Period>> periods = keys.or("periods", new ListOf<>(period()), "",
                "Their coins by period. Only the proportions count: coins per thousand will do as well.", "[{period: archon-1, coins: 310}]");
        Key<Written<Integer>> others = keys.or("others", Texts.WHOLE_NUMBER, "0", "Coins of periods that the catalogue has not.", "9");
        return keys.block(f -> new FindsElsewhere(f.get(title), f.get(periods), f.get(others)));
    }

    private static Block<FindsElsewhere.Period> period() {
        Keys keys = new Keys("a period of the finds compared");
        Key<Written<String>> ruler = keys.must("period", Texts.ID, "The ruler or period, from rulers.yaml.", "archon-1");
        Key<Written<Integer>> coins = keys.must("coins", Texts.WHOLE_NUMBER, "How many coins.", "310");
        return keys.block(f -> new FindsElsewhere.Period(f.get(ruler), f.get(coins)));
    }

    private static Block<Collection> collection() {
        Keys keys = new Keys("a collection");
        Key<Written<String>> name = keys.must("name", Texts.WORDS, "The name in full.", "Town Museum");
        Key<Written<String>> sign = keys.must("sign", Texts.WORDS, "The short form printed in rows.", "TM");
        Key<Optional<Written<String>>> place = keys.may("place", Texts.WORDS, "Where it is.", "Lampron");
        return keys.block(f -> new Collection(f.site().entry(), f.get(name), f.get(sign), f.get(place)));
    }
}
