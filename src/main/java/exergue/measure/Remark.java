package exergue.measure;

/**
 * Something to say about the text of a reading.
 *
 * @param offset first code point it is about, from 0
 * @param length how many code points
 * @param what   what is wrong or was done; full sentence that quotes the text
 * @param remedy what to do; full sentence
 */
public record Remark(ReadingFault fault, int offset, int length, String what, String remedy) { }
