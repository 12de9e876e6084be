package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Properties;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every message has its sentence in every language, with as many places as arguments are given to it. */
class JobWordsTest {

    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");
    private static final Pattern KEY_LINE = Pattern.compile("^\\d+:\\d+ |^ +");

    @Test
    void everyLanguageHasASentenceForEveryMessage() throws IOException {
        for (Properties words : languages()) {
            // What is said of one belongs to the message about several.
            assertThat(words.stringPropertyNames().stream().filter(key -> !key.endsWith(".singular")))
                    .containsExactlyInAnyOrderElementsOf(Arrays.stream(JobMessage.values())
                            .map(JobMessage::key)
                            .collect(Collectors.toSet()));
        }
    }

    /** The expectations of the bad jobs show every message with its arguments. */
    @Test
    void sentencesUseAllTheirArguments() throws IOException {
        Properties english = words(Path.of("templates/words/en-GB"));
        for (String[] message : expectedMessages()) {
            String sentence = english.getProperty(message[0]);
            assertThat(PLACE.matcher(sentence).results().map(it -> it.group(1)).distinct())
                    .as("places of %s", message[0])
                    .hasSize(message.length - 1)
                    .allMatch(place -> Integer.parseInt(place) < message.length - 1);
        }
    }

    @Test
    void everyMessageIsRaisedBySomeBadJob() throws IOException {
        assertThat(expectedMessages().stream().map(message -> message[0]).collect(Collectors.toSet()))
                .containsAll(Arrays.stream(JobMessage.values())
                        .filter(message -> !raisedElsewhere(message))
                        .map(JobMessage::key)
                        .toList());
    }

    /** The languages translate the same places. */
    @Test
    void languagesUseTheSamePlaces() throws IOException {
        Properties english = words(Path.of("templates/words/en-GB"));
        for (Properties other : languages()) {
            for (String key : english.stringPropertyNames()) {
                assertThat(places(other, key)).as(key).isEqualTo(places(english, key));
            }
        }
    }

    /** Parts of sentences stand inside others; files and records of their own are tested with the reader. */
    private static boolean raisedElsewhere(JobMessage message) {
        return message.name().startsWith("DIMENSION_")
                || message.name().startsWith("STOCK_")
                || (message.name().startsWith("FILE_") && message != JobMessage.FILE_EMPTY)
                || message == JobMessage.WHOLE_FILE
                || message == JobMessage.READINGS_OF_OTHER_JOB
                || message == JobMessage.REFUSED;
    }

    private static java.util.Set<String> places(Properties words, String key) {
        return PLACE.matcher(words.getProperty(key))
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toSet());
    }

    private static java.util.List<String[]> expectedMessages() throws IOException {
        try (Stream<Path> files = Files.list(JobFiles.FOLDER.resolve("bad"))) {
            return files.filter(file -> file.toString().endsWith(".expected"))
                    .flatMap(file -> JobFiles.text(file).lines())
                    .map(line -> KEY_LINE.matcher(line).replaceFirst("").split(" \\| ", -1))
                    .toList();
        }
    }

    private static java.util.List<Properties> languages() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("templates/words"))) {
            return folders.filter(folder -> Files.exists(folder.resolve("job.properties")))
                    .map(JobWordsTest::words)
                    .toList();
        }
    }

    private static Properties words(Path language) {
        Properties words = new Properties();
        try (Reader in = Files.newBufferedReader(language.resolve("job.properties"))) {
            words.load(in);
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
        return words;
    }
}
