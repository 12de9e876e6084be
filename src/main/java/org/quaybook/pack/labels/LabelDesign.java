package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.render.Label;

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
        List<LabelDesign> apart,
        @Nullable LabelForm form,
        @Nullable Label drawn) {

    LabelDesign {
        apart = List.copyOf(apart);
        signs = List.copyOf(signs);
        parts = List.copyOf(parts);
        if (word == SignalWord.NOTICE && !signs.isEmpty()) {
            throw new IllegalArgumentException("label " + id + ": no safety sign where nobody can be hurt");
        }
    }

    static LabelDesign of(
            String id, LabelReason reason, LabelSpot spot, String place, LabelReading reading, String title) {
        return new LabelDesign(
                id, reason, spot, place, reading, null, List.of(), title, List.of(), List.of(), null, null);
    }

    /** The same with a signal word and signs. */
    LabelDesign warning(SignalWord signal, Sign... shown) {
        return new LabelDesign(
                id, reason, spot, place, reading, signal, List.of(shown), title, parts, apart, form, drawn);
    }

    /** The same with more below. */
    LabelDesign with(LabelPart... more) {
        return with(List.of(more));
    }

    /** The same with more below. */
    LabelDesign with(List<LabelPart> more) {
        List<LabelPart> all = new ArrayList<>(parts);
        all.addAll(more);
        return new LabelDesign(id, reason, spot, place, reading, word, signs, title, all, apart, form, drawn);
    }

    /**
     * The same in one of two languages that do not fit on one label together.
     *
     * @param where the place, in the language of the sheets
     */
    LabelDesign of(String language, String where) {
        LabelDesign alone = new LabelDesign(
                id + "-" + language, reason, spot, where, reading, word, signs, title, parts, List.of(), null, null);
        return form == null ? alone : alone.drawnBy(form);
    }

    /**
     * The same, drawn already.
     *
     * @throws org.quaybook.render.RenderException if its words find no room
     */
    LabelDesign drawnBy(LabelForm drawing) {
        return new LabelDesign(
                id, reason, spot, place, reading, word, signs, title, parts, apart, drawing, drawing.draw(this));
    }

    /** The same once nothing is drawn from it any more: designs that say and show the same are then equal. */
    LabelDesign done() {
        List<LabelDesign> alone = apart.stream().map(LabelDesign::done).toList();
        return new LabelDesign(
                id, reason, spot, place, reading, word, signs, title, parts, alone, /* form= */ null, drawn);
    }

    LabelNote note() {
        String size = drawn == null ? "" : drawn.width() + " x " + drawn.height();
        String content = List.of(reading, String.valueOf(word), signs, title, parts, size)
                .toString();
        return new LabelNote(id, title.replace("\n", " / "), reason, spot, place, content);
    }
}
