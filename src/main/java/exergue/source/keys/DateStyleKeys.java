package exergue.source.keys;

import exergue.dating.DateLanguage;
import exergue.dating.DateStyle;
import exergue.dating.DateStyle.Centuries;
import exergue.dating.DateStyle.Ends;
import exergue.dating.DateStyle.EraWords;
import exergue.dating.Dating;
import exergue.dating.Era;
import exergue.dating.Qualification;
import exergue.finding.Code;
import exergue.finding.Severity;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Fields;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.Texts;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code dates} and {@code eras} of the house style. */
final class DateStyleKeys {

    static final Code ERA_FIRST_YEAR = new Code("era-first-year", Severity.ERROR, "It is not said in which year an era begins",
            "The years of an era are printed with our own beside them, which are counted from the first.",
            "eras:\n  ardian: {sign: year}", "eras:\n  ardian: {sign: year, year-one: -0311}   # 312 BC");

    static final Block<DateStyle> DATES = dates();
    static final Block<Era> ERA = era();

    private static final String LUNAR = "lunar";
    private static final String IN_JANUARY = "in January";
    private static final Era HIJRI = new Era("ah", "AH", new Era.Lunar());

    private DateStyleKeys() { }

    /** The eras the house declares, and AH. */
    static Map<String, Era> eras(Optional<Map<String, Era>> declared) {
        Map<String, Era> eras = new LinkedHashMap<>();
        eras.put(HIJRI.id(), HIJRI);
        declared.ifPresent(eras::putAll);
        return Collections.unmodifiableMap(eras);
    }

    private static Block<DateStyle> dates() {
        Keys keys = new Keys("the form of dates");
        Key<Optional<Written<String>>> circa = keys.may("circa", Texts.WORDS,
                "Before a date that is approximate; unless written, c. in English, vers in French, ca. in German and Italian.", "ca.");
        Key<Optional<Written<String>>> uncertain = keys.may("uncertain", Texts.WORDS, "After a date that is uncertain; unless written, ?.", "\" (?)\"");
        Key<Written<EraWords>> eraWords = keys.or("era-words", Texts.oneOf(List.of(EraWords.values()), EraWords::word), "BC/AD",
                "Which era the book names, in the words of its language: BC or BCE, av. J.-C. or av. n. è., v. Chr. or v. u. Z., a.C. or a.e.v.", "BCE/CE");
        Key<Written<Ends>> ends = keys.or("ends", Texts.oneOf(List.of(Ends.values()), Ends::word), "full",
                "Spans of years AD: AD 117–138, or short: AD 117–38. Years BC are always in full.", "short");
        Key<Written<Centuries>> centuries = keys.or("centuries", Texts.oneOf(List.of(Centuries.values()), Centuries::word), "words",
                "A span that is exactly a century: second century BC, 2nd century BC, or 200–101 BC. Words are for English; other languages have figures.", "figures");
        Key<Written<Integer>> bareFrom = keys.or("bare-from", Texts.WHOLE_NUMBER, "1000",
                "Years AD from this one on stand without AD or CE.", "1500");
        return keys.block(f -> {
            DateLanguage language = DateLanguage.of(f.site().desk().language().code());
            return new DateStyle(language, f.get(circa).map(Written::value).orElse(language.circa()),
                    f.get(uncertain).map(Written::value).orElse(language.uncertain()), f.get(eraWords).value(),
                    f.get(ends).value(), f.get(centuries).value(), f.get(bareFrom).value());
        });
    }

    private static Block<Era> era() {
        Keys keys = new Keys("an era");
        Key<Written<String>> sign = keys.must("sign", Texts.WORDS, "What is printed before the year.", "year");
        Key<Optional<Written<Dating>>> yearOne = keys.may("year-one", Dates.EDTF,
                "The year in which its first year began, in EDTF: -0311 is 312 BC. Not for the lunar years of the Hijra.", "-0311");
        Key<Written<String>> newYear = keys.or("new-year", Texts.choice(List.of("later", IN_JANUARY), word -> word), "later",
                "Whether its years begin with ours; if later, each falls in two of ours, and both are printed: 278/7 BC.", IN_JANUARY);
        Key<Written<String>> years = keys.or("years", Texts.choice(List.of("solar", LUNAR), word -> word), "solar",
                "Solar years, or the lunar years of the Hijra, by its tables.", LUNAR);
        return keys.block(f -> f.get(years).value().equals(LUNAR)
                ? new Era(f.site().entry().value(), f.get(sign).value(), new Era.Lunar())
                : new Era(f.site().entry().value(), f.get(sign).value(),
                        new Era.Counted(firstYear(f, f.get(yearOne)), !f.get(newYear).value().equals(IN_JANUARY))));
    }

    /** Year 1 where nothing better is known, which has been reported then. */
    private static int firstYear(Fields fields, Optional<Written<Dating>> written) {
        if (written.isPresent() && written.get().value() instanceof Dating.Once once && once.date().month().isEmpty()
                && once.date().years().first() == once.date().years().last()
                && once.date().qualification() == Qualification.NONE) {
            return once.date().years().first();
        }
        fields.site().report(ERA_FIRST_YEAR, written.map(Written::place).orElse(fields.place()),
                written.map(date -> "“" + date.value().edtf() + "” is not one plain year.")
                        .orElse("The era “" + fields.site().entry() + "” has no first year."),
                "Write the one year in which its first year began, such as: year-one: -0311, for 312 BC.");
        return 1;
    }
}
