package exergue.typeset;

/** Told how far the setting of the book has come, so that a long run can show it. */
@FunctionalInterface
public interface Progress {

    Progress SILENT = (step, done, of) -> { };

    /**
     * @param step what is being done, in words: "laying out"
     * @param done how much of it is done
     * @param of   how much there is; 0 while that is not known
     */
    void reached(String step, int done, int of);
}
