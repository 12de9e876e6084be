package org.quaybook.job;

import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A job file as it travels with documents that leave the installer's hands: word for word, but without the sections
 * {@code owner} and {@code accounts} and without the berth, and with a dash wherever a text repeats what stood there or
 * names who was shown the installation.
 */
public final class HandoverCopy {

    private static final String BLANK = "–";

    /** A section of the file with the lines indented below it or listed in it; comments before the next one stay. */
    private static final Pattern SECTIONS = Pattern.compile(
            "(?m)^(?:owner|accounts)[ \\t]*:.*(?:\\R|\\z)(?:(?:[ \\t]*(?:#.*)?\\R)*(?:[ \\t]+[^\\s#]|-).*(?:\\R|\\z))*");

    private static final Pattern BERTH = Pattern.compile("(?m)^[ \\t]+berth[ \\t]*:.*(?:\\R|\\z)");

    private HandoverCopy() {}

    /**
     * The copy.
     *
     * @param text a job file that was read without an error
     * @param job what was read from it
     * @return empty if the file is written in such a way that the private lines cannot be told from the others
     */
    public static Optional<String> of(String text, Job job, Vocabulary vocabulary) {
        String left = BERTH.matcher(SECTIONS.matcher(text).replaceAll("")).replaceAll("");
        left = Mentions.of(ownersSide(job), BLANK).blank(left);
        Job copy = JobReader.parse(left, "", vocabulary).job();
        boolean clean = copy != null
                && copy.owner() == null
                && copy.accounts().isEmpty()
                && copy.craft().berth() == null;
        return clean ? Optional.of(left) : Optional.empty();
    }

    /** Who did the work and who tested stays: the copy goes with documents that name them. */
    private static Stream<@Nullable String> ownersSide(Job job) {
        Owner owner = job.owner();
        Rehearsal rehearsal = job.rehearsal();
        return Stream.of(
                        owner == null
                                ? Stream.<@Nullable String>of()
                                : Stream.<@Nullable String>of(owner.name(), owner.phone(), owner.email()),
                        Stream.<@Nullable String>of(
                                rehearsal == null ? null : rehearsal.with(),
                                job.craft().berth()),
                        job.accounts().stream().<@Nullable String>map(Account::holder))
                .flatMap(names -> names);
    }
}
