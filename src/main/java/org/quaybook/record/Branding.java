package org.quaybook.record;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.Installer;

/** How an installer's documents look: two colours and a logo. */
public final class Branding {

    private static final String MAIN = "#1b3a4b";
    private static final String ACCENT = "#b5651d";

    private final String main;
    private final String accent;
    private final @Nullable String logoName;
    private final byte[] logo;

    private Branding(String main, String accent, @Nullable String logoName, byte[] logo) {
        this.main = main;
        this.accent = accent;
        this.logoName = logoName;
        this.logo = logo;
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
                logo.map(byte[]::clone).orElse(new byte[0]));
    }

    /** The look of documents without a profile. */
    public static Branding none() {
        return new Branding(MAIN, ACCENT, null, new byte[0]);
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
}
