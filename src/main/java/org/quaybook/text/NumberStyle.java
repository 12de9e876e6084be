package org.quaybook.text;

/**
 * How a language writes numbers. Own data instead of the JDK's locale tables, so that a newer JDK cannot change a printed
 * label.
 *
 * @param decimal decimal sign
 * @param group sign between groups of three digits, from five digits on
 * @param minus sign of negative numbers
 * @param day the word behind one day
 * @param days the word behind more days than one
 * @param customary whether lengths, openings, air, temperatures and torques are said in U.S. units, metric in brackets
 */
record NumberStyle(String decimal, String group, String minus, String day, String days, boolean customary) {}
