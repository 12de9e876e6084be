package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.render.Label;
import org.quaybook.render.TextStyle.Listing;

/**
 * What a label says and where it goes, before it has a size.
 *
 * @param id stable name of the label inside its job
 * @param reason why it is there
 * @param spot which side of what it goes on
 * @param place the place in the words of the job; empty if the job does not say
 * @param reading from how far it is read
 * @param word how grave; null for a label that warns of nothing
 * @param signs in order
 * @param title what stands on it largest: the hazard, on a label that warns
 * @param parts the rest from top to bottom: on a label that warns, consequence before remedy
 * @param bundles of a label that is a list and may become several labels: how many of its rows, one after the other,
 *     belong together; empty for a label that must be read whole
 * @param apart of a label in two languages, the same as a label for each; empty for a label in one
 * @param form how it is drawn where its size follows from what it is put on; null for one that takes its size from the
 *     stock
 * @param drawn the label itself, drawn so; null for one that takes its size from the stock
 */
record LabelDesign(
        String id,
        LabelReason reason,
        LabelSpot spot,
        String place,
        LabelReading reading,
        @Nullable SignalWord word,
        List<Sign> signs,
        String title,
        List<LabelPart> parts,
        List<Integer> bundles,
        List<LabelDesign> apart,
        @Nullable LabelForm form,
        @Nullable Label drawn) {

    LabelDesign {
        apart = List.copyOf(apart);
        signs = List.copyOf(signs);
        parts = List.copyOf(parts);
        bundles = List.copyOf(bundles);
        if (word == SignalWord.NOTICE && !signs.isEmpty()) {
            throw new IllegalArgumentException("label " + id + ": no safety sign where nobody can be hurt");
        }
        if (!bundles.isEmpty()) {
            onlyAList(id, word, signs, parts, bundles);
        }
    }

    /** Half a warning, or half of the steps that make something dead, looks whole to whoever finds it: never parted. */
    private static void onlyAList(
            String id, @Nullable SignalWord word, List<Sign> signs, List<LabelPart> parts, List<Integer> bundles) {
        List<Integer> rows = parts.stream()
                .filter(LabelPart.Grid.class::isInstance)
                .map(part -> ((LabelPart.Grid) part).rows().size())
                .toList();
        boolean steps = parts.stream()
                .anyMatch(part -> part instanceof LabelPart.Text text && text.listing() == Listing.NUMBERS);
        if (word != null || !signs.isEmpty() || steps) {
            throw new IllegalArgumentException("label " + id + " must be read whole");
        }
        if (!rows.equals(List.of(bundles.stream().mapToInt(Integer::intValue).sum()))) {
            throw new IllegalArgumentException("label " + id + " is not one list of bundles " + bundles);
        }
    }

    static LabelDesign of(
            String id, LabelReason reason, LabelSpot spot, String place, LabelReading reading, String title) {
        return new LabelDesign(
                id, reason, spot, place, reading, null, List.of(), title, List.of(), List.of(), List.of(), null, null);
    }

    /** The same with a signal word and signs. */
    LabelDesign warning(SignalWord signal, Sign... shown) {
        return new LabelDesign(
                id, reason, spot, place, reading, signal, List.of(shown), title, parts, bundles, apart, form, drawn);
    }

    /** The same with more below. */
    LabelDesign with(LabelPart... more) {
        return with(List.of(more));
    }

    /** The same with more below. */
    LabelDesign with(List<LabelPart> more) {
        List<LabelPart> all = new ArrayList<>(parts);
        all.addAll(more);
        return new LabelDesign(id, reason, spot, place, reading, word, signs, title, all, bundles, apart, form, drawn);
    }

    /**
     * The same with other parts.
     *
     * @param alone what it is as a label for each of two languages
     */
    LabelDesign showing(List<LabelPart> shown, List<LabelDesign> alone) {
        return new LabelDesign(
                id, reason, spot, place, reading, word, signs, title, shown, bundles, alone, form, drawn);
    }

    /**
     * The same as a list that may become several labels.
     *
     * @param together how many of its rows, one after the other, belong together
     */
    LabelDesign listing(List<Integer> together) {
        return new LabelDesign(
                id, reason, spot, place, reading, word, signs, title, parts, together, apart, form, drawn);
    }

    /** The same as a list that may become several labels, parted between any two of its rows. */
    LabelDesign listing() {
        return listing(parts.stream()
                .filter(LabelPart.Grid.class::isInstance)
                .flatMap(part ->
                        Collections.nCopies(((LabelPart.Grid) part).rows().size(), 1).stream())
                .toList());
    }

    /**
     * One of the labels that a list becomes.
     *
     * @param number of this one, from 1
     * @param named its title
     * @param rows what it has of the list
     */
    LabelDesign part(int number, String named, List<LabelPart> rows) {
        return new LabelDesign(
                id + "-" + number,
                reason,
                spot,
                place,
                reading,
                word,
                signs,
                named,
                rows,
                List.of(),
                List.of(),
                null,
                null);
    }

    /**
     * The same in one of two languages that do not fit on one label together.
     *
     * @param where the place, in the language of the sheets
     */
    LabelDesign of(String language, String where) {
        LabelDesign alone = new LabelDesign(
                id + "-" + language,
                reason,
                spot,
                where,
                reading,
                word,
                signs,
                title,
                parts,
                bundles,
                List.of(),
                null,
                null);
        return form == null ? alone : alone.drawnBy(form);
    }

    /**
     * The same, drawn already.
     *
     * @throws org.quaybook.render.RenderException if its words find no room
     */
    LabelDesign drawnBy(LabelForm drawing) {
        return new LabelDesign(
                id,
                reason,
                spot,
                place,
                reading,
                word,
                signs,
                title,
                parts,
                bundles,
                apart,
                drawing,
                drawing.draw(this));
    }

    /** The same once nothing is drawn from it any more: designs that say and show the same are then equal. */
    LabelDesign done() {
        List<LabelDesign> alone = apart.stream().map(LabelDesign::done).toList();
        return new LabelDesign(
                id, reason, spot, place, reading, word, signs, title, parts, bundles, alone, /* form= */ null, drawn);
    }

    LabelNote note() {
        String size = drawn == null ? "" : drawn.width() + " x " + drawn.height();
        String content = List.of(reading, String.valueOf(word), signs, title, parts, size)
                .toString();
        return new LabelNote(id, title.replace("\n", " / "), reason, spot, place, content);
    }
}
