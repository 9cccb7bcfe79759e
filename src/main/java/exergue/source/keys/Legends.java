package exergue.source.keys;

import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.finding.Severity;
import exergue.legend.Legend;
import exergue.legend.LegendFault;
import exergue.legend.LegendParser;
import exergue.legend.LookAlikes;
import exergue.legend.Parsed;
import exergue.legend.Remark;
import exergue.model.Written;
import exergue.source.shape.Site;
import exergue.source.shape.Text;
import exergue.source.yaml.Scalar;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Texts to legends; what {@code legend} remarks becomes findings at the very characters it means. */
public final class Legends {

    private static final Map<LegendFault, Code> CODES = codesByFault();

    /** A legend with faults still stands in its place, as it was written. */
    static final Text<Written<Legend>> LEGEND = new Text<>("legend", List.of(), "", false, Legends::legend,
            (site, place) -> new Written<>(Legend.asWritten(""), place));

    private Legends() { }

    public static List<Code> codes() {
        return List.copyOf(CODES.values());
    }

    private static Map<LegendFault, Code> codesByFault() {
        Map<LegendFault, Code> codes = new EnumMap<>(LegendFault.class);
        for (LegendFault fault : LegendFault.values()) {
            codes.put(fault, new Code(fault.id(), severity(fault), fault.title(), fault.why(), fault.faulty(), fault.mended()));
        }
        return codes;
    }

    /** A wrong letter is printed as it looks; a wrong bracket says something that is not so. */
    private static Severity severity(LegendFault fault) {
        return fault == LegendFault.MIXED_ALPHABETS ? Severity.WARNING : Severity.ERROR;
    }

    private static Optional<Written<Legend>> legend(Scalar text, Site site) {
        Parsed parsed = LegendParser.parse(text.text());
        Stream.concat(parsed.remarks().stream(), LookAlikes.in(text.text()).stream())
                .forEach(remark -> site.report(finding(remark, text, site)));
        return Optional.of(new Written<>(parsed.legend(), text.place()));
    }

    private static Finding finding(Remark remark, Scalar text, Site site) {
        Place place = text.at(remark.offset(), remark.length());
        Finding finding = Finding.of(CODES.get(remark.fault()), place, site.path(), remark.what(), remark.remedy());
        int from = text.text().offsetByCodePoints(0, remark.offset());
        String was = text.text().substring(from, text.text().offsetByCodePoints(from, remark.length()));
        return remark.meant().filter(meant -> place.length() == remark.length())
                .map(meant -> finding.withEditAt(place, was, meant)).orElse(finding);
    }
}
