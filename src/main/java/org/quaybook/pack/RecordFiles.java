package org.quaybook.pack;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.quaybook.checks.Assessment;
import org.quaybook.job.SealKey;
import org.quaybook.pack.changes.Changes;
import org.quaybook.pack.changes.IssuedBefore;
import org.quaybook.pack.changes.IssuedPacks;
import org.quaybook.pack.guide.GuidePage;
import org.quaybook.pack.guide.GuidePages;
import org.quaybook.pack.pictures.Pictures;
import org.quaybook.proof.Digest;
import org.quaybook.record.Branding;
import org.quaybook.record.DueDates;
import org.quaybook.record.Issued;
import org.quaybook.record.PublicEdition;
import org.quaybook.record.RecordLeaf;
import org.quaybook.record.RecordLink;
import org.quaybook.record.RecordSite;
import org.quaybook.record.SealedSite;
import org.quaybook.render.Attachment;
import org.quaybook.render.InlineSvg;
import org.quaybook.render.Lazy;
import org.quaybook.render.Templates;

/** The part of a pack that is published: the record page with what it links, made from what anybody may read. */
final class RecordFiles {

    private static final String PUBLISHED = "record/";
    private static final List<String> DIAGRAMS = List.of("batterySide", "mainsSide", "symbols");

    private final Branding branding;
    private final Templates templates;
    private final IssuedPacks issued;
    private final Lazy<byte[]> figures;
    private final Lazy<Attachment.Content> content;

    /**
     * @param issued what was issued before
     * @param figures that are published
     */
    RecordFiles(Branding branding, Templates templates, IssuedPacks issued, Lazy<byte[]> figures) {
        this.branding = branding;
        this.templates = templates;
        this.issued = issued;
        this.figures = figures;
        this.content = new Lazy<>(() -> new Attachment.Content(figures.get()));
    }

    /**
     * What is published in one language.
     *
     * @param files by name: the guide as a page and as print, and the dates
     * @param page name of the guide's page
     * @param book the guide to stand inside the whole record
     * @param print name of the guide's print
     * @param calendar name of the file with the dates
     */
    record Language(
            PublicEdition edition,
            Map<String, byte[]> files,
            String page,
            RecordLeaf.Book book,
            String print,
            String calendar,
            List<InlineSvg> diagrams) {}

    /**
     * Makes what is published in one language.
     *
     * @param original in the job's first language
     * @param handedOver the guide that its owner gets, whose pages the published one has
     */
    Language language(PublicEdition edition, PublicEdition original, GuidePages handedOver) {
        boolean first = edition == original;
        String suffix = first ? "" : "-" + edition.language();
        String page = GuidePage.name(edition.language(), first);
        String print = "guide" + suffix + ".pdf";
        String calendar = "calendar" + suffix + ".ics";
        GuidePage web = new GuidePage(edition, branding, templates);
        byte[] guide = web.printed()
                .like(handedOver, Paper.of(edition.edition().assessment()).small())
                .pdf(List.of(attached(edition)));
        return new Language(
                edition,
                Map.of(page, web.html(), print, guide, calendar, DueDates.calendar(edition, original)),
                page,
                web.book(),
                print,
                calendar,
                diagrams(web.pictures()));
    }

    /**
     * The files, by path inside the pack.
     *
     * @param languages one a language of the job, first one first
     * @param labels that are published
     */
    Map<String, byte[]> of(List<Language> languages, byte[] labels) {
        Assessment it = languages.get(0).edition().edition().assessment();
        Map<String, byte[]> files = new TreeMap<>();
        files.put("figures.json", figures.get());
        files.put("labels.pdf", labels);
        languages.forEach(language -> files.putAll(language.files()));
        PublicEdition first = languages.get(0).edition();
        List<RecordLeaf> leaves = languages.stream()
                .map(language -> leaf(language, language.edition() == first, files))
                .toList();
        List<Issued> history = issued.allBefore(it.job().job().revision()).stream()
                .map(IssuedBefore::issued)
                .toList();
        RecordLink link = RecordLink.of(it);
        Map<String, byte[]> inPack = new TreeMap<>();
        link.key()
                .ifPresentOrElse(
                        key -> sealed(key, leaves, files, history, inPack),
                        () -> open(link.folder(), leaves, files, history, inPack));
        return inPack;
    }

    private void open(
            String folder,
            List<RecordLeaf> leaves,
            Map<String, byte[]> beside,
            List<Issued> history,
            Map<String, byte[]> inPack) {
        put(inPack, PUBLISHED, RecordSite.files(leaves, history, branding, templates));
        put(inPack, PUBLISHED + folder + "/", beside);
    }

    /**
     * What is published of a sealed record, and its pages and figures as they can be read by who has the pack. No more than
     * these: the digests of a pack's files are published, and with them somebody could try what a short file says.
     */
    private void sealed(
            SealKey key,
            List<RecordLeaf> leaves,
            Map<String, byte[]> beside,
            List<Issued> history,
            Map<String, byte[]> inPack) {
        Map<String, byte[]> plain = new TreeMap<>(beside);
        plain.putAll(RecordSite.wholes(leaves, branding, templates));
        put(inPack, PUBLISHED, SealedSite.files(leaves, plain, history, key, branding, templates));
        plain.keySet().removeIf(name -> !name.endsWith(".html") && !name.endsWith(".json"));
        put(inPack, RecordLink.UNSEALED + "/", plain);
    }

    private static void put(Map<String, byte[]> inPack, String folder, Map<String, byte[]> files) {
        files.forEach((path, content) -> inPack.put(folder + path, content));
    }

    private RecordLeaf leaf(Language language, boolean first, Map<String, byte[]> files) {
        PublicEdition edition = language.edition();
        return new RecordLeaf(
                edition,
                first,
                language.diagrams(),
                language.page(),
                language.book(),
                List.of(
                        download(language.print(), "guide", files),
                        download(language.calendar(), "calendar", files),
                        download("labels.pdf", "labels", files),
                        download("figures.json", "figures", files)),
                Digest.of(figures.get()),
                issued.before(edition.edition().assessment().job().job().revision())
                        .map(before -> new ChangesWords(edition.edition())
                                .lines(
                                        Changes.published(before, FiguresJson.read(figures.get())),
                                        Changes.chapters(
                                                before,
                                                language.page(),
                                                new String(
                                                        Objects.requireNonNull(files.get(language.page())),
                                                        StandardCharsets.UTF_8))))
                        .orElse(List.of()));
    }

    private static RecordLeaf.Download download(String file, String kind, Map<String, byte[]> files) {
        return new RecordLeaf.Download(file, kind, Objects.requireNonNull(files.get(file)).length);
    }

    private static List<InlineSvg> diagrams(Map<String, InlineSvg> pictures) {
        return DIAGRAMS.stream()
                .flatMap(name -> Pictures.all(pictures, name).stream())
                .toList();
    }

    private Attachment attached(PublicEdition edition) {
        return new Attachment(
                "figures.json",
                "application/json",
                Attachment.Relation.DATA,
                edition.edition().words().say("guide.attached.figures"),
                content.get());
    }
}
