package exergue.typeset;

/**
 * Where something stands on a page. What runs on to the next page has an area on each; a coin that is on a plate has one
 * there too.
 *
 * @param anchor the book's, of an entry, a coin, a heading or a part
 * @param page   from 0
 * @param left   from the left edge of the sheet, like the others in ten-thousandths of its width or height
 */
public record Area(String anchor, int page, int left, int top, int right, int bottom) { }
