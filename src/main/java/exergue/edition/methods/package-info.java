/**
 * What the methods statement is true to: one {@link exergue.edition.methods.Tally} of a whole catalogue, counted once.
 * It knows figures and no words. A language is a package of its own that turns a tally into sentences, one class a
 * paragraph ({@code english}); adding one means writing those classes and naming them in
 * {@code exergue.edition.MethodsChapter}.
 */
package exergue.edition.methods;
