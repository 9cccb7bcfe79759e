package exergue.typeset;

import exergue.typeset.Faces.Style;
import java.util.concurrent.ForkJoinPool;

/**
 * Gets ready, while the source is still being read, what every book needs whatever is in it. Nothing depends on it:
 * what is not ready when it is asked for is made then.
 */
public final class HeadStart {

    private HeadStart() { }

    /**
     * Returns at once; the work is done beside what the caller does next. Should it fail, nobody hears of it here: it
     * fails again where it is needed.
     */
    public static void take() {
        ForkJoinPool.commonPool().submit(() -> {
            for (Style style : Style.values()) {
                Faces.has(style, ' ');
            }
        });
    }
}
