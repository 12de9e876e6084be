/**
 * The library's door: {@link org.quaybook.api.Quaybook} reads a job, and each step gives the next one. Four verbs, in this
 * order:
 *
 * <ol>
 *   <li>{@link org.quaybook.api.Quaybook#read(java.nio.file.Path) read} a job file, or its text, with all that it names;
 *   <li>{@link org.quaybook.api.JobRead#calculate() calculate} its figures;
 *   <li>{@link org.quaybook.api.JobCalculated#check() check} them;
 *   <li>{@link org.quaybook.api.JobChecked#pack() pack} the documents, in memory or into a folder.
 * </ol>
 *
 * <p>What is wrong with a file never stops reading: all problems come back at once, as data with their places. A step that
 * cannot be done throws a {@link org.quaybook.api.QuaybookException} that says why. Every object here is immutable and may be used
 * by several threads at once; nothing prints, asks the clock or ends the program.
 *
 * <p>Open to users of the library.
 */
@NullMarked
package org.quaybook.api;

import org.jspecify.annotations.NullMarked;
