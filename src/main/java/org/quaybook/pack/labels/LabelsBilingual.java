package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One label in two languages: sign, code and numbers stand once, each sentence in the first language and then in the
 * second, and what both languages say alike is not said twice. What is drawn already stays in the first language: a tag
 * or a strip has no room for two.
 */
final class LabelsBilingual {

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
                .toList();
    }

    private static LabelDesign of(List<String> languages, LabelDesign first, LabelDesign second) {
        if (first.drawn() != null) {
            return first;
        }
        return new LabelDesign(
                first.id(),
                first.reason(),
                first.spot(),
                first.place(),
                first.reading(),
                first.word(),
                first.signs(),
                lines(first.title(), second.title()),
                parts(first.parts(), second.parts()),
                List.of(first.of(languages.get(0), first.place()), second.of(languages.get(1), first.place())),
                null);
    }

    /** Texts in one place, one below the other. */
    private static String lines(String first, String second) {
        return first.equals(second) ? first : first + "\n" + second;
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
        if (first instanceof LabelPart.Grid one && second instanceof LabelPart.Grid other && alike(one, other)) {
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

    private static boolean alike(LabelPart.Grid one, LabelPart.Grid other) {
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
