/**
 * The live proof: the pages and the findings of a source that somebody is writing, for a browser on the same machine.
 *
 * <p>{@link exergue.proof.ProofDesk} looks at the folder, sets first the pages of the entry that has changed and then the
 * whole book, and says what there is to see as a {@link exergue.proof.Proof}; {@link exergue.proof.ProofServer} hands it out.
 */
package exergue.proof;
