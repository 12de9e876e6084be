package org.quaybook.job;

import java.util.List;
import org.quaybook.diag.Place;

/** What was done after handing over, in a file beside the job file. */
@Means("What was done after handing over.")
public record ServiceLog(
        @Means(value = "number of the job", example = "26-118")
        String job,

        @Means("the texts of these visits in other languages of the documents")
        List<Translation> translations,

        @Means("each visit, earliest first") List<ServiceEntry> entries,
        Place place) {
    public ServiceLog {
        translations = List.copyOf(translations);
        entries = List.copyOf(entries);
    }

    /** That of a job which nobody has visited. */
    public static ServiceLog none(Job job) {
        return new ServiceLog(job.job().number(), List.of(), List.of(), Place.NOWHERE);
    }
}
