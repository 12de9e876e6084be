package org.quaybook.render;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.BaseFont;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** The fonts we carry. Each is read once, at first use, and always embedded as a subset. */
@SuppressWarnings("ImmutableEnumChecker") // What is kept beside the names is read once and then only asked.
enum Typeface {
    SANS("Source Sans Pro", 400, false, "fonts/ttf/SourceSansPro/SourceSansPro-Regular.ttf"),
    SANS_ITALIC("Source Sans Pro", 400, true, "fonts/ttf/SourceSansPro/SourceSansPro-Italic.ttf"),
    SANS_SEMIBOLD("Source Sans Pro", 600, false, "fonts/ttf/SourceSansPro/SourceSansPro-SemiBold.ttf"),
    SANS_BOLD("Source Sans Pro", 700, false, "fonts/ttf/SourceSansPro/SourceSansPro-Bold.ttf"),
    SANS_BOLD_ITALIC("Source Sans Pro", 700, true, "fonts/ttf/SourceSansPro/SourceSansPro-BoldItalic.ttf"),
    CONDENSED("Roboto Condensed", 400, false, "fonts/ttf/Roboto/RobotoCondensed-Regular.ttf"),
    CONDENSED_BOLD("Roboto Condensed", 700, false, "fonts/ttf/Roboto/RobotoCondensed-Bold.ttf"),
    SYMBOL("DejaVu Sans", 400, false, "net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf"),
    SYMBOL_BOLD("DejaVu Sans", 700, false, "net/sf/jasperreports/fonts/dejavu/DejaVuSans-Bold.ttf");

    /** ISO/IEC 14496-22 (OpenType): PDF measures glyphs in thousandths of the font size. */
    static final double UNITS = 1000;

    private static final int BOLD = 600;

    private static final short UNASKED = 0;
    private static final short MISSING = -1;
    private static final int LACKING = -1;

    private final String family;
    private final int weight;
    private final boolean italic;
    private final String path;
    private final Lazy<BaseFont> font = new Lazy<>(this::load);
    private final Lazy<Font> shapes = new Lazy<>(this::loadShapes);

    /**
     * By UTF-16 unit: {@link #UNASKED}, {@link #MISSING}, or one more than the width. Threads that ask at once find the
     * same.
     */
    private final short[] advances = new short[Character.MAX_VALUE + 1];

    Typeface(String family, int weight, boolean italic, String path) {
        this.family = family;
        this.weight = weight;
        this.italic = italic;
        this.path = path;
    }

    /** The face of a family nearest to what is asked; of the text family when there is no such family. */
    static Typeface find(String family, int weight, boolean italic) {
        boolean known = isFamily(family);
        return Arrays.stream(values())
                .filter(face -> face.family.equals(known ? family : SANS.family))
                .min(Comparator.comparing((Typeface face) -> face.italic != italic)
                        .thenComparing(face -> Math.abs(face.weight - weight)))
                .orElse(SANS);
    }

    /** Whether a font family is one of ours. */
    static boolean isFamily(String name) {
        return Arrays.stream(values()).anyMatch(face -> face.family.equals(name));
    }

    String family() {
        return family;
    }

    /** As in CSS: 400 is normal, 700 bold. */
    int weight() {
        return weight;
    }

    boolean italic() {
        return italic;
    }

    BaseFont font() {
        return font.get();
    }

    /** The same font for shapes of letters. */
    Font drawn() {
        return shapes.get();
    }

    private Font loadShapes() {
        try {
            return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(bytes()));
        } catch (FontFormatException e) {
            throw new IllegalStateException("not a font: " + path, e);
        } catch (IOException e) {
            throw unwritten(e);
        }
    }

    /** The JDK reads a font from a copy that it makes in the system's folder of temporary files. */
    static UncheckedIOException unwritten(IOException e) {
        return new UncheckedIOException(
                e instanceof FileSystemException
                        ? e
                        : new IOException(System.getProperty("java.io.tmpdir") + ": " + e.getMessage(), e));
    }

    /** The font file. */
    byte[] bytes() {
        try (InputStream in = Typeface.class.getClassLoader().getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("not on the class path: " + path);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private BaseFont load() {
        try {
            BaseFont loaded = BaseFont.createFont(
                    name() + ".ttf", BaseFont.IDENTITY_H, BaseFont.EMBEDDED, BaseFont.NOT_CACHED, bytes(), null);
            loaded.setSecureRandom(new SubsetPrefix(path));
            // The library's list of glyphs does not say what PDF/A-3 (ISO 19005-3, 6.2.11.4.2) wants of it; none is
            // right.
            loaded.setIncludeCidSet(false);
            return loaded;
        } catch (DocumentException | IOException e) {
            throw new IllegalStateException("not a font: " + path, e);
        }
    }

    private short advance(char c) {
        short known = advances[c];
        if (known == UNASKED) {
            boolean printed = c >= ' ' && !Character.isSurrogate(c) && font().charExists(c) && !needsShaping(c);
            known = printed ? (short) (font().getWidth(c) + 1) : MISSING;
            advances[c] = known;
        }
        return known;
    }

    /** The fonts have letters of scripts that nothing here can join or set from right to left. */
    private static boolean needsShaping(int c) {
        byte direction = Character.getDirectionality(c);
        return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }

    /** Whether this font prints a character of the basic plane as it should look. */
    boolean has(int codePoint) {
        return codePoint <= Character.MAX_VALUE && advance((char) codePoint) != MISSING;
    }

    boolean hasAll(String text) {
        return units(text) != LACKING;
    }

    /** Width of a text in thousandths of the size; {@link #LACKING} if this font lacks one of its characters. */
    private int units(String text) {
        int units = 0;
        for (int i = 0; i < text.length(); i++) {
            short advance = advance(text.charAt(i));
            if (advance == MISSING) {
                return LACKING;
            }
            units += advance - 1;
        }
        return units;
    }

    /** The font for what this one lacks. */
    Typeface fallback() {
        return weight >= BOLD ? SYMBOL_BOLD : SYMBOL;
    }

    /** A stretch of text and the font that has all of it. */
    record Run(Typeface typeface, String text) {

        /** Width in the unit of the size. */
        double width(double size) {
            return typeface.units(text) / UNITS * size;
        }

        /** How far its tallest letter reaches above the baseline, in the unit of the size. */
        double above(double size) {
            return edges().mapToInt(edge -> edge[3]).max().orElse(0) / UNITS * size;
        }

        /** How far its lowest letter reaches below the baseline, in the unit of the size. */
        double below(double size) {
            return -edges().mapToInt(edge -> edge[1]).min().orElse(0) / UNITS * size;
        }

        /** Left, bottom, right, top of each letter; a space has none. */
        private Stream<int[]> edges() {
            return text.chars().mapToObj(typeface.font()::getCharBBox).filter(Objects::nonNull);
        }
    }

    /**
     * Cuts a text into runs, each in this font or its fallback.
     *
     * @return empty when some character is in neither: see {@link #firstMissing}
     */
    Optional<List<Run>> runs(String text) {
        if (hasAll(text)) {
            return Optional.of(text.isEmpty() ? List.of() : List.of(new Run(this, text)));
        }
        if (firstMissing(text).isPresent()) {
            return Optional.empty();
        }
        List<Run> runs = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= text.length(); i++) {
            if (i == text.length() || has(text.charAt(i)) != has(text.charAt(start))) {
                add(runs, text.substring(start, i));
                start = i;
            }
        }
        return Optional.of(runs);
    }

    /** Blanks between two symbols are left to their font: as a run of their own they could get lost. */
    private void add(List<Run> runs, String stretch) {
        Typeface face = hasAll(stretch) && !(isBlank(stretch) && fallback().hasAll(stretch)) ? this : fallback();
        int last = runs.size() - 1;
        if (last >= 0 && runs.get(last).typeface() == face) {
            runs.set(last, new Run(face, runs.get(last).text() + stretch));
        } else {
            runs.add(new Run(face, stretch));
        }
    }

    private static boolean isBlank(String stretch) {
        return stretch.chars().allMatch(Character::isSpaceChar);
    }

    /** The first code point of a text that neither this font nor its fallback has. */
    Optional<Integer> firstMissing(String text) {
        if (hasAll(text)) {
            return Optional.empty();
        }
        return text.codePoints()
                .filter(c -> !has(c) && !fallback().has(c))
                .boxed()
                .findFirst();
    }

    /** The sum of the runs' widths, in the unit of the size; a character that no font has counts as nothing. */
    double width(String text, double size) {
        int units = units(text);
        if (units != LACKING) {
            return units / UNITS * size;
        }
        return runs(text).orElse(List.of()).stream()
                .mapToDouble(run -> run.width(size))
                .sum();
    }

    /** What a message about a missing character is filled with. */
    static Object[] describeMissing(int codePoint, String text) {
        return new Object[] {Character.toString(codePoint), String.format(Locale.ROOT, "U+%04X", codePoint), text};
    }
}
