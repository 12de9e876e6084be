package org.quaybook.benchmark;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfCopy;
import com.lowagie.text.pdf.PdfReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
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
import org.quaybook.pack.NotPrinted;
import org.quaybook.pack.Paper;
import org.quaybook.pack.Road;
import org.quaybook.pack.guide.Guide;
import org.quaybook.pack.labels.Labels;
import org.quaybook.pack.labels.LabelsPrinted;
import org.quaybook.record.Edition;
import org.quaybook.record.RecordLink;
import org.quaybook.render.LaidOut;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/** How long the stages of a pack take on one job in a program that has been running for a while: {@code mvn -Pbenchmark}. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 4)
@Measurement(iterations = 5, time = 4)
@Fork(1)
public class RenderingBenchmark {

    /** With one language, and with two. */
    @Param({"persimmon-tug", "lantern-moth"})
    public String demo = "";

    private Path job;
    private Road.Judged judged;
    private Edition edition;
    private Paper paper;
    private LaidOut pages;
    private byte[] guide;

    @Setup
    public void read() {
        job = Path.of("demo-jobs", demo);
        judged = Road.judge(job);
        Assessment assessment = Objects.requireNonNull(judged.assessment());
        edition = new Edition(
                assessment, Words.of(assessment.job().job().languages().get(0)));
        paper = Paper.of(assessment);
        pages = guideLaidOut();
        guide = guideWritten();
    }

    /** Reading, calculating and checking. */
    @Benchmark
    public Road.Judged judge() {
        return Road.judge(job);
    }

    @Benchmark
    public LabelsPrinted labels() {
        return new Labels(List.of(edition), judged.branding(), RecordLink.of(edition.assessment()))
                .sheets(paper.sheet());
    }

    /** The small guide in one language on its pages: templates, style sheets, pictures, page breaks. */
    @Benchmark
    public LaidOut guideLaidOut() {
        return new Guide(edition, judged.branding(), Templates.builtIn()).on(paper.small()).pages();
    }

    /** The same written as a tagged PDF, once it is laid out. */
    @Benchmark
    public byte[] guideWritten() {
        return pages.pdf(List.of());
    }

    /** The lower bound of writing: the PDF library copies the pages that it wrote before. */
    @Benchmark
    public byte[] guideCopied() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream(guide.length);
        try (PdfReader reader = new PdfReader(guide);
                Document document = new Document()) {
            PdfCopy copy = new PdfCopy(document, out);
            document.open();
            for (int page = 1; page <= reader.getNumberOfPages(); page++) {
                copy.addPage(copy.getImportedPage(reader, page));
            }
        }
        return out.toByteArray();
    }

    /** Every file of the pack, on all cores. */
    @Benchmark
    public Map<String, byte[]> pack() throws NotPrinted {
        return Road.documents(judged, null, "benchmark");
    }
}
