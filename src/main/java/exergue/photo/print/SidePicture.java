package exergue.photo.print;

import java.math.BigDecimal;

/**
 * One side of a coin as it is printed.
 *
 * @param path   of the picture that is printed
 * @param file   that the entry names; the same, if it is printed as it is
 * @param width  on paper, in mm
 * @param height on paper, in mm; as long as nobody has opened the file it is taken to be as high as wide
 */
public record SidePicture(String path, String file, BigDecimal width, BigDecimal height) { }
