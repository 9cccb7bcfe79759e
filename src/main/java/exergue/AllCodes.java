package exergue;

import exergue.check.Checker;
import exergue.cite.CiteCodes;
import exergue.edition.EditionCodes;
import exergue.finding.Code;
import exergue.photo.PhotoCodes;
import exergue.photo.print.PrintCodes;
import exergue.source.SourceCodes;
import exergue.source.list.ListCodes;
import exergue.study.StudyCodes;
import exergue.study.match.SheetCodes;
import exergue.typeset.PressCodes;
import exergue.typeset.TypesetCodes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Every kind of finding that any stage can raise. */
public final class AllCodes {

    private AllCodes() { }

    /** In alphabetical order of their ids. */
    public static List<Code> all() {
        List<Code> all = new ArrayList<>(SourceCodes.all());
        all.addAll(Checker.codes());
        all.addAll(ExcuseCodes.all());
        all.addAll(CiteCodes.all());
        all.addAll(StudyCodes.all());
        all.addAll(SheetCodes.all());
        all.addAll(ListCodes.all());
        all.addAll(PhotoCodes.all());
        all.addAll(PrintCodes.all());
        all.addAll(EditionCodes.all());
        all.addAll(TypesetCodes.all());
        all.addAll(PressCodes.all());
        all.sort(Comparator.comparing(Code::id));
        return List.copyOf(all);
    }
}
