package exergue.study.statistic;

/** Numbers that look like chance and are the same in every run: SplitMix64 (Steele, Lea and Flood, OOPSLA 2014; constants from memory). */
final class FixedDraws {

    private static final long GAMMA = 0x9E3779B97F4A7C15L;

    private long state;

    FixedDraws(long seed) {
        this.state = seed;
    }

    /** From 0 to less than {@code bound}, all about equally likely. */
    int below(int bound) {
        state += GAMMA;
        long mixed = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        mixed ^= mixed >>> 31;
        return (int) Math.multiplyHigh(mixed >>> 1, (long) bound << 1);
    }
}
