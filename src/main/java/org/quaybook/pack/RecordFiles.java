package org.quaybook.pack;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.quaybook.job.SealKey;
import org.quaybook.pack.changes.Changes;
import org.quaybook.pack.changes.IssuedBefore;
import org.quaybook.pack.changes.IssuedPacks;
import org.quaybook.pack.guide.Guide;
import org.quaybook.pack.guide.GuidePage;
import org.quaybook.pack.guide.Palette;
import org.quaybook.pack.labels.Labels;
import org.quaybook.pack.pictures.Pictures;
import org.quaybook.proof.Digest;
import org.quaybook.record.Branding;
import org.quaybook.record.DueDates;
import org.quaybook.record.Edition;
import org.quaybook.record.Issued;
import org.quaybook.record.PublicEdition;
import org.quaybook.record.RecordLeaf;
import org.quaybook.record.RecordLink;
import org.quaybook.record.RecordSite;
import org.quaybook.record.SealedSite;
import org.quaybook.render.Attachment;
import org.quaybook.render.InlineSvg;
import org.quaybook.render.Templates;

/** The part of a pack that is published: the record page with what it links, made from what anybody may read. */
final class RecordFiles {

    private static final String PUBLISHED = "record/";
    private static final List<String> DIAGRAMS = List.of("batterySide", "mainsSide", "circuits", "symbols");

    private final Branding branding;
    private final Templates templates;
    private final String version;

    RecordFiles(Branding branding, Templates templates, String version) {
        this.branding = branding;
        this.templates = templates;
        this.version = version;
    }

    /**
     * The files, by path inside the pack.
     *
     * @param editions one a language of the job, first one first
     * @param labelled one a language of the labels
     * @param issued what was issued before
     */
    Map<String, byte[]> of(List<PublicEdition> editions, List<PublicEdition> labelled, IssuedPacks issued) {
        Edition first = editions.get(0).edition();
        RecordLink link = RecordLink.of(first.assessment());
        List<Edition> onLabels = labelled.stream().map(PublicEdition::edition).toList();
        Map<String, byte[]> shared = new TreeMap<>();
        byte[] figures =
                FiguresJson.of(first.assessment(), first.words(), Labels.notes(onLabels, branding, link), version);
        shared.put("figures.json", figures);
        shared.put(
                "labels.pdf",
                Labels.sheet(
                                onLabels,
                                branding,
                                link,
                                Paper.of(first.assessment()).sheet())
                        .sheet()
                        .pdf());
        Map<String, byte[]> files = new TreeMap<>(shared);
        List<Language> languages = editions.parallelStream()
                .map(edition -> language(edition, editions.get(0), issued, shared))
                .toList();
        languages.forEach(language -> files.putAll(language.files()));
        List<RecordLeaf> leaves = languages.stream().map(Language::leaf).toList();
        List<Issued> history = issued.allBefore(first.assessment().job().job().revision()).stream()
                .map(IssuedBefore::issued)
                .toList();
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

    /** Guide and dates of a language, which go beside the shared files, and what its page offers. */
    private record Language(RecordLeaf leaf, Map<String, byte[]> files) {}

    private Language language(
            PublicEdition edition, PublicEdition original, IssuedPacks issued, Map<String, byte[]> shared) {
        boolean first = edition == original;
        String suffix = first ? "" : "-" + edition.language();
        String page = GuidePage.name(edition.language(), first);
        String print = "guide" + suffix + ".pdf";
        byte[] figures = Objects.requireNonNull(shared.get("figures.json"));
        byte[] guide = new Guide(edition.edition(), branding, templates)
                .on(Paper.of(edition.edition().assessment()).small())
                .pdf(List.of(attached(edition, figures)));
        byte[] guidePage = GuidePage.html(edition, branding, templates);
        String calendar = "calendar" + suffix + ".ics";
        byte[] dates = DueDates.calendar(edition, original);
        RecordLeaf leaf = new RecordLeaf(
                edition,
                first,
                diagrams(edition.edition()),
                page,
                GuidePage.book(edition, branding, templates),
                List.of(
                        new RecordLeaf.Download(print, "guide", guide.length),
                        new RecordLeaf.Download(calendar, "calendar", dates.length),
                        download("labels.pdf", "labels", shared),
                        download("figures.json", "figures", shared)),
                Digest.of(figures),
                issued.before(edition.edition().assessment().job().job().revision())
                        .map(before -> new ChangesWords(edition.edition())
                                .lines(
                                        Changes.published(before, FiguresJson.read(figures)),
                                        Changes.chapters(before, page, new String(guidePage, StandardCharsets.UTF_8))))
                        .orElse(List.of()));
        return new Language(leaf, Map.of(page, guidePage, print, guide, calendar, dates));
    }

    private static RecordLeaf.Download download(String file, String kind, Map<String, byte[]> files) {
        return new RecordLeaf.Download(file, kind, Objects.requireNonNull(files.get(file)).length);
    }

    private List<InlineSvg> diagrams(Edition edition) {
        Map<String, InlineSvg> pictures =
                Pictures.of(edition.assessment(), edition.words(), new Palette(branding).look());
        return DIAGRAMS.stream()
                .flatMap(name -> Stream.ofNullable(pictures.get(name)))
                .toList();
    }

    private static Attachment attached(PublicEdition edition, byte[] figures) {
        return new Attachment(
                "figures.json",
                "application/json",
                Attachment.Relation.DATA,
                edition.edition().words().say("guide.attached.figures"),
                figures);
    }
}
