/**
 * The install record: the static page that the QR opens, and the facts of a job in words that every document shares.
 */
@NullMarked
package org.quaybook.record;

import org.jspecify.annotations.NullMarked;
