package exergue.study.match;

import java.util.Arrays;

/**
 * Gives each row a column of its own so that the sum of the gains is as great as can be; a row may also go without, for a gain
 * of nought. By shortest augmenting paths, with a price for every row and column (H. W. Kuhn, The Hungarian method for the
 * assignment problem, Naval Research Logistics Quarterly 2, 1955; J. Munkres, Journal of the SIAM 5, 1957).
 */
final class Assignment {

    static final int NONE = -1;

    private final double[][] gains;
    private final int rows;
    private final int columns;
    private final double[] rowPrice;
    private final double[] columnPrice;
    private final int[] rowOfColumn;
    private final int[] columnOfRow;
    private final double[] vacant;

    private Assignment(double[][] gains) {
        this.gains = gains;
        this.rows = gains.length;
        this.columns = rows == 0 ? 0 : gains[0].length + rows; // behind the real columns stands one for each row, to go without
        this.rowPrice = new double[rows];
        this.columnPrice = new double[columns];
        this.rowOfColumn = new int[columns];
        this.columnOfRow = new int[rows];
        this.vacant = new double[columns];
        Arrays.fill(rowOfColumn, NONE);
        Arrays.fill(columnOfRow, NONE);
    }

    /** @param gains one line for each row, all of one length, every figure finite */
    static Assignment of(double[][] gains) {
        Assignment assignment = new Assignment(gains);
        for (int row = 0; row < assignment.rows; row++) {
            assignment.place(row);
        }
        assignment.findVacant();
        return assignment;
    }

    /** Of this row, {@link #NONE} if it goes without. */
    int column(int row) {
        return columnOfRow[row] < gains[row].length ? columnOfRow[row] : NONE;
    }

    /**
     * By how much less the sum would be, at best, if this row got anything but what it has. Either others change round and one of
     * them takes its column, or the row takes a column that is free, and its own is filled again as cheaply as can be.
     */
    double margin(int row) {
        int had = columnOfRow[row];
        Ways ways = new Ways(row, had);
        double free = Double.POSITIVE_INFINITY;
        for (int column = 0; column < columns; column++) {
            free = rowOfColumn[column] == NONE ? Math.min(free, ways.cost[column]) : free;
        }
        return Math.max(0, Math.min(ways.cost[had], free + vacant[had]));
    }

    /** For each column what it costs if its row leaves it: it stays empty, or another row moves to it and leaves its own. */
    private void findVacant() {
        boolean[] settled = new boolean[columns];
        for (int column = 0; column < columns; column++) {
            vacant[column] = -columnPrice[column];
        }
        for (int column = nearest(vacant, settled); column != NONE; column = nearest(vacant, settled)) {
            settled[column] = true;
            int row = rowOfColumn[column];
            for (int other = 0; row != NONE && other < columns; other++) {
                vacant[other] = Math.min(vacant[other], vacant[column] + reduced(row, other));
            }
        }
    }

    private static int nearest(double[] cost, boolean[] settled) {
        int nearest = NONE;
        for (int column = 0; column < cost.length; column++) {
            if (!settled[column] && cost[column] < (nearest == NONE ? Double.POSITIVE_INFINITY : cost[nearest])) {
                nearest = column;
            }
        }
        return nearest;
    }

    /** Never below nought, and nought for what is held. */
    private double reduced(int row, int column) {
        return cost(row, column) - rowPrice[row] - columnPrice[column];
    }

    private double cost(int row, int column) {
        return column < gains[row].length ? -gains[row][column] : 0;
    }

    private void place(int row) {
        rowPrice[row] = Double.POSITIVE_INFINITY;
        for (int column = 0; column < columns; column++) {
            rowPrice[row] = Math.min(rowPrice[row], cost(row, column) - columnPrice[column]);
        }
        Ways ways = new Ways(row, NONE);
        reprice(row, ways);
        int column = ways.end;
        while (column != NONE) {
            int taker = ways.from[column];
            int left = taker == row ? NONE : columnOfRow[taker];
            rowOfColumn[column] = taker;
            columnOfRow[taker] = column;
            column = left;
        }
    }

    /** So that what is held costs nothing more than its prices, and nothing costs less. */
    private void reprice(int row, Ways ways) {
        double whole = ways.cost[ways.end];
        rowPrice[row] += whole;
        for (int column = 0; column < columns; column++) {
            if (ways.settled[column] && column != ways.end) {
                rowPrice[rowOfColumn[column]] += whole - ways.cost[column];
                columnPrice[column] -= whole - ways.cost[column];
            }
        }
    }

    /** The cheapest ways from one row to the columns, by way of rows that would change what they hold. */
    private final class Ways {

        final double[] cost = new double[columns];
        final int[] from = new int[columns];
        final boolean[] settled = new boolean[columns];
        int end = NONE;

        /** @param givenUp column that the row holds and may not take again, while others may; with none, the first free column ends it */
        Ways(int start, int givenUp) {
            Arrays.fill(cost, Double.POSITIVE_INFINITY);
            look(start, 0, givenUp);
            double dearest = Double.POSITIVE_INFINITY; // what lies beyond cannot be the cheapest any more
            for (int column = nearest(cost, settled); column != NONE && cost[column] < dearest; column = nearest(cost, settled)) {
                settled[column] = true;
                boolean free = rowOfColumn[column] == NONE;
                if (column == givenUp || free && givenUp == NONE) {
                    end = column;
                    return;
                }
                if (free) {
                    dearest = Math.min(dearest, cost[column] + vacant[givenUp]);
                } else {
                    look(rowOfColumn[column], cost[column], NONE);
                }
            }
        }

        private void look(int row, double sofar, int forbidden) {
            for (int column = 0; column < columns; column++) {
                double way = sofar + reduced(row, column);
                if (!settled[column] && column != forbidden && way < cost[column]) {
                    cost[column] = way;
                    from[column] = row;
                }
            }
        }
    }
}
