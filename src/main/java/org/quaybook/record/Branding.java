package org.quaybook.record;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.Installer;
import org.quaybook.render.Prose;

/** What makes documents an installer's own: two colours, a logo, and a chapter in the owner's guide. */
public final class Branding {

    /** The language of a chapter that serves every language without one of its own. */
    public static final String ANY_LANGUAGE = "";

    private static final String MAIN = "#1b3a4b";
    private static final String ACCENT = "#b5651d";

    private final String main;
    private final String accent;
    private final @Nullable String logoName;
    private final byte[] logo;
    private final Map<String, Prose> chapter;

    private Branding(String main, String accent, @Nullable String logoName, byte[] logo, Map<String, Prose> chapter) {
        this.main = main;
        this.accent = accent;
        this.logoName = logoName;
        this.logo = logo;
        this.chapter = Map.copyOf(chapter);
    }

    /**
     * The look of an installer's documents.
     *
     * @param logo content of the logo file; empty if the profile names none
     */
    public static Branding of(Installer installer, Optional<byte[]> logo) {
        return new Branding(
                installer.colours() == null ? MAIN : installer.colours().main(),
                installer.colours() == null || installer.colours().accent() == null
                        ? ACCENT
                        : installer.colours().accent(),
                logo.isPresent() ? installer.logo() : null,
                logo.map(byte[]::clone).orElse(new byte[0]),
                Map.of());
    }

    /** The look of documents without a profile. */
    public static Branding none() {
        return new Branding(MAIN, ACCENT, null, new byte[0], Map.of());
    }

    /**
     * The same with a chapter of the installer's own.
     *
     * @param byLanguage the chapter by the tag of its language, or by {@link #ANY_LANGUAGE}
     */
    public Branding with(Map<String, Prose> byLanguage) {
        return new Branding(main, accent, logoName, logo, byLanguage);
    }

    /** Colour of headings and bars, {@code #rrggbb}. */
    public String main() {
        return main;
    }

    /** Colour of lines and highlights, {@code #rrggbb}. */
    public String accent() {
        return accent;
    }

    /** File name of the logo, SVG or PNG by its ending; empty without one. */
    public Optional<String> logoName() {
        return Optional.ofNullable(logoName);
    }

    /** Content of the logo; empty without one. */
    public byte[] logo() {
        return Arrays.copyOf(logo, logo.length);
    }

    /** The installer's own chapter in a language, else the one for any language. */
    public Optional<Prose> chapter(String language) {
        return Optional.ofNullable(chapter.getOrDefault(language, chapter.get(ANY_LANGUAGE)));
    }
}
