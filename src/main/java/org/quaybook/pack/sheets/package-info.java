/** Single sheets of the pack: the quick card alone, and a page each for harbour office, surveyor and next electrician. */
@NullMarked
package org.quaybook.pack.sheets;

import org.jspecify.annotations.NullMarked;
