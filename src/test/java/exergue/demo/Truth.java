package exergue.demo;

/**
 * What is known of a drawn coin without measuring its pictures.
 *
 * @param obverse    the edge as the obverse shows it, in mm
 * @param reverse    the same edge as the reverse shows it, upright
 * @param axis       degrees clockwise
 * @param millimetresPerPixel of both pictures
 */
record Truth(Flan obverse, Flan reverse, double axis, double millimetresPerPixel) { }
