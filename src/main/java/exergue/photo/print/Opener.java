package exergue.photo.print;

import exergue.photo.ReadPicture;
import exergue.photo.Workroom;
import java.util.function.Function;

/**
 * How photographs are opened.
 *
 * @param reader unpacks the bytes of a file
 * @param room   for all that are open at one time
 */
record Opener(Function<byte[], ReadPicture> reader, Workroom room) { }
