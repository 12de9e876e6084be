/**
 * The job description: the records below <em>are</em> the format. {@link org.quaybook.job.JobReader} binds YAML to them
 * and reports every problem at once with its place; the JSON Schema and the format's reference page are made from the
 * same records.
 *
 * <p>Open to users of the library.
 */
@NullMarked
package org.quaybook.job;

import org.jspecify.annotations.NullMarked;
