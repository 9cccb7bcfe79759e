package exergue.model;

/** A word or sentence that the tool puts into tables and charts, in every language. */
public sealed interface Worded permits StudyWord, AxisWord {

    String in(Language language);
}
