package org.quaybook.job;

import org.quaybook.diag.Place;

/** A photograph of the work. */
@Means("A photograph of the work.")
public record Photo(
        @Means(value = "JPEG or PNG file in the job file's folder or below it", example = "photos/box.jpg")
        @Matches(
                value = "([^/\\\\:.*?\"<>|][^/\\\\:*?\"<>|]*/)*[^/\\\\:.*?\"<>|][^/\\\\:*?\"<>|]*\\.(jpg|jpeg|png)",
                form = "a .jpg or .png file in the job file's folder or below it, such as photos/box.jpg")
        String file,

        @Means("what it shows") String shows,
        Place place) {}
