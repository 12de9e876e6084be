/** The documents of a handover pack, each composed of an assessed job and the words of a language. */
@NullMarked
package org.quaybook.pack;

import org.jspecify.annotations.NullMarked;
