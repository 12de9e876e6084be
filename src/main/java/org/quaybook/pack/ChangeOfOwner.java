package org.quaybook.pack;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Severity;
import org.quaybook.job.Account;
import org.quaybook.job.Header;
import org.quaybook.job.Job;
import org.quaybook.job.Mentions;
import org.quaybook.job.Owner;
import org.quaybook.job.SoldCopy;
import org.quaybook.pack.sheets.SingleSheets;
import org.quaybook.record.Edition;
import org.quaybook.render.RenderException;
import org.quaybook.render.Templates;

/**
 * An installation that is sold: its job file goes on without the former owner, as the next revision under the same record
 * code; the file as it was stays beside it; and there is a sheet for the buyer in each language of the job.
 */
public final class ChangeOfOwner {

    private ChangeOfOwner() {}

    /**
     * What came of it.
     *
     * @param problems what is wrong with the input, and warnings
     * @param done what was written; empty if nothing was
     */
    public record Outcome(List<Diagnostic> problems, Optional<Done> done) {
        public Outcome {
            problems = List.copyOf(problems);
        }
    }

    /**
     * What was written.
     *
     * @param job the job file without the former owner
     * @param kept the job file as it was
     * @param sheets for the buyer, the job's first language first
     * @param revision of the job file now
     */
    public record Done(Path job, Path kept, List<Path> sheets, int revision) {
        public Done {
            sheets = List.copyOf(sheets);
        }
    }

    /**
     * Carries it out: sheets and the kept file first, the job file itself last and at once.
     *
     * @param job job file, or a folder with one
     * @param on day of the sale
     * @param to folder for the sheets
     * @throws NotPrinted if a sheet cannot be printed; nothing is written then
     * @throws PackFolder.NotWritten if the system refuses; the job file is as it was then
     */
    public static Outcome of(Path job, LocalDate on, Path to, @Nullable Path ownTemplates)
            throws NotPrinted, PackFolder.NotWritten {
        Path file = Road.file(job);
        Road.Judged before = Road.judge(file);
        Assessment it = before.assessment();
        if (it == null) {
            return new Outcome(before.problems(), Optional.empty());
        }
        Job sold = it.job();
        Header header = sold.job();
        if (on.isBefore(header.date())) {
            return refused(
                    sold,
                    Message.of(
                            PackMessage.SOLD_BEFORE,
                            on.toString(),
                            header.date().toString()));
        }
        int revision = header.revision() + 1;
        Optional<String> copy = SoldCopy.of(before.source(), sold, revision, on, Road.vocabulary());
        if (copy.isEmpty()) {
            return refused(sold, Message.of(PackMessage.SOLD_NOT_PARTED));
        }
        byte[] now = copy.get().getBytes(StandardCharsets.UTF_8);
        Path kept = kept(file, header.revision());
        if (Files.exists(kept) && !holds(kept, before.source())) {
            return refused(sold, Message.of(PackMessage.SOLD_KEPT_ALREADY, kept.toString()));
        }
        Path trial = file.resolveSibling(file.getFileName() + ".sold.yaml");
        PackFolder.writeFile(trial, now);
        try {
            Road.Judged after = Road.judgeWith(trial, Road.service(file));
            Assessment free = after.assessment();
            if (free == null) {
                return new Outcome(after.problems(), Optional.empty());
            }
            Map<Path, byte[]> sheets = sheets(it, free, after, to, ownTemplates);
            for (Map.Entry<Path, byte[]> sheet : sheets.entrySet()) {
                PackFolder.writeFile(sheet.getKey(), sheet.getValue());
            }
            blankLog(Road.service(file), before.visits(), sold);
            PackFolder.writeFile(kept, before.source().getBytes(StandardCharsets.UTF_8));
            PackFolder.writeFile(file, now);
            return new Outcome(
                    before.problems(), Optional.of(new Done(file, kept, List.copyOf(sheets.keySet()), revision)));
        } finally {
            gone(trial);
        }
    }

    /** What was done at a visit can name the former owner, whom nothing would know as such any more. */
    private static void blankLog(Path log, String visits, Job sold) throws PackFolder.NotWritten {
        String blanked = SoldCopy.ofVisits(visits, sold);
        if (!blanked.equals(visits)) {
            PackFolder.writeFile(kept(log, sold.job().revision()), visits.getBytes(StandardCharsets.UTF_8));
            PackFolder.writeFile(log, blanked.getBytes(StandardCharsets.UTF_8));
        }
    }

    private static void gone(Path trial) {
        try {
            Files.deleteIfExists(trial);
        } catch (IOException e) {
            // It holds nothing that the job file does not hold.
        }
    }

    private static Outcome refused(Job job, Message message) {
        return new Outcome(
                List.of(new Diagnostic(
                        Severity.ERROR, message.key().key(), job.job().place(), "", message, List.of())),
                Optional.empty());
    }

    private static Path kept(Path file, int revision) {
        String name = String.valueOf(file.getFileName());
        int ending = name.lastIndexOf('.');
        return file.resolveSibling(
                name.substring(0, ending < 0 ? name.length() : ending) + "-revision-" + revision + ".yaml");
    }

    private static boolean holds(Path file, String text) {
        try {
            return Arrays.equals(Files.readAllBytes(file), text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            return false;
        }
    }

    private static Map<Path, byte[]> sheets(
            Assessment sold, Assessment free, Road.Judged after, Path to, @Nullable Path ownTemplates)
            throws NotPrinted {
        Templates templates = Road.templates(ownTemplates);
        Map<Path, byte[]> sheets = new LinkedHashMap<>();
        List<Edition> editions = Editions.of(free, ownTemplates);
        for (Edition edition : editions) {
            String language = edition.words().language();
            String suffix = edition.equals(editions.get(0)) ? "" : "-" + language;
            try {
                sheets.put(
                        to.resolve(free.job().job().number() + "-buyer" + suffix + ".pdf"),
                        SingleSheets.buyers(
                                edition.assessment(),
                                edition.words(),
                                sold.job().in(language).accounts(),
                                seller(sold.job(), edition.words().say("record.blanked")),
                                after.branding(),
                                templates));
            } catch (RenderException e) {
                throw new NotPrinted(e);
            }
        }
        return sheets;
    }

    private static Mentions seller(Job sold, String blank) {
        Owner owner = sold.owner();
        Stream<String> holders = sold.accounts().stream().map(Account::holder);
        return Mentions.of(
                owner == null
                        ? holders
                        : Stream.concat(
                                holders,
                                Stream.of(owner.name(), owner.phone(), owner.email())
                                        .filter(Objects::nonNull)),
                blank);
    }
}
