package exergue.source.keys;

import exergue.dating.Dating;
import exergue.dating.DatingFault;
import exergue.dating.DatingParser;
import exergue.dating.Era;
import exergue.dating.Parsed;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.finding.Severity;
import exergue.model.EraDate;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.Site;
import exergue.source.shape.Text;
import exergue.source.shape.Texts;
import exergue.source.yaml.Scalar;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Texts in EDTF to datings, and years of eras. */
public final class Dates {

    private static final Map<DatingFault, Code> CODES = codesByFault();

    static final Code NO_ERA_YEAR = new Code("no-era-year", Severity.ERROR, "A year of an era is not from 1 to 9999",
            "The years of an era are counted from 1; a greater figure than 9999 is a slip of the pen.",
            "era-date: {era: ah, year: 0}", "era-date: {era: ah, year: 77}");

    /** Never one that must be. */
    static final Text<Written<Dating>> EDTF = new Text<>("date in EDTF", List.of(), DatingParser.FORM, false, Dates::dating,
            (site, place) -> {
                throw new IllegalStateException("a date that must be there");
            });

    private static final Text<Written<Integer>> ERA_YEAR = new Text<>("year from 1", List.of(), "0*[1-9][0-9]{0,3}", false,
            Dates::eraYear, (site, place) -> new Written<>(1, place));

    static final Block<EraDate> ERA_DATE = eraDate();

    private Dates() { }

    public static List<Code> codes() {
        List<Code> codes = new ArrayList<>(CODES.values());
        codes.add(NO_ERA_YEAR);
        codes.add(DateStyleKeys.ERA_FIRST_YEAR);
        return List.copyOf(codes);
    }

    private static Map<DatingFault, Code> codesByFault() {
        Map<DatingFault, Code> codes = new EnumMap<>(DatingFault.class);
        for (DatingFault fault : DatingFault.values()) {
            codes.put(fault, new Code(fault.id(), Severity.ERROR, fault.title(), fault.why(), fault.faulty(), fault.mended()));
        }
        return codes;
    }

    static Optional<Written<Dating>> dating(Scalar text, Site site) {
        Parsed parsed = DatingParser.parse(text.text());
        if (parsed instanceof Parsed.Accepted accepted) {
            return Optional.of(new Written<>(accepted.dating(), text.place()));
        }
        Parsed.Refused refused = (Parsed.Refused) parsed;
        Place place = refused.edit().isPresent() ? text.place() : text.at(refused.offset(), refused.length());
        Finding finding = Finding.of(CODES.get(refused.fault()), place, site.path(), refused.what(), refused.remedy());
        site.report(refused.edit().map(finding::withEdit).orElse(finding));
        return Optional.empty();
    }

    private static Optional<Written<Integer>> eraYear(Scalar text, Site site) {
        if (text.text().matches("0*[1-9][0-9]{0,3}")) {
            return Optional.of(new Written<>(Integer.valueOf(text.text()), text.place()));
        }
        site.report(NO_ERA_YEAR, text.place(), "“" + text.text() + "” is not a year from 1 to " + Era.LAST_YEAR + ".",
                "Write the year as it is counted on the coin, in digits only; if it cannot be read, leave “era-date” out and say so "
                        + "in the note.");
        return Optional.empty();
    }

    private static Block<EraDate> eraDate() {
        Keys keys = new Keys("a year of an era");
        Key<Written<String>> era = keys.must("era", Texts.ID, "The era, from eras of the house style; ah is known without.", "ah");
        Key<Written<Integer>> year = keys.must("year", ERA_YEAR, "The year as it is counted on the coin.", "77");
        return keys.block(f -> new EraDate(f.get(era), f.get(year)));
    }
}
