package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class JobReaderTest {

    static final Vocabulary WORDS =
            new Vocabulary(List.of("iso-13297", "abyc-e11", "caravan", "cabin"), List.of("en-GB", "nl"));

    @Test
    void fullJobIsRead() {
        JobReading reading = JobReader.read(Path.of("src/test/resources/jobs/full.yaml"), WORDS);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.job()).isNotNull();
        assertThat(reading.installer()).isNotNull();
        System.out.println(reading);
    }
}
