package org.quaybook.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/** Who made this job, when and by which rules. */
@Means("Who made this job, when and by which rules.")
public record Header(
        @Means(value = "the installer's own job number", example = "26-118")
        @Matches(
                value =
                        "(?!([Cc][Oo][Nn]|[Pp][Rr][Nn]|[Aa][Uu][Xx]|[Nn][Uu][Ll]|([Cc][Oo][Mm]|[Ll][Pp][Tt])[0-9])([.]|$))"
                                + "[A-Za-z0-9]([A-Za-z0-9._-]{0,30}[A-Za-z0-9_-])?",
                form =
                        "1 to 32 letters, digits, dots, hyphens or underscores, such as 26-118; no dot at the end, and no name that Windows keeps for itself, such as CON")
        String number,

        @Means(
                value = "permanent code of the install record, made once and never changed",
                example = "9F3K-7TWM-X2QA-6HCE-D1RB-Y")
        RecordCode record,

        @Means("whether the published record is sealed: the web host cannot read it, only who has the link of a label")
        @Nullable Boolean sealed,

        @Means(
                value =
                        "what opens the sealed record, made once by quaybook seal-key and never changed; keep it secret",
                example = "3M8V-41QD-ZT7C-0W9X-KE5H-62RB-FY4")
        @Nullable SealKey sealKey,

        @Means("1 for the first issue, one more with each later one") @Within(least = "1", most = "999")
        Integer revision,

        @Means(value = "date of this revision; the only date the documents show", example = "2026-05-14")
        LocalDate date,

        @Means(value = "the rules that the installation follows", example = "iso-13297") @RefersTo(Thing.RULEBOOK)
        String rulebook,

        @Means(value = "languages of the documents, at least one, first one first", example = "[en-GB]")
        @RefersTo(Thing.LANGUAGE)
        List<String> languages,

        @Means(
                value =
                        "languages of the labels, one, or two that stand on each label; unless said, the first of the documents",
                example = "[en-GB, nl]")
        @RefersTo(Thing.LANGUAGE)
        List<String> labelLanguages,

        @Means(value = "installer profile, a path from this file", example = "installer.yaml")
        @Matches(
                value = "(\\.\\./)?([^/\\\\:.*?\"<>|][^/\\\\:*?\"<>|]*/)*[^/\\\\:.*?\"<>|][^/\\\\:*?\"<>|]*\\.ya?ml",
                form = "a .yaml file in this file's folder, below it, or one folder up, such as ../installer.yaml")
        String installer,

        @Means(
                value = "folder with the installer's own copies of rulebook tables, a path from this file",
                example = "tables")
        @Matches(
                value = "(\\.\\./)?[^/\\\\:.*?\"<>|][^/\\\\:*?\"<>|]*(/[^/\\\\:.*?\"<>|][^/\\\\:*?\"<>|]*)*",
                form = "a folder in this file's folder, below it, or one folder up, such as ../tables")
        @Nullable String tables,

        @Means("paper of the documents; unless said, that of the rulebook's country") @Nullable PaperKind paper,

        @Means("forms of the owner's guide to print; unless said, those of the installer profile") @Nullable GuidePrint guidePrints,

        @Means("who did the work") @Longest(Longest.NAME) @Personal @Nullable String fitter,

        Place place) {
    public Header {
        languages = List.copyOf(languages);
        labelLanguages = List.copyOf(labelLanguages);
    }

    /** What the published record is sealed with; empty if everybody with the code may read it. */
    public Optional<SealKey> seal() {
        return Boolean.TRUE.equals(sealed) ? Optional.ofNullable(sealKey) : Optional.empty();
    }

    /** The same as a later revision. */
    Header as(int later, LocalDate day) {
        return new Header(
                number,
                record,
                sealed,
                sealKey,
                later,
                day,
                rulebook,
                languages,
                labelLanguages,
                installer,
                tables,
                paper,
                guidePrints,
                fitter,
                place);
    }
}
