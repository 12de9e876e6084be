package org.quaybook.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.Figures;
import org.quaybook.figures.Tables;
import org.quaybook.job.Installer;
import org.quaybook.job.Job;
import org.quaybook.job.JobReader;
import org.quaybook.job.JobReading;
import org.quaybook.job.Vocabulary;
import org.quaybook.reference.Rulebook;
import org.quaybook.text.Words;

/** How long a whole job takes to calculate and to check, without reading it: {@code mvn -Pbenchmark}. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CalculationBenchmark {

    private static final Path DEMOS = Path.of("demo-jobs");

    /** A demo job whose appliances give way to many different ones. */
    @Param({"second-biscuit", "lantern-moth"})
    public String demo = "";

    @Param({"4", "100"})
    public int appliances;

    private Job job;
    private Installer installer;
    private Tables tables;

    @Setup
    public void read() throws IOException {
        Path folder = Files.createTempDirectory("quaybook-benchmark");
        Files.copy(DEMOS.resolve(demo).resolve("installer.yaml"), folder.resolve("installer.yaml"));
        Files.writeString(folder.resolve("job.yaml"), manyAppliances());
        JobReading reading =
                JobReader.read(folder.resolve("job.yaml"), new Vocabulary(Rulebook.names(), Words.languages()));
        job = Objects.requireNonNull(reading.job(), () -> reading.problems().toString());
        installer = Objects.requireNonNull(reading.installer());
        tables = Tables.standard(job.job().rulebook());
    }

    private String manyAppliances() throws IOException {
        String text = Files.readString(DEMOS.resolve(demo).resolve("job.yaml"));
        StringBuilder list = new StringBuilder("appliances:\n");
        for (int i = 0; i < appliances; i++) {
            list.append("  - { name: Appliance ").append(i);
            list.append(", power: ").append(20 + 7 * i).append(" W (plate)");
            list.append(i % 3 == 0 ? ", kind: motor, start: 3, start-time: 300 ms" : ", duty: 40 %");
            list.append(", per-use: 20 min, uses-per-day: 1");
            list.append(i % 10 == 0 ? ", left-on: yes }\n" : " }\n");
        }
        return text.replaceFirst("(?m)^appliances:\n(  .*\n)+", list.toString())
                .replaceFirst("(?m)^together:\n(  .*\n)+", "");
    }

    @Benchmark
    public Figures.Outcome figures() {
        return Figures.of(job, tables);
    }

    @Benchmark
    public Assessment figuresAndFindings() {
        return Assessment.of(
                job, installer, Objects.requireNonNull(Figures.of(job, tables).figures()), tables);
    }
}
