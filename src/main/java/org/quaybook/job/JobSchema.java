package org.quaybook.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The JSON Schemas (draft 2020-12) of the job file and of the files beside it, for editors that complete and check while somebody types. They are
 * made from the records; a test fails when they no longer fit. {@link JobReader} checks more than they can say.
 */
public final class JobSchema {

    private JobSchema() {}

    /** The schema of a job file. */
    public static String job() {
        return resource("job.schema.json");
    }

    /** The schema of an installer profile. */
    public static String installer() {
        return resource("installer.schema.json");
    }

    /** The schema of a service log. */
    public static String service() {
        return resource("service.schema.json");
    }

    private static String resource(String name) {
        try (InputStream in = JobSchema.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program is incomplete: it lacks " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
