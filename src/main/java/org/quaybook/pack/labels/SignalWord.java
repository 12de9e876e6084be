package org.quaybook.pack.labels;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import org.quaybook.render.Colour;
import org.quaybook.render.Face;

/**
 * How grave a hazard is, gravest first, with the panel of its word (ANSI Z535.4, seen; ISO 3864-2, seen second-hand).
 */
enum SignalWord {
    /** Will kill or seriously injure if not avoided. */
    DANGER("alert-danger"),
    /** Could kill or seriously injure. */
    WARNING("alert-warning"),
    /** Could injure slightly. */
    CAUTION("alert-caution"),
    /** Property only: no alert triangle. */
    NOTICE("");

    private final String alert;

    SignalWord(String alert) {
        this.alert = alert;
    }

    /** Key of the word: each language has one fixed word for each grade, never a free translation. */
    String key() {
        return "labels.word." + name().toLowerCase(Locale.ROOT);
    }

    Colour panel() {
        return switch (this) {
            case DANGER -> SignColours.RED;
            case WARNING -> SignColours.ORANGE;
            case CAUTION -> SignColours.YELLOW;
            case NOTICE -> SignColours.BLUE;
        };
    }

    /** Bold; NOTICE also in italics where the rulebook asks for that. */
    Face face(boolean noticeInItalics) {
        return this == NOTICE && noticeInItalics ? Face.BOLD_ITALIC : Face.BOLD;
    }

    Colour letters() {
        return this == DANGER || this == NOTICE ? Colour.WHITE : Colour.BLACK;
    }

    /** The alert triangle before the word, as SVG; empty where no person can be hurt. */
    Optional<String> alert() {
        return alert.isEmpty() ? Optional.empty() : Optional.of(Sign.drawing(alert));
    }

    /**
     * The word of a label that tells of several hazards: the gravest rules (ANSI Z535.4, seen).
     *
     * @throws IllegalArgumentException if there is none
     */
    static SignalWord gravest(Collection<SignalWord> words) {
        return words.stream().min(SignalWord::compareTo).orElseThrow(() -> new IllegalArgumentException("no hazard"));
    }
}
