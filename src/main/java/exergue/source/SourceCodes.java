package exergue.source;

import exergue.finding.Code;
import exergue.source.keys.Dates;
import exergue.source.keys.Legends;
import exergue.source.keys.Readings;
import exergue.source.markdown.MarkdownCodes;
import exergue.source.shape.ShapeCodes;
import exergue.source.text.ConflictWords;
import exergue.source.text.NamedFile;
import exergue.source.text.TextCodes;
import exergue.source.works.WorksCodes;
import exergue.source.yaml.YamlCodes;
import java.util.List;
import java.util.stream.Stream;

/** Every kind of fault that reading a tree can find. */
public final class SourceCodes {

    private SourceCodes() { }

    public static List<Code> all() {
        return Stream.of(FileCodes.all(), TextCodes.all(), ConflictWords.all(), YamlCodes.all(), ShapeCodes.all(), NamedFile.codes(),
                Readings.codes(), Dates.codes(), Legends.codes(), MarkdownCodes.all(),
                WorksCodes.all()).flatMap(List::stream).toList();
    }
}
