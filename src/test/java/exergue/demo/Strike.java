package exergue.demo;

/**
 * How the dies met the flan and what time did to it since.
 *
 * @param across how far the die's middle lies to the right of the flan's, in shares of the die's radius; {@code down} likewise
 * @param wear 0 as struck to 1 worn smooth
 * @param weak how much of the relief is missing on the weak side, 0 to 1; {@code weakSide} in degrees clockwise from the top
 * @param pits how far corrosion has gone, 0 to 1
 * @param hollow depth of the dish in mm, below 0 for a side that bulges
 */
record Strike(double across, double down, double wear, double weak, double weakSide, double pits, double hollow) { }
