package org.quaybook.job;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A job file as it travels with documents that leave the installer's hands: word for word, but without the sections
 * {@code owner} and {@code accounts} and without the berth, and with a dash wherever a text repeats what stood there or
 * names who was shown the installation.
 */
public final class HandoverCopy {

    /** A shorter text is no name: blanking berth "7" would blank every 7. */
    private static final int SHORTEST = 4;

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
        for (Pattern mention : mentions(job)) {
            left = mention.matcher(left).replaceAll(Matcher.quoteReplacement(BLANK));
        }
        Job copy = JobReader.parse(left, "", vocabulary).job();
        boolean clean = copy != null
                && copy.owner() == null
                && copy.accounts().isEmpty()
                && copy.craft().berth() == null;
        return clean ? Optional.of(left) : Optional.empty();
    }

    private static List<Pattern> mentions(Job job) {
        Owner owner = job.owner();
        Rehearsal rehearsal = job.rehearsal();
        return Stream.of(
                        owner == null ? Stream.<String>of() : Stream.of(owner.name(), owner.phone(), owner.email()),
                        rehearsal == null ? Stream.<String>of() : Stream.of(rehearsal.with()),
                        Stream.of(job.craft().berth()),
                        job.accounts().stream().map(Account::holder))
                .flatMap(names -> names)
                .filter(Objects::nonNull)
                .map(String::strip)
                .filter(mention -> mention.codePointCount(0, mention.length()) >= SHORTEST)
                .distinct()
                .map(HandoverCopy::mention)
                .toList();
    }

    private static Pattern mention(String name) {
        return Pattern.compile(
                "(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }
}
