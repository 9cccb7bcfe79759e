/**
 * Statistics of plain figures, whatever they are of. Arrays that are asked for as sorted have the least figure first, so that
 * the order of the coins cannot matter to the last bit. Each result names the publication whose formula it is.
 */
package exergue.study.statistic;
