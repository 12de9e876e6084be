package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.render.RenderException;

/**
 * One label in two languages: sign, code, ids and numbers stand once, each sentence in the first language and then in the
 * second, and what both languages say alike is not said twice. On what is drawn already, a tag or a strip, each line
 * stands in both; one without room for that becomes two.
 */
final class LabelsBilingual {

    /** What languages write otherwise in the same number or date: decimal sign and blanks. */
    private static final Pattern PUNCTUATION = Pattern.compile("[.,\\s\\u00a0\\u202f]");

    private LabelsBilingual() {}

    /**
     * Joins the designs of one job.
     *
     * @param languages of the two, by their tag
     * @param first in the language that stands first
     * @param second the same labels in the other language
     */
    static List<LabelDesign> of(List<String> languages, List<LabelDesign> first, List<LabelDesign> second) {
        List<String> ids = first.stream().map(LabelDesign::id).toList();
        if (!ids.equals(second.stream().map(LabelDesign::id).toList())) {
            throw new IllegalArgumentException("not the same labels: " + ids);
        }
        return IntStream.range(0, first.size())
                .mapToObj(i -> of(languages, first.get(i), second.get(i)))
                .flatMap(List::stream)
                .toList();
    }

    private static List<LabelDesign> of(List<String> languages, LabelDesign first, LabelDesign second) {
        LabelForm form = first.form();
        List<LabelDesign> apart =
                List.of(first.of(languages.get(0), first.place()), second.of(languages.get(1), first.place()));
        if (form == null) {
            return List.of(
                    joined(first, lines(first.title(), second.title()), parts(first.parts(), second.parts()), apart));
        }
        List<LabelPart> parts = IntStream.range(0, first.parts().size())
                .mapToObj(i -> lineByLine(first.parts().get(i), second.parts().get(i)))
                .toList();
        if (parts.equals(first.parts())) {
            return List.of(first);
        }
        try {
            return List.of(joined(first, lineByLine(first.title(), second.title()), parts, apart)
                    .drawnBy(form));
        } catch (RenderException noRoom) {
            return apart;
        }
    }

    private static LabelDesign joined(LabelDesign first, String title, List<LabelPart> parts, List<LabelDesign> apart) {
        return new LabelDesign(
                first.id(),
                first.reason(),
                first.spot(),
                first.place(),
                first.reading(),
                first.word(),
                first.signs(),
                title,
                parts,
                List.of(),
                apart,
                null,
                null);
    }

    /** Whether two texts say the same, but for how their languages write numbers. */
    static boolean alike(String first, String second) {
        return PUNCTUATION
                .matcher(first)
                .replaceAll("")
                .equals(PUNCTUATION.matcher(second).replaceAll(""));
    }

    private static boolean alike(List<String> first, List<String> second) {
        return first.size() == second.size()
                && IntStream.range(0, first.size()).allMatch(i -> alike(first.get(i), second.get(i)));
    }

    /** Texts in one place, one below the other. */
    private static String lines(String first, String second) {
        return alike(first, second) ? first : first + "\n" + second;
    }

    private static LabelPart lineByLine(LabelPart first, LabelPart second) {
        if (first instanceof LabelPart.Text one && second instanceof LabelPart.Text other) {
            return new LabelPart.Text(lineByLine(one.paragraphs(), other.paragraphs()), one.voice(), one.listing());
        }
        if (first instanceof LabelPart.Grid one && second instanceof LabelPart.Grid other) {
            List<List<String>> rows = IntStream.range(0, one.rows().size())
                    .mapToObj(i -> lineByLine(one.rows().get(i), other.rows().get(i)))
                    .toList();
            return new LabelPart.Grid(one.head(), rows, one.wide(), one.firstStrong());
        }
        throw new IllegalArgumentException("not on a tag or strip: " + first);
    }

    private static List<String> lineByLine(List<String> first, List<String> second) {
        return IntStream.range(0, first.size())
                .mapToObj(i -> lineByLine(first.get(i), second.get(i)))
                .toList();
    }

    /** Each line in the first language, then in the second. */
    private static String lineByLine(String first, String second) {
        List<String> one = first.lines().toList();
        List<String> other = second.lines().toList();
        if (one.size() != other.size()) {
            return lines(first, second);
        }
        return String.join(
                "\n",
                IntStream.range(0, one.size())
                        .mapToObj(i -> line(one.get(i), other.get(i)))
                        .toList());
    }

    /** Where one word alone differs, the two stand beside each other and the rest stands once: "Sicherung / fuse F1". */
    private static String line(String first, String second) {
        String[] one = first.split(" ");
        String[] other = second.split(" ");
        Integer differs = one.length == other.length ? onlyDifference(one, other) : null;
        if (alike(first, second) || differs == null) {
            return lines(first, second);
        }
        one[differs] = one[differs] + " / " + other[differs];
        return String.join(" ", one);
    }

    private static @Nullable Integer onlyDifference(String[] one, String[] other) {
        List<Integer> different = IntStream.range(0, one.length)
                .filter(i -> !alike(one[i], other[i]))
                .boxed()
                .toList();
        return different.size() == 1 ? different.get(0) : null;
    }

    private static List<LabelPart> parts(List<LabelPart> first, List<LabelPart> second) {
        if (first.size() != second.size()) {
            return Stream.concat(first.stream(), second.stream()).toList();
        }
        List<LabelPart> parts = new ArrayList<>();
        for (int i = 0; i < first.size(); i++) {
            parts.addAll(part(first.get(i), second.get(i)));
        }
        return parts;
    }

    private static List<LabelPart> part(LabelPart first, LabelPart second) {
        if (first.equals(second) || first instanceof LabelPart.Drawing) {
            return List.of(first);
        }
        if (first instanceof LabelPart.Text one
                && second instanceof LabelPart.Text other
                && alike(one.paragraphs(), other.paragraphs())) {
            return List.of(first);
        }
        if (first instanceof LabelPart.Grid one && second instanceof LabelPart.Grid other && sameShape(one, other)) {
            return List.of(new LabelPart.Grid(
                    cells(one.head(), other.head()), rows(one, other), one.wide(), one.firstStrong()));
        }
        if (first instanceof LabelPart.Blank one && second instanceof LabelPart.Blank other) {
            return List.of(new LabelPart.Blank(one.caption() + " / " + other.caption()));
        }
        if (first instanceof LabelPart.Scan one && second instanceof LabelPart.Scan other) {
            return List.of(new LabelPart.Scan(one.code(), parts(one.beside(), other.beside())));
        }
        return List.of(first, second);
    }

    private static boolean sameShape(LabelPart.Grid one, LabelPart.Grid other) {
        return one.head().size() == other.head().size()
                && one.rows().size() == other.rows().size();
    }

    private static List<List<String>> rows(LabelPart.Grid one, LabelPart.Grid other) {
        return IntStream.range(0, one.rows().size())
                .mapToObj(i -> cells(one.rows().get(i), other.rows().get(i)))
                .toList();
    }

    private static List<String> cells(List<String> first, List<String> second) {
        return IntStream.range(0, first.size())
                .mapToObj(i -> lines(first.get(i), second.get(i)))
                .toList();
    }
}
