package exergue.source;

import exergue.source.text.Notebook;

/** One entry and what was found while it was read. */
record Apart<T>(T entry, Notebook found) { }
