/**
 * What the methods statement is true to: one {@link exergue.edition.methods.Tally} of a whole catalogue, counted once.
 * It knows figures and no words. A language is a {@link exergue.edition.methods.MethodsLanguage} in a package of its own
 * that turns a tally into {@link exergue.edition.methods.Passage passages}, one class a paragraph ({@code english});
 * adding one means writing those classes and giving the language to the {@code Editor}.
 */
package exergue.edition.methods;
