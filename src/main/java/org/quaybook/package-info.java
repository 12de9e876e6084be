/**
 * Quaybook turns one job description into one handover pack, along one straight road:
 *
 * <ol>
 *   <li>{@link org.quaybook.job} reads the job file: YAML to {@code Job}, every value with its place and provenance;
 *   <li>{@link org.quaybook.figures} feeds {@link org.quaybook.calc} and keeps each figure with its working;
 *   <li>{@link org.quaybook.checks} judges job and figures;
 *   <li>{@link org.quaybook.pack} composes the documents, {@link org.quaybook.record} the install record;
 *   <li>{@link org.quaybook.render} makes PDF, SVG and QR of them and knows nothing about boats;
 *   <li>{@link org.quaybook.api} is the way in for programs, {@link org.quaybook.cli} for people at a terminal.
 * </ol>
 *
 * Below them stand {@link org.quaybook.quantity}, {@link org.quaybook.diag}, {@link org.quaybook.text} and
 * {@link org.quaybook.reference}.
 */
@NullMarked
package org.quaybook;

import org.jspecify.annotations.NullMarked;
