package org.quaybook.job;

import org.quaybook.diag.Place;

/** A photograph of the work. */
@Means("A photograph of the work.")
public record Photo(
        @Means("file beside the job file") String file,
        @Means("what it shows") String shows,
        Place place) {}
