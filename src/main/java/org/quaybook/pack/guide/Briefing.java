package org.quaybook.pack.guide;

import org.quaybook.checks.Assessment;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.job.Job;
import org.quaybook.text.Words;

/**
 * All that the composer of a chapter needs to know.
 *
 * @param it the job, its figures and findings
 * @param has what the installation has
 * @param names how its parts are called
 * @param words the reader's language
 */
record Briefing(Assessment it, Equipment has, PartNames names, Words words) {

    static Briefing of(Assessment it, Words words) {
        Equipment has = new Equipment(it);
        return new Briefing(it, has, new PartNames(it.job(), has, words), words);
    }

    Job job() {
        return it.job();
    }

    Figures figures() {
        return it.figures();
    }

    String say(Figure<?> figure) {
        return words.word(figure.stated());
    }

    /** @param chapter first part of the keys */
    Lines lines(String chapter) {
        return new Lines(words, "guide." + chapter + ".");
    }
}
