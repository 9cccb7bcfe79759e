package exergue.legend;

/**
 * What is wrong at one place of a legend.
 *
 * @param offset of the characters that are meant, in code points
 * @param length of them
 * @param what   is wrong: a full sentence
 * @param remedy what to do: a full sentence
 */
public record Remark(LegendFault fault, int offset, int length, String what, String remedy) { }
