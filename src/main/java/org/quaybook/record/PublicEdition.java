package org.quaybook.record;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.Figures;
import org.quaybook.job.Installer;
import org.quaybook.job.Job;
import org.quaybook.job.Owner;
import org.quaybook.text.Words;

/**
 * A job in one language as anybody may read it. There is no way to make one that knows the owner, the berth, accounts,
 * insurance or the name of anyone who worked or tested: whoever is given one can publish whatever it holds.
 */
public final class PublicEdition {

    private final Edition edition;

    private PublicEdition(Edition edition) {
        this.edition = edition;
    }

    /** Takes out whatever says who somebody is; a firm or the owner's part stands where it says enough. */
    public static PublicEdition of(Edition edition) {
        Assessment it = edition.assessment();
        Words words = edition.words();
        Job job = it.job()
                .withoutPeople(
                        Stream.ofNullable(it.installer().contact()).toList(), role(it), words.say("record.blanked"));
        Installer installer = it.installer().withoutPeople();
        Figures figures = Objects.requireNonNull(
                Figures.of(job, it.tables()).figures(), "what is calculated does not hang on a name");
        return new PublicEdition(new Edition(Assessment.of(job, installer, figures, it.tables()), words));
    }

    private static Function<String, Optional<String>> role(Assessment it) {
        Owner owner = it.job().owner();
        return name -> {
            if (name.equals(Owner.WORD)) {
                return Optional.of(name);
            }
            if (owner != null && name.equalsIgnoreCase(owner.name())) {
                return Optional.of(Owner.WORD);
            }
            boolean ours =
                    Stream.of(it.job().job().fitter(), it.installer().contact()).anyMatch(name::equalsIgnoreCase);
            return ours ? Optional.of(it.installer().firm()) : Optional.empty();
        };
    }

    /** The job and its words, for documents that are published. */
    public Edition edition() {
        return edition;
    }

    /** Tag of its language. */
    public String language() {
        return edition.words().language();
    }
}
