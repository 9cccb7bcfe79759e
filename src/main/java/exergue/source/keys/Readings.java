package exergue.source.keys;

import exergue.finding.Code;
import exergue.finding.Severity;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Parsed;
import exergue.measure.Reading;
import exergue.measure.ReadingFault;
import exergue.measure.ReadingParser;
import exergue.measure.Remark;
import exergue.model.Written;
import exergue.source.shape.Site;
import exergue.source.yaml.Scalar;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Texts of readings to readings; what {@code measure} remarks becomes findings at the very characters it means. */
public final class Readings {

    private static final Map<ReadingFault, Code> CODES = codesByFault();

    private Readings() { }

    public static Code code(ReadingFault fault) {
        return CODES.get(fault);
    }

    private static Map<ReadingFault, Code> codesByFault() {
        Map<ReadingFault, Code> codes = new EnumMap<>(ReadingFault.class);
        for (ReadingFault fault : ReadingFault.values()) {
            codes.put(fault, new Code(fault.id(), severity(fault), fault.title(), fault.why(),
                    fault.faulty(), fault.mended()));
        }
        return codes;
    }

    /** What is kept as it stands and printed rightly is told, but nobody has to act on it. */
    private static Severity severity(ReadingFault fault) {
        if (fault.refused()) {
            return Severity.ERROR;
        }
        return fault == ReadingFault.AXIS_MIDWAY || fault == ReadingFault.DEGREES_NORMALISED ? Severity.NOTE : Severity.WARNING;
    }

    public static List<Code> codes() {
        return List.copyOf(CODES.values());
    }

    static Optional<Written<Reading>> read(Kind kind, Scalar text, Convention convention, Site site) {
        Parsed parsed = ReadingParser.parse(kind, text.text(), convention);
        if (parsed instanceof Parsed.Accepted accepted) {
            accepted.remarks().forEach(remark -> report(remark, text, site));
            return Optional.of(new Written<>(accepted.reading(), text.place()));
        }
        report(((Parsed.Refused) parsed).remark(), text, site);
        return Optional.empty();
    }

    private static void report(Remark remark, Scalar text, Site site) {
        site.report(CODES.get(remark.fault()), text.at(remark.offset(), remark.length()), remark.what(), remark.remedy());
    }
}
