package exergue.exchange;

import exergue.edition.DataRow;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/**
 * The catalogue numbers of one book.
 *
 * @param byCoin numbers by the coin's id, in the order of the book
 */
public record BookNumbers(Map<String, String> byCoin) {

    private static final String ID = "id";
    private static final String NUMBER = "number";

    public BookNumbers {
        byCoin = Collections.unmodifiableMap(new LinkedHashMap<>(byCoin));
    }

    public static BookNumbers of(List<DataRow> rows) {
        Map<String, String> byCoin = new LinkedHashMap<>();
        rows.forEach(row -> byCoin.put(row.id(), row.number()));
        return new BookNumbers(byCoin);
    }

    /** The numbers of a book that was made before, from its catalogue.csv; nothing if this is no such table. */
    public static Optional<BookNumbers> fromCsv(String table) {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        try (CSVParser parser = CSVParser.parse(new StringReader(table), format)) {
            if (!parser.getHeaderNames().containsAll(List.of(ID, NUMBER))) {
                return Optional.empty();
            }
            Map<String, String> byCoin = new LinkedHashMap<>();
            for (CSVRecord row : parser) {
                if (row.isSet(ID) && row.isSet(NUMBER)) {
                    byCoin.put(row.get(ID), row.get(NUMBER));
                }
            }
            return Optional.of(new BookNumbers(byCoin));
        } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** How many coins of both books have another number in this one. */
    public int changedSince(BookNumbers before) {
        return (int) byCoin.entrySet().stream()
                .filter(now -> before.byCoin.containsKey(now.getKey()) && !before.byCoin.get(now.getKey()).equals(now.getValue()))
                .count();
    }

    /** The concordance of two books as a table: former number, present number, coin; empty where a book lacks the coin. */
    public String concordanceFrom(BookNumbers before) {
        Set<String> coins = new LinkedHashSet<>(before.byCoin.keySet());
        coins.addAll(byCoin.keySet());
        StringBuilder text = new StringBuilder();
        try (CSVPrinter table = new CSVPrinter(text, CSVFormat.RFC4180)) {
            table.printRecord("former-number", NUMBER, ID);
            for (String coin : coins) {
                table.printRecord(before.byCoin.getOrDefault(coin, ""), byCoin.getOrDefault(coin, ""), coin);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a string builder has no disk to fail
        }
        return text.toString();
    }
}
