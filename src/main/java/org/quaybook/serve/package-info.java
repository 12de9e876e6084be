/**
 * Serves published records to browsers: a folder of static files behind HTTP/1.1, and nothing else.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.serve;

import org.jspecify.annotations.NullMarked;
