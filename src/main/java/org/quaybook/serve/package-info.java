/** Serves published records to browsers: a folder of static files behind HTTP/1.1, and nothing else. */
@NullMarked
package org.quaybook.serve;

import org.jspecify.annotations.NullMarked;
