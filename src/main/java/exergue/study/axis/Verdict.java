package exergue.study.axis;

import exergue.model.AxisWord;

/** What axes come to, in the trade's words. */
enum Verdict {
    FIXED(AxisWord.FIXED), LOOSELY_FIXED(AxisWord.LOOSELY_FIXED), FIXED_OPPOSITE(AxisWord.FIXED_OPPOSITE),
    LOOSELY_FIXED_OPPOSITE(AxisWord.LOOSELY_FIXED_OPPOSITE), RANDOM(AxisWord.RANDOM), TOO_FEW(AxisWord.TOO_FEW);

    private final AxisWord word;

    Verdict(AxisWord word) {
        this.word = word;
    }

    AxisWord word() {
        return word;
    }
}
