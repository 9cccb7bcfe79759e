/** What densities of groups of coins tell of their alloy. */
package exergue.study.density;
