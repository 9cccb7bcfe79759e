package exergue.cli;

import exergue.photo.Gauged;
import exergue.photo.ReadPicture;

/**
 * A photograph that was named on the command line.
 *
 * @param name   as it was named
 * @param inside its path in the catalogue’s folder; the name again where it lies outside
 */
record GaugedPhoto(String name, String inside, ReadPicture read, Gauged gauged) { }
