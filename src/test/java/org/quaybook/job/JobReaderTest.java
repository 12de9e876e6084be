package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class JobReaderTest {

    @Test
    void fullJobIsRead() {
        JobReading reading = JobReader.read(JobFiles.FOLDER.resolve("full.yaml"), JobFiles.VOCABULARY);

        assertThat(reading.problems()).isEmpty();
        assertThat(reading.job()).isNotNull();
        assertThat(reading.installer()).isNotNull();
    }
}
