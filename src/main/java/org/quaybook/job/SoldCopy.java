package org.quaybook.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A job file as it goes on after a change of owner: word for word and under the same record code, as a later revision, but
 * without the sections {@code owner}, {@code accounts}, {@code policy-conditions} and {@code rehearsal}, without the berth
 * and the translations of what went, and with a dash wherever a text repeats who the former owner was.
 */
public final class SoldCopy {

    private static final Pattern REVISION = inHeader("revision", "\\d+");
    private static final Pattern DATE = inHeader("date", "[0-9-]+");

    private SoldCopy() {}

    /**
     * The service log of a sold job: word for word, with {@link Owner#WORD} where it says that the former owner did something
     * himself, and a dash wherever else it repeats who he was.
     *
     * @param visits the log; empty for none
     */
    public static String ofVisits(String visits, Job job) {
        Owner owner = job.owner();
        String left = owner == null
                ? visits
                : Pattern.compile(
                                "((?:by|firm)[ \\t]*:[ \\t]*)([\"']?)" + Pattern.quote(owner.name())
                                        + "\\2(?=[ \\t]*(?:[,}]|#|\\R|\\z))",
                                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
                        .matcher(visits)
                        .replaceAll("$1" + Owner.WORD);
        return HandoverCopy.blanked(left, job);
    }

    /** A value of the section {@code job}, written a line a key. */
    private static Pattern inHeader(String key, String value) {
        return Pattern.compile(
                "(?m)(^job[ \\t]*:.*\\R(?:(?:[ \\t]+.*|[ \\t]*|#.*)\\R)*?[ \\t]+" + key + "[ \\t]*:[ \\t]*)" + value);
    }

    /**
     * The copy.
     *
     * @param text a job file that was read without an error
     * @param job what was read from it
     * @param revision of the copy
     * @param date of the copy
     * @return empty if the file is written in such a way that these lines cannot be told from the others
     */
    public static Optional<String> of(String text, Job job, int revision, LocalDate date, Vocabulary vocabulary) {
        String left = HandoverCopy.withoutOwnersSide(text, job, List.of("policy-conditions", "rehearsal"), vocabulary);
        left = REVISION.matcher(left).replaceFirst("$1" + revision);
        left = DATE.matcher(left).replaceFirst("$1" + Matcher.quoteReplacement(date.toString()));
        Job copy = JobReader.parse(left, "", vocabulary).job();
        boolean clean = copy != null
                && copy.owner() == null
                && copy.accounts().isEmpty()
                && copy.policyConditions().isEmpty()
                && copy.rehearsal() == null
                && copy.craft().berth() == null
                && copy.job().record().equals(job.job().record())
                && copy.job().revision() == revision
                && copy.job().date().equals(date);
        return clean ? Optional.of(left) : Optional.empty();
    }
}
