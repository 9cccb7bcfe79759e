/**
 * What can be said of a catalogue without asking anyone: names that lead nowhere, figures that are not given or that
 * contradict each other, words that do not fit the coin. {@link exergue.check.Checker} runs every
 * {@link exergue.check.Rule}; each rule is one file in {@link exergue.check.rules}, with its code, its page in the
 * docs and its messages. A new rule is a new file there and one line in {@code Checker}.
 *
 * <p>The shape of the files (keys, kinds of values, texts of readings) is the business of the stage before; statistics
 * over groups of coins that of {@code exergue.study}.
 */
package exergue.check;
