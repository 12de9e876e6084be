package org.quaybook.pack;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Figures;
import org.quaybook.figures.Tables;
import org.quaybook.job.GuidePrint;
import org.quaybook.job.HandoverCopy;
import org.quaybook.job.Installer;
import org.quaybook.job.Job;
import org.quaybook.job.JobReader;
import org.quaybook.job.JobReading;
import org.quaybook.job.ReadingsReading;
import org.quaybook.job.ServiceReading;
import org.quaybook.job.Vocabulary;
import org.quaybook.pack.changes.Changes;
import org.quaybook.pack.changes.IssuedBefore;
import org.quaybook.pack.changes.IssuedPacks;
import org.quaybook.pack.guide.Guide;
import org.quaybook.pack.guide.GuidePage;
import org.quaybook.pack.guide.GuidePages;
import org.quaybook.pack.labels.Labels;
import org.quaybook.pack.labels.LabelsPrinted;
import org.quaybook.pack.sheets.QuickCards;
import org.quaybook.pack.sheets.SingleSheets;
import org.quaybook.pack.worksheet.Worksheet;
import org.quaybook.proof.Manifest;
import org.quaybook.proof.Refused;
import org.quaybook.proof.VerifyingKey;
import org.quaybook.record.Branding;
import org.quaybook.record.Edition;
import org.quaybook.record.PublicEdition;
import org.quaybook.record.RecordLink;
import org.quaybook.record.RecordSite;
import org.quaybook.reference.Rulebook;
import org.quaybook.render.Attachment;
import org.quaybook.render.Handbook;
import org.quaybook.render.Lazy;
import org.quaybook.render.RenderException;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/** From a job file to the documents of its pack. */
public final class Road {

    /** A folder given as a job stands for the file of this name in it. */
    public static final String USUAL_JOB_NAME = "job.yaml";

    /** What was done after handing over stands in a file of this name beside the job file. */
    public static final String SERVICE_LOG = "service.yaml";

    private static final long LARGEST_LOGO = 1 << 20;

    private Road() {}

    /**
     * A job as it was read, with all that it names.
     *
     * @param job the job as the last visit left it; null if the job file has an error
     * @param installer the profile that it names; null if that has an error or the job file left open which it is
     * @param tables what it is calculated with; null if the installer's own copies cannot be used
     * @param source the job file as it was read
     * @param visits its service log as it was read; empty if there is none
     * @param problems what is wrong with the input, and warnings
     */
    public record Read(
            @Nullable Job job,
            @Nullable Installer installer,
            @Nullable Tables tables,
            Branding branding,
            String source,
            String visits,
            List<Diagnostic> problems) {
        public Read {
            problems = List.copyOf(problems);
        }
    }

    /**
     * How far a job came.
     *
     * @param assessment what the documents are made of; null exactly if a problem is an error
     * @param source the job file as it was read
     * @param visits its service log as it was read; empty if there is none
     * @param problems what is wrong with the input, and warnings
     * @param unfinished the job when it could be read but lacks what the figures need
     */
    public record Judged(
            @Nullable Assessment assessment,
            Branding branding,
            String source,
            String visits,
            List<Diagnostic> problems,
            Optional<Unfinished> unfinished) {
        public Judged {
            problems = List.copyOf(problems);
        }
    }

    /** A job that still lacks values, for its survey sheet. */
    public record Unfinished(Job job, Installer installer) {}

    /** Begins to load on another core what documents are printed with, so that it is there when the first one is to be made. */
    public static void makeReady() {
        ForkJoinPool.commonPool().execute(() -> {
            try {
                Handbook.makeReady();
            } catch (RuntimeException e) {
                // The first document fails of the same and says so.
            }
        });
    }

    /** Reads, calculates and judges a job; writes nothing. */
    public static Judged judge(Path job) {
        return judge(read(job));
    }

    /** The same with the readings of a later visit after the tests of the job. */
    public static Judged judge(Path job, Path readings) {
        Path file = file(job);
        return judge(read(file, JobReader.read(file, vocabulary()), service(file), Optional.of(readings)));
    }

    /** The same of a job whose service log does not lie beside it. */
    static Judged judgeWith(Path job, Path service) {
        Path file = file(job);
        return judge(read(file, JobReader.read(file, vocabulary()), service, Optional.empty()));
    }

    /** Reads a job and all that it names; calculates nothing. */
    public static Read read(Path job) {
        Path file = file(job);
        return read(file, JobReader.read(file, vocabulary()), service(file), Optional.empty());
    }

    /**
     * The same of a job file that is not written yet.
     *
     * @param file where it would lie: what it names is looked for from there
     */
    public static Read read(String text, Path file) {
        return read(file, JobReader.read(text, file, vocabulary()), service(file), Optional.empty());
    }

    private static Read read(Path file, JobReading reading, Path service, Optional<Path> later) {
        Vocabulary vocabulary = vocabulary();
        List<Diagnostic> problems = new ArrayList<>(reading.problems());
        Job read = reading.job();
        Installer installer = reading.installer();
        if (read == null || installer == null) {
            return new Read(read, installer, null, Branding.none(), reading.text(), "", problems);
        }
        Job handedOver = read;
        String log = "";
        if (Files.exists(service)) {
            ServiceReading visits = JobReader.service(service, handedOver, vocabulary);
            problems.addAll(visits.problems());
            log = visits.text();
            if (visits.log() != null) {
                read = read.serviced(visits.log());
            }
        }
        if (later.isPresent()) {
            ReadingsReading visit = JobReader.readings(later.get(), handedOver, vocabulary);
            problems.addAll(visit.problems());
            if (visit.readings() != null) {
                read = read.with(visit.readings().tests());
            }
        }
        publicKey(installer, problems);
        Optional<byte[]> logo = logo(file, read, installer, problems);
        Branding branding = Branding.of(installer, logo)
                .with(OwnChapter.read(file.resolveSibling(read.job().installer()), installer, problems));
        Optional<Tables> own = OwnTables.read(file, read, installer, problems);
        return new Read(read, installer, own.orElse(null), branding, reading.text(), log, problems);
    }

    /** Calculates and judges a job that was read. */
    public static Judged judge(Read read) {
        Job job = read.job();
        Installer installer = read.installer();
        Tables tables = read.tables();
        List<Diagnostic> problems = new ArrayList<>(read.problems());
        if (job == null || installer == null || tables == null) {
            return new Judged(null, read.branding(), read.source(), read.visits(), problems, Optional.empty());
        }
        Figures.Outcome outcome = Figures.of(job, tables);
        problems.addAll(outcome.problems());
        boolean wrong = problems.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
        Figures figures = outcome.figures();
        return new Judged(
                wrong || figures == null ? null : Assessment.of(job, installer, figures, tables),
                read.branding(),
                read.source(),
                read.visits(),
                problems,
                figures == null ? Optional.of(new Unfinished(job, installer)) : Optional.empty());
    }

    /** The job file that is given itself or by its folder. */
    public static Path file(Path job) {
        return Files.isDirectory(job) ? job.resolve(USUAL_JOB_NAME) : job;
    }

    /**
     * The service log of a job file: {@value #SERVICE_LOG} of a {@value #USUAL_JOB_NAME}; a job file of another name shares
     * its folder with others, and its log bears its name too.
     */
    public static Path service(Path file) {
        String name = String.valueOf(file.getFileName());
        int ending = name.lastIndexOf('.');
        return file.resolveSibling(
                name.equals(USUAL_JOB_NAME)
                        ? SERVICE_LOG
                        : name.substring(0, ending < 0 ? name.length() : ending) + "-" + SERVICE_LOG);
    }

    /** A slip of the pen in a key is one of the right form, but half of these are no keys. */
    private static void publicKey(Installer installer, List<Diagnostic> problems) {
        if (installer.publicKey() == null) {
            return;
        }
        try {
            VerifyingKey.parse(installer.publicKey());
        } catch (Refused e) {
            problems.add(new Diagnostic(
                    Severity.ERROR, e.reason().key().key(), installer.place(), "", e.reason(), List.of()));
        }
    }

    private static Optional<byte[]> logo(Path jobFile, Job job, Installer installer, List<Diagnostic> problems) {
        if (installer.logo() == null) {
            return Optional.empty();
        }
        Path profile = jobFile.resolveSibling(job.job().installer());
        try {
            Path logo = profile.resolveSibling(installer.logo());
            if (Files.isRegularFile(logo) && Files.size(logo) <= LARGEST_LOGO) {
                return Optional.of(Files.readAllBytes(logo));
            }
        } catch (IOException e) {
            // Told below like any other logo that cannot be used.
        }
        problems.add(new Diagnostic(
                Severity.ERROR,
                PackMessage.LOGO_UNREADABLE.key(),
                installer.place(),
                "",
                Message.of(PackMessage.LOGO_UNREADABLE, installer.logo(), LARGEST_LOGO / 1024),
                List.of()));
        return Optional.empty();
    }

    /** The documents of a pack that follows no earlier one; as the one below. */
    public static Map<String, byte[]> documents(Judged judged, @Nullable Path ownTemplates, String version)
            throws NotPrinted {
        return documents(judged, ownTemplates, IssuedPacks.none(), version);
    }

    /**
     * The documents of a pack: path inside the pack to content. The same job gives the same bytes.
     *
     * @param judged a job that came as far as an assessment
     * @param ownTemplates folder whose templates take the place of the built-in ones; null for none
     * @param issued what was issued before
     * @param version of the program, for the files that programs read
     * @throws NotPrinted if a text is too long for its label or sheet, has a character that no font has, or a template is
     *     faulty
     */
    public static Map<String, byte[]> documents(
            Judged judged, @Nullable Path ownTemplates, IssuedPacks issued, String version) throws NotPrinted {
        try {
            return printed(judged, ownTemplates, issued, version);
        } catch (RenderException e) {
            throw new NotPrinted(e);
        }
    }

    private static Map<String, byte[]> printed(
            Judged judged, @Nullable Path ownTemplates, IssuedPacks issued, String version) throws NotPrinted {
        Assessment assessment = Objects.requireNonNull(judged.assessment());
        Branding branding = judged.branding();
        Templates templates = templates(ownTemplates);
        List<Edition> editions = Editions.of(assessment, ownTemplates);
        Edition first = editions.get(0);
        Assessment it = first.assessment();
        Words words = first.words();
        Words installers = installers(assessment, ownTemplates);
        RecordLink link = RecordLink.of(it);
        List<Edition> labelled = Editions.ofLabels(assessment, ownTemplates);
        Lazy<Labels> labels = new Lazy<>(() -> new Labels(labelled, branding, link));
        Lazy<byte[]> figures =
                new Lazy<>(() -> FiguresJson.of(it, words, labels.get().notes(), version));
        List<PublicEdition> published = publicEditions(editions);
        List<Edition> labelledForAll =
                publicEditions(labelled).stream().map(PublicEdition::edition).toList();
        Lazy<Labels> publishedLabels = new Lazy<>(() -> new Labels(labelledForAll, branding, link));
        Lazy<byte[]> publishedFigures = new Lazy<>(() -> FiguresJson.of(
                published.get(0).edition().assessment(),
                words,
                publishedLabels.get().notes(),
                version));
        Lazy<Attachment.Content> attached = new Lazy<>(() -> new Attachment.Content(figures.get()));
        RecordFiles record = new RecordFiles(branding, templates, issued, publishedFigures);
        Paper paper = Paper.of(it);
        GuidePrint prints = guidePrints(it);
        SideBySide work = new SideBySide();
        // Guides are laid out meanwhile; they ask for the figures only when they are written.
        work.add(figures);
        work.add(publishedFigures);
        List<Supplier<InLanguage>> small = new ArrayList<>();
        List<Supplier<Map<String, byte[]>>> others = new ArrayList<>();
        for (Edition edition : editions) {
            PublicEdition open = published.get(editions.indexOf(edition));
            Guide guide = new Guide(edition, branding, templates);
            Lazy<List<Attachment>> attachments = new Lazy<>(() -> attachments(judged, edition.words(), attached.get()));
            String suffix = (edition.equals(first) ? "" : "-" + edition.words().language()) + ".pdf";
            small.add(work.add(() -> {
                GuidePages pages = named("guide" + suffix, () -> guide.on(paper.small()));
                return new InLanguage(
                        smallGuide(guide, paper, prints, pages, attachments.get(), suffix),
                        record.language(open, published.get(0), pages));
            }));
            if (prints.wholePages() && !paper.full().enlarges(paper.small())) {
                String name = "guide-" + paper.full().name() + suffix;
                others.add(work.add(() ->
                        Map.of(name, named(name, () -> guide.on(paper.full())).pdf(attachments.get()))));
            }
        }
        others.add(work.add(() -> forTheInstaller(assessment, installers, labels.get(), templates)));
        others.add(work.add(() -> SingleSheets.pdfs(it, words, branding, templates)));
        others.add(work.add(() -> Map.of(
                "quick-card.pdf", named("quick-card.pdf", () -> QuickCards.pdf(editions, branding, templates)))));
        // Most labels name nobody: those that the installer has printed, some while before, are then published too.
        Supplier<LabelsPrinted> sheets =
                work.add(() -> (publishedLabels.get().printLike(labels.get()) ? labels : publishedLabels)
                        .get()
                        .sheets(paper.sheet()));
        work.make();
        Map<String, byte[]> files = new TreeMap<>();
        small.forEach(one -> files.putAll(one.get().files()));
        others.forEach(one -> files.putAll(one.get()));
        files.putAll(record.of(
                small.stream().map(one -> one.get().published()).toList(),
                sheets.get().sheet().pdf()));
        files.put("figures.json", figures.get());
        Optional<IssuedBefore> before = issued.before(assessment.job().job().revision());
        if (before.isPresent()) {
            files.put(
                    "changes.pdf",
                    Worksheet.changes(
                            assessment,
                            installers,
                            templates,
                            Changes.since(before.get(), FiguresJson.read(figures.get())),
                            chapters(before.get(), words, link, files)));
        }
        files.put(Manifest.FILE, IssueJson.of(it, files, before.map(IssuedBefore::link), version));
        return files;
    }

    /** Headings of the chapters that read otherwise, in the guide of the first language. */
    private static List<String> chapters(IssuedBefore before, Words words, RecordLink link, Map<String, byte[]> files) {
        String guide = GuidePage.name(words.language(), true);
        byte[] page = Objects.requireNonNull(files.get(link.readable() + "/" + guide));
        return Changes.chapters(before, guide, new String(page, StandardCharsets.UTF_8));
    }

    /**
     * What a pack changes against the one issued before, in sentences for the terminal; empty if none was.
     *
     * @param files the pack
     */
    public static List<String> changes(Judged judged, IssuedPacks issued, Map<String, byte[]> files) {
        Assessment it = Objects.requireNonNull(judged.assessment());
        Words words = Words.forInstaller(it.job().job().languages());
        RecordLink link = RecordLink.of(it);
        return issued.before(it.job().job().revision())
                .map(before -> new ChangesWords(new Edition(it, words))
                        .lines(
                                Changes.since(
                                        before, FiguresJson.read(Objects.requireNonNull(files.get("figures.json")))),
                                chapters(
                                        before,
                                        Editions.words(
                                                it.job(),
                                                it.job().job().languages().get(0)),
                                        link,
                                        files)))
                .orElse(List.of());
    }

    private static List<PublicEdition> publicEditions(List<Edition> editions) {
        return editions.stream().map(PublicEdition::of).toList();
    }

    /** Whoever is told that a document has too many pages looks for it by its file. */
    private static <T> T named(String file, Supplier<T> document) {
        try {
            return document.get();
        } catch (RenderException e) {
            throw e.whileMaking(file);
        }
    }

    /** Worksheet and labels, whose places stand in it. */
    private static Map<String, byte[]> forTheInstaller(Assessment it, Words words, Labels labels, Templates templates) {
        LabelsPrinted printed = labels.sheets(Paper.of(it).sheet());
        return Map.of(
                "labels.pdf",
                printed.sheet().pdf(),
                "worksheet.pdf",
                Worksheet.pdf(it, words, templates, printed.notes()));
    }

    /** The small guide of one language with its booklet, and what is published in that language. */
    private record InLanguage(Map<String, byte[]> files, RecordFiles.Language published) {}

    /** What the job asks for, or else the installer. */
    private static GuidePrint guidePrints(Assessment it) {
        return Stream.of(it.job().job().guidePrints(), it.installer().guidePrints())
                .flatMap(Stream::ofNullable)
                .findFirst()
                .orElse(GuidePrint.ALL);
    }

    /** The small guide of one language, as a booklet to fold and on whole pages of its shape, if these are asked for. */
    private static Map<String, byte[]> smallGuide(
            Guide guide,
            Paper paper,
            GuidePrint prints,
            GuidePages pages,
            List<Attachment> attachments,
            String suffix) {
        Map<String, byte[]> files = new TreeMap<>();
        byte[] small = pages.pdf(attachments);
        files.put("guide" + suffix, small);
        if (prints.booklet()) {
            files.put("guide-booklet" + suffix, guide.booklet(paper, pages, small));
        }
        if (prints.wholePages() && paper.full().enlarges(paper.small())) {
            files.put("guide-" + paper.full().name() + suffix, guide.enlarged(paper, small));
        }
        return files;
    }

    /** What the guide was made from and what it shows, for whoever wants to check or to go on working with it. */
    private static List<Attachment> attachments(Judged judged, Words words, Attachment.Content figures) {
        List<Attachment> attachments = new ArrayList<>();
        Job job = Objects.requireNonNull(judged.assessment()).job();
        HandoverCopy.of(judged.source(), job, vocabulary())
                .map(copy -> new Attachment(
                        USUAL_JOB_NAME,
                        "application/yaml",
                        Attachment.Relation.SOURCE,
                        words.say("guide.attached.job"),
                        new Attachment.Content(copy.getBytes(StandardCharsets.UTF_8))))
                .ifPresent(attachments::add);
        if (!judged.visits().isEmpty()) {
            attachments.add(new Attachment(
                    SERVICE_LOG,
                    "application/yaml",
                    Attachment.Relation.SOURCE,
                    words.say("guide.attached.service"),
                    new Attachment.Content(
                            HandoverCopy.blanked(judged.visits(), job).getBytes(StandardCharsets.UTF_8))));
        }
        attachments.add(new Attachment(
                "figures.json",
                "application/json",
                Attachment.Relation.DATA,
                words.say("guide.attached.figures"),
                figures));
        return attachments;
    }

    static Vocabulary vocabulary() {
        return new Vocabulary(Rulebook.names(), Words.languages());
    }

    /** The worksheet alone, for a job that must not be handed over yet: it says so on every page. */
    public static byte[] worksheet(Assessment it, Branding branding, @Nullable Path ownTemplates) throws NotPrinted {
        RecordLink link = RecordLink.of(it);
        Words words = installers(it, ownTemplates);
        try {
            return Worksheet.pdf(
                    it,
                    words,
                    templates(ownTemplates),
                    new Labels(Editions.ofLabels(it, ownTemplates), branding, link).notes());
        } catch (RenderException e) {
            throw new NotPrinted(e);
        }
    }

    /**
     * The page in the place of a record that is taken off.
     *
     * @param on when
     * @throws NotPrinted if a template is faulty
     */
    public static byte[] withdrawn(Judged judged, @Nullable Path ownTemplates, LocalDate on) throws NotPrinted {
        Assessment it = Objects.requireNonNull(judged.assessment());
        try {
            return RecordSite.withdrawn(it.installer(), it.job().job(), on, judged.branding(), templates(ownTemplates));
        } catch (RenderException e) {
            throw new NotPrinted(e);
        }
    }

    /** The survey sheet alone, for a job that lacks values. */
    public static byte[] survey(Unfinished it, @Nullable Path ownTemplates) throws NotPrinted {
        Words words = OwnWords.of(Editions.installers(it.job()), ownTemplates);
        try {
            return Worksheet.survey(it.job(), it.installer(), words, templates(ownTemplates));
        } catch (RenderException e) {
            throw new NotPrinted(e);
        }
    }

    /**
     * The words of a language that the documents of a job are made with.
     *
     * @param language one of {@link Words#languages()}
     * @throws NotPrinted if the installer's own words cannot be used
     */
    public static Words words(Job job, String language, @Nullable Path ownTemplates) throws NotPrinted {
        return OwnWords.of(Editions.words(job, language), ownTemplates);
    }

    private static Words installers(Assessment it, @Nullable Path ownTemplates) throws NotPrinted {
        return OwnWords.of(Editions.installers(it.job()), ownTemplates);
    }

    /**
     * The files that have a say in a job's pack: the job, the installer profile and what they name. Some may not exist.
     */
    public static List<Path> inputs(Path job) {
        return inputs(job, JobReader.read(file(job), vocabulary()));
    }

    /** The same of a job that has been read. */
    static List<Path> inputs(Path job, JobReading reading) {
        Path file = file(job);
        List<Path> inputs = new ArrayList<>(List.of(file, service(file)));
        Job read = reading.job();
        Installer installer = reading.installer();
        if (read != null) {
            inputs.add(file.resolveSibling(read.job().installer()));
            addTo(inputs, file, read.job().tables());
        }
        if (read != null && installer != null) {
            Path profile = file.resolveSibling(read.job().installer());
            addTo(inputs, profile, installer.logo());
            addTo(inputs, profile, installer.tables());
            inputs.addAll(OwnChapter.files(profile, installer));
        }
        return List.copyOf(inputs);
    }

    private static void addTo(List<Path> inputs, Path beside, @Nullable String name) {
        if (name != null) {
            inputs.add(beside.resolveSibling(name));
        }
    }

    static Templates templates(@Nullable Path own) {
        return own == null ? Templates.builtIn() : Templates.overriddenBy(own);
    }
}
