/** The live proof. Nothing is here yet. */
package exergue.proof;
