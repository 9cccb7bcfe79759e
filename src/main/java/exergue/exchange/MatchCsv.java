package exergue.exchange;

import exergue.study.match.MatchRow;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** What fresh coins are, as a table (RFC 4180, with a line of headings). */
public final class MatchCsv {

    private MatchCsv() { }

    public static String of(List<MatchRow> rows) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter table = new CSVPrinter(text, CSVFormat.RFC4180)) {
            table.printRecord("label", "ticket", "coin", "how-sure", "candidates");
            for (MatchRow row : rows) {
                table.printRecord(row.label(), row.ticket(), row.coin(), row.sureness(), String.join("; ", row.candidates()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a string builder has no disk to fail
        }
        return text.toString();
    }
}
