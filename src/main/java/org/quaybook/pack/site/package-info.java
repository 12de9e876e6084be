/** The folder of published records: issued packs are put onto it, withdrawn ones taken off. */
@NullMarked
package org.quaybook.pack.site;

import org.jspecify.annotations.NullMarked;
