package org.quaybook.trust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A short turn of what {@code src/test/fuzz} does for as long as one likes. */
class FuzzingTest {

    /** Begins alike each time, and goes on alike as far as the same code is reached: whether a build passes should be no luck. */
    private static final String SEED = "-seed=26";

    private static final Pattern TRIED = Pattern.compile("stat::number_of_executed_units: *(\\d+)");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"org.quaybook.trust.JobTextTarget, 3000", "org.quaybook.trust.WholeRoadTarget, 70"})
    void noTextThatTheFuzzerMakesBringsOutAFault(Class<?> target, int texts) throws Exception {
        Process fuzzer = Fuzzing.start(target, folder, SEED, "-runs=" + texts);

        assertThat(fuzzer.waitFor(5, TimeUnit.MINUTES)).isTrue();
        String log = Files.readString(folder.resolve(target.getSimpleName() + ".log"));
        assertThat(fuzzer.exitValue()).as(log).isZero();
        Matcher tried = TRIED.matcher(log);
        assertThat(tried.find()).as(log).isTrue();
        assertThat(Integer.parseInt(tried.group(1))).as(log).isEqualTo(texts);
    }

    /** Texts by which the fuzzer once found something. */
    @ParameterizedTest
    @ValueSource(strings = {"jo\"{0}\"[a, b]: c\n"})
    void whatItOnceFoundStaysMended(String job) {
        assertThatCode(() -> JobTextTarget.tried(job.getBytes(StandardCharsets.UTF_8), () -> true))
                .doesNotThrowAnyException();
    }
}
