package org.quaybook.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/** The installer profile: what the documents say about the firm. */
@Means("The installer profile: what the documents say about the firm.")
public record Installer(
        @Means("name of the firm") @Longest(Longest.NAME) String firm,

        @Means("whom to ask for") @Longest(Longest.NAME) @Personal @Nullable String contact,

        @Means("telephone") @Longest(Longest.TELEPHONE) @Nullable String phone,

        @Means("e-mail") @Nullable String email,
        @Means("lines of the postal address") List<String> address,
        @Means("web address") @Nullable String website,
        @Means("registration or qualification") @Nullable String registration,

        @Means(value = "SVG or PNG file beside this file", example = "logo.svg")
        @Matches(
                value = "[A-Za-z0-9][A-Za-z0-9._ -]*\\.(svg|png)",
                form = "a .svg or .png file name without folders, such as logo.svg")
        @Nullable String logo,

        @Means("colours of the documents") @Nullable Colours colours,

        @Means(
                value =
                        "CommonMark file beside this file that becomes a chapter of the owner's guide; NAME.de.md beside NAME.md is the same in German",
                example = "our-advice.md")
        @Matches(
                value = "[A-Za-z0-9][A-Za-z0-9_-]*\\.md",
                form = "a .md file name of letters, digits, hyphens and underscores, such as our-advice.md")
        @Nullable String chapter,

        @Means("forms of the owner's guide to print, where a job does not say; all unless said") @Nullable GuidePrint guidePrints,

        @Means(value = "base address of the install records", example = "https://records.example.org/")
        @Matches(
                value = "https://[a-z0-9.-]+(:[0-9]+)?(/[A-Za-z0-9._/-]*)?/",
                form = "an https address that ends in a slash, such as https://records.example.org/")
        String records,

        @Means(
                value =
                        "public key that records are signed with, base64, as “quaybook key” prints it; its fingerprint is printed in guide and record",
                example = "fMYXoE6eeBB7a6xzb2rj2Wcjx1rzHAQTr+q9XIYGu2A=")
        @Matches(
                value = "[A-Za-z0-9+/]{42}[AEIMQUYcgkosw048]=",
                form = "43 symbols of base64 and an equals sign, as “quaybook key” prints it")
        @Nullable String publicKey,

        @Means(
                value = "folder with the installer's own copies of rulebook tables, a path from this file",
                example = "tables")
        @Matches(
                value = "(\\.\\./)?[^/\\\\:.*?\"<>|][^/\\\\:*?\"<>|]*(/[^/\\\\:.*?\"<>|][^/\\\\:*?\"<>|]*)*",
                form = "a folder in this file's folder, below it, or one folder up, such as ../tables")
        @Nullable String tables,

        Place place) {
    public Installer {
        address = List.copyOf(address);
    }

    /** The firm without whom to ask for there. */
    public Installer withoutPeople() {
        return new Installer(
                firm,
                null,
                phone,
                email,
                address,
                website,
                registration,
                logo,
                colours,
                chapter,
                guidePrints,
                records,
                publicKey,
                tables,
                place);
    }
}
