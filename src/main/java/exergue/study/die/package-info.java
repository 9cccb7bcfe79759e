/** The die study: which dies struck which coins, how they hang together, and how many dies there may have been. */
package exergue.study.die;
