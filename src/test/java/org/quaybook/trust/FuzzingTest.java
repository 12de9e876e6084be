package org.quaybook.trust;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A short turn of what {@code src/test/fuzz} does for as long as one likes. */
class FuzzingTest {

    private static final int SECONDS = 15;
    private static final Pattern TRIED = Pattern.compile("stat::number_of_executed_units: *(\\d+)");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(classes = {JobTextTarget.class, WholeRoadTarget.class})
    void noTextThatTheFuzzerMakesBringsOutAFault(Class<?> target) throws Exception {
        Process fuzzer = Fuzzing.start(target, folder, SECONDS);

        assertThat(fuzzer.waitFor(5, TimeUnit.MINUTES)).isTrue();
        String log = Files.readString(folder.resolve(target.getSimpleName() + ".log"));
        assertThat(fuzzer.exitValue()).as(log).isZero();
        Matcher tried = TRIED.matcher(log);
        assertThat(tried.find()).as(log).isTrue();
        assertThat(Integer.parseInt(tried.group(1))).as(log).isPositive();
    }
}
