package exergue.measure;

import java.util.List;

/** What came of reading a text: a reading, perhaps with remarks, or the one remark that says why not. */
public sealed interface Parsed {

    record Accepted(Reading reading, List<Remark> remarks) implements Parsed {
        public Accepted {
            remarks = List.copyOf(remarks);
        }
    }

    record Refused(Remark remark) implements Parsed { }
}
