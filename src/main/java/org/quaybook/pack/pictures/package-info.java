/**
 * The pictures of a handover pack as SVG: how the installation is wired, and what its figures look like as curves.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.pack.pictures;

import org.jspecify.annotations.NullMarked;
