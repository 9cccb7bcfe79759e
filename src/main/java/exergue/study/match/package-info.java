/** Coins whose tickets were lost or changed round: fresh readings held against the entries. */
package exergue.study.match;
