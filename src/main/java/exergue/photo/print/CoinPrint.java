package exergue.photo.print;

import exergue.finding.Finding;
import exergue.model.PrintScale;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** One coin made ready for the page; its pictures have no names yet. */
record CoinPrint(Optional<Side> obverse, Optional<Side> reverse, boolean toScale, PrintScale scale, List<Finding> findings) {

    CoinPrint {
        findings = List.copyOf(findings);
    }

    /**
     * @param file  that the entry names
     * @param cut   how its picture is made; empty if the file is printed as it is
     * @param shape as of {@link PrintedSide}
     */
    record Side(String file, Optional<Cut> cut, BigDecimal width, BigDecimal height, String shape, Optional<Tone> tone) { }

    Stream<Side> sides() {
        return Stream.concat(obverse.stream(), reverse.stream());
    }
}
