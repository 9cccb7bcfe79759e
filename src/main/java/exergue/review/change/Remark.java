package exergue.review.change;

import exergue.measure.Slip;

/** What a reviewer should know of a changed figure. */
public sealed interface Remark {

    Remark reversed();

    /** One of the two figures is the other with this slip of the pen. */
    record Suspect(Slip slip) implements Remark {
        @Override
        public Remark reversed() {
            return this;
        }
    }

    /** The book prints the figure with fewer places, or with more. @param before as printed */
    record Precision(String before, String after, boolean lost) implements Remark {
        @Override
        public Remark reversed() {
            return new Precision(after, before, !lost);
        }
    }

    /**
     * The entry stands elsewhere in the book because of this.
     *
     * @param numbers how many coins have another number by this change alone
     * @param only    true where no other entry moved
     */
    record Renumbers(int numbers, boolean only) implements Remark {
        @Override
        public Remark reversed() {
            return this;
        }
    }

    /** Recorded otherwise, and printed as it was. */
    record PrintedAlike(String printed) implements Remark {
        @Override
        public Remark reversed() {
            return this;
        }
    }
}
