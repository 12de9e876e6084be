package org.quaybook.render;

import com.lowagie.text.pdf.BaseFont;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.css.constants.CSSName;
import org.xhtmlrenderer.css.constants.IdentValue;
import org.xhtmlrenderer.css.sheet.FontFaceRule;
import org.xhtmlrenderer.css.value.FontSpecification;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.SharedContext;
import org.xhtmlrenderer.pdf.FontDescription;
import org.xhtmlrenderer.pdf.FontFamily;
import org.xhtmlrenderer.pdf.ITextFSFont;
import org.xhtmlrenderer.pdf.ITextFontResolver;
import org.xhtmlrenderer.pdf.TrueTypeUtil;
import org.xhtmlrenderer.render.FSFont;

/** Offers the layout engine our own fonts and no others, so that each one printed is embedded. */
final class LayoutFonts extends ITextFontResolver {

    private static final Set<String> GENERIC = Set.of("serif", "sans-serif", "monospace");

    private static final Lazy<Map<Typeface, FontDescription>> DESCRIPTIONS = new Lazy<>(LayoutFonts::describeAll);

    private static final Lazy<IdentityHashMap<BaseFont, Typeface>> TYPEFACES = new Lazy<>(LayoutFonts::typefaces);

    private final Faults faults;
    private final Map<Wanted, FSFont> found = new HashMap<>();

    /** A font as style sheets ask for it. */
    private record Wanted(
            List<String> families,
            @Nullable IdentValue weight,
            @Nullable IdentValue slant,
            float size) {}

    LayoutFonts(Faults faults) {
        this.faults = faults;
    }

    private static Map<Typeface, FontDescription> describeAll() {
        Map<Typeface, FontDescription> all = new EnumMap<>(Typeface.class);
        for (Typeface face : Typeface.values()) {
            all.put(face, describe(face));
        }
        return all;
    }

    private static FontDescription describe(Typeface face) {
        return TrueTypeUtil.extractDescription(
                face.name(),
                face.bytes(),
                face.font(),
                false,
                IdentValue.valueOf(String.valueOf(face.weight())),
                face.italic() ? IdentValue.ITALIC : IdentValue.NORMAL);
    }

    private static IdentityHashMap<BaseFont, Typeface> typefaces() {
        IdentityHashMap<BaseFont, Typeface> all = new IdentityHashMap<>();
        DESCRIPTIONS.get().forEach((face, description) -> all.put(description.getFont(), face));
        return all;
    }

    /** Which of ours the engine's font is. */
    static Typeface typeface(FSFont font) {
        BaseFont asked = ((ITextFSFont) font).getFontDescription().getFont();
        Typeface face = TYPEFACES.get().get(asked);
        if (face == null) {
            throw new IllegalStateException("not one of ours: " + asked);
        }
        return face;
    }

    static ITextFSFont font(Typeface typeface, float size) {
        FontDescription description = DESCRIPTIONS.get().get(typeface);
        if (description == null) {
            throw new IllegalStateException("not described: " + typeface);
        }
        return new ITextFSFont(description, size);
    }

    /** The engine's own list stays empty: it would hold fonts that are not embedded. */
    @Override
    protected Map<String, FontFamily> loadFonts() {
        return Map.of();
    }

    @Override
    public FSFont resolveFont(SharedContext context, FontSpecification wanted) {
        List<String> named = wanted.families == null ? List.of() : List.of(wanted.families);
        return found.computeIfAbsent(
                new Wanted(named, wanted.fontWeight, wanted.fontStyle, wanted.size), ignored -> find(wanted));
    }

    private FSFont find(FontSpecification wanted) {
        List<String> families = wanted.families == null
                ? List.of()
                : Arrays.stream(wanted.families).map(LayoutFonts::unquoted).toList();
        if (!families.isEmpty() && families.stream().noneMatch(LayoutFonts::isKnown)) {
            faults.add(RenderMessage.FONT_UNKNOWN, String.join(", ", families));
        }
        String family =
                families.stream().filter(LayoutFonts::isKnown).findFirst().orElse(Typeface.SANS.family());
        boolean slanted = wanted.fontStyle == IdentValue.ITALIC || wanted.fontStyle == IdentValue.OBLIQUE;
        return font(Typeface.find(family, convertWeightToInt(wanted.fontWeight), slanted), wanted.size);
    }

    private static boolean isKnown(String family) {
        return Typeface.isFamily(family) || GENERIC.contains(family.toLowerCase(Locale.ROOT));
    }

    private static String unquoted(String family) {
        return family.replaceAll("^['\"]|['\"]$", "");
    }

    /** A style sheet shared with a browser may load our families there; others cannot be had. */
    @Override
    public void importFontFaces(List<FontFaceRule> rules, UserAgentCallback agent) {
        for (FontFaceRule rule : rules) {
            String family = rule.hasFontFamily()
                    ? rule.getCalculatedStyle().valueByName(CSSName.FONT_FAMILY).asString()
                    : "";
            if (!Typeface.isFamily(unquoted(family))) {
                faults.add(RenderMessage.FONT_UNKNOWN, family);
            }
        }
    }
}
