package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

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
        List<LabelPart> parts) {

    LabelDesign {
        signs = List.copyOf(signs);
        parts = List.copyOf(parts);
        if (word == SignalWord.NOTICE && !signs.isEmpty()) {
            throw new IllegalArgumentException("label " + id + ": no safety sign where nobody can be hurt");
        }
    }

    static LabelDesign of(
            String id, LabelReason reason, LabelSpot spot, String place, LabelReading reading, String title) {
        return new LabelDesign(id, reason, spot, place, reading, null, List.of(), title, List.of());
    }

    /** The same with a signal word and signs. */
    LabelDesign warning(SignalWord signal, Sign... shown) {
        return new LabelDesign(id, reason, spot, place, reading, signal, List.of(shown), title, parts);
    }

    /** The same with more below. */
    LabelDesign with(LabelPart... more) {
        return with(List.of(more));
    }

    /** The same with more below. */
    LabelDesign with(List<LabelPart> more) {
        List<LabelPart> all = new ArrayList<>(parts);
        all.addAll(more);
        return new LabelDesign(id, reason, spot, place, reading, word, signs, title, all);
    }

    LabelNote note() {
        return new LabelNote(id, title, reason, spot, place);
    }
}
