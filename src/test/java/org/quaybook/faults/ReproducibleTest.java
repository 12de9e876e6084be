package org.quaybook.faults;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Same job, same bytes, whatever the machine is set to. {@code src/test/faults} compares all demos on every JDK there is. */
class ReproducibleTest {

    /** One in two languages, one American. */
    private static final List<String> DEMOS = List.of("hut-seventeen", "marmalade-meridian");

    private static final List<String> LABELLED = DEMOS.subList(1, 2);

    @TempDir
    Path folder;

    @Test
    void elsewhereOnAnotherJdk() throws Exception {
        Path plain = folder.resolve("plain");
        Path far = Files.createDirectories(folder.resolve("Über Bord 2"));
        Elsewhere.packs(Program.here(), Path.of("demo-jobs").toAbsolutePath(), DEMOS, LABELLED, plain);
        Elsewhere.packs(
                Elsewhere.far(Program.on(Program.anotherJdk()), far),
                Elsewhere.copy(DEMOS, far),
                DEMOS,
                LABELLED,
                far.resolve("ö"));
        Elsewhere.same(plain, far.resolve("ö"));
    }
}
