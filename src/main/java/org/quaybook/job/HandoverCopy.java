package org.quaybook.job;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A job file as it travels with documents that leave the installer's hands: word for word, but without the sections
 * {@code owner} and {@code accounts}, without the berth and the translations of what went, and with a dash wherever a text
 * repeats what stood there or names who was shown the installation.
 */
public final class HandoverCopy {

    private static final String BLANK = "–";

    private static final List<String> SECTIONS = List.of("owner", "accounts");

    private static final Pattern BERTH = Pattern.compile("(?m)^[ \\t]+berth[ \\t]*:.*(?:\\R|\\z)");

    private static final Pattern LINE = Pattern.compile(".*(?:\\R|\\z)");

    private HandoverCopy() {}

    /**
     * The copy.
     *
     * @param text a job file that was read without an error
     * @param job what was read from it
     * @return empty if the file is written in such a way that the private lines cannot be told from the others
     */
    public static Optional<String> of(String text, Job job, Vocabulary vocabulary) {
        String left = withoutOwnersSide(text, job, List.of(), vocabulary);
        Job copy = JobReader.parse(left, "", vocabulary).job();
        boolean clean = copy != null
                && copy.owner() == null
                && copy.accounts().isEmpty()
                && copy.craft().berth() == null;
        return clean ? Optional.of(left) : Optional.empty();
    }

    /** Another file of the job with a dash for every mention of the owner's side. */
    public static String blanked(String text, Job job) {
        return Mentions.of(ownersSide(job), BLANK).blank(text);
    }

    /**
     * The text without the lines that are the owner's and their translations, and with a dash for every mention.
     *
     * @param more sections that go as well
     */
    static String withoutOwnersSide(String text, Job job, List<String> more, Vocabulary vocabulary) {
        String sections = Stream.concat(SECTIONS.stream(), more.stream()).collect(Collectors.joining("|"));
        String left = section(sections).matcher(text).replaceAll("");
        left = BERTH.matcher(left).replaceAll("");
        left = withoutStaleTranslations(left, vocabulary);
        return blanked(left, job);
    }

    /** The other half of such a line is the text that went, in another language. */
    private static String withoutStaleTranslations(String text, Vocabulary vocabulary) {
        Set<Integer> stale = new HashSet<>();
        JobReader.parse(text, "", vocabulary).problems().stream()
                .filter(problem -> problem.message().key() == JobMessage.TEXT_NOT_IN_JOB)
                .forEach(problem -> stale.add(problem.place().position().line()));
        StringBuilder left = new StringBuilder();
        Matcher lines = LINE.matcher(text);
        for (int number = 0; lines.find(); number++) {
            if (!stale.contains(number) || !lines.group().strip().startsWith("- ")) {
                left.append(lines.group());
            }
        }
        return left.toString();
    }

    /** A section of the file with the lines indented below it or listed in it; comments before the next one stay. */
    private static Pattern section(String names) {
        return Pattern.compile("(?m)^(?:" + names
                + ")[ \\t]*:.*(?:\\R|\\z)(?:(?:[ \\t]*(?:#.*)?\\R)*(?:[ \\t]+[^\\s#]|-).*(?:\\R|\\z))*");
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
