package exergue.finding;

/**
 * Where a value was written.
 *
 * @param file   path inside the source tree, with forward slashes; never absolute
 * @param line   1 for the first line; 0 when the whole file is meant
 * @param column 1 for the first character, counted in code points; 0 when the whole line is meant
 * @param length how many code points the value takes on its first line; 0 when unknown
 */
public record Place(String file, int line, int column, int length) implements Comparable<Place> {

    public static Place ofFile(String file) {
        return new Place(file, 0, 0, 0);
    }

    /** The part of this place that starts {@code offset} code points in and is {@code length} long. */
    public Place within(int offset, int length) {
        return new Place(file, line, column + offset, length);
    }

    /** {@code coins/lk-0042.yaml:7:11}, shortened where line or column are unknown. */
    @Override
    public String toString() {
        if (line == 0) {
            return file;
        }
        return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
    }

    @Override
    public int compareTo(Place other) {
        int byFile = file.compareTo(other.file);
        if (byFile != 0) {
            return byFile;
        }
        int byLine = Integer.compare(line, other.line);
        return byLine != 0 ? byLine : Integer.compare(column, other.column);
    }
}
