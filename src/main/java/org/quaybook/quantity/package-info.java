/**
 * Physical quantities: one small immutable record a dimension, one canonical unit each. Uses nothing of ours.
 *
 * <p>Open to users of the library.
 */
@NullMarked
package org.quaybook.quantity;

import org.jspecify.annotations.NullMarked;
