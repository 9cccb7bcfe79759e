package exergue.exchange;

import exergue.finding.Place;
import exergue.source.text.SourceText;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;

/** Where the cells of a row stand in their file. */
public final class CellPlaces {

    private final SourceText text;
    private final char mark;

    /** @param mark between cells */
    public CellPlaces(SourceText text, char mark) {
        this.text = text;
        this.mark = mark;
    }

    /** The place of each cell of a row that was read from this text: of what is in it, without quotation marks and spaces about it. */
    public List<Place> of(CSVRecord record) {
        List<Place> places = new ArrayList<>();
        int at = (int) record.getCharacterPosition();
        for (String cell : record) {
            int end = end(at);
            String raw = text.text().substring(at, end);
            String within = raw.strip();
            int start = at + raw.length() - raw.stripLeading().length() + (within.startsWith("\"") ? 1 : 0);
            places.add(text.place(start, cell.strip().length()));
            at = Math.min(end + 1, text.text().length());
        }
        return places;
    }

    /** Of the cell that begins there: before the next mark or line end, for a cell in quotation marks the next behind them. */
    private int end(int from) {
        String all = text.text();
        boolean quoted = false;
        boolean may = true;
        for (int at = from; at < all.length(); at++) {
            char c = all.charAt(at);
            if (c == '"' && (may || quoted)) {
                quoted = !quoted;
                may = true;
            } else if (!quoted && (c == mark || c == '\n')) {
                return at;
            } else if (!quoted) {
                may = false;
            }
        }
        return all.length();
    }
}
