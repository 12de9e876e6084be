package org.quaybook.record;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.job.Deviation;
import org.quaybook.job.Job;
import org.quaybook.job.Owner;
import org.quaybook.job.Setting;
import org.quaybook.job.TestResult;

/**
 * Blanks names where a free text of the job repeats them. A net, for the record below the list of {@link Published}: it
 * knows the names as they are written in the job's own fields, not every way to write them.
 */
public final class Discretion {

    /** A shorter text is no name: blanking berth "7" would blank every 7. */
    private static final int SHORTEST = 4;

    /** The installer chose to publish these; a name in them is a trade name. */
    private static final String TRADE_DETAILS = "installer";

    private final List<Pattern> mentions;
    private final String blank;

    private Discretion(Stream<@Nullable String> names, String blank) {
        this.blank = Matcher.quoteReplacement(blank);
        this.mentions = names.filter(Objects::nonNull)
                .map(String::strip)
                .filter(name -> name.codePointCount(0, name.length()) >= SHORTEST)
                .distinct()
                .sorted(Comparator.comparing(String::length).reversed())
                .map(Discretion::mention)
                .toList();
    }

    /**
     * About the owner and everyone who worked or tested: for what anybody may read.
     *
     * @param blank what stands in the place of a name
     */
    public static Discretion ofAll(Assessment it, String blank) {
        return new Discretion(
                Stream.of(owner(it.job()), trade(it), hands(it.job())).flatMap(names -> names), blank);
    }

    /**
     * About the owner alone: for papers that name who worked and tested.
     *
     * @param blank what stands in the place of a name
     */
    public static Discretion ofOwner(Assessment it, String blank) {
        return new Discretion(owner(it.job()), blank);
    }

    private static Stream<@Nullable String> owner(Job job) {
        Owner owner = job.owner();
        return Stream.concat(
                owner == null ? Stream.of() : Stream.of(owner.name(), owner.phone(), owner.email()),
                Stream.of(
                        job.craft().berth(),
                        job.rehearsal() == null ? null : job.rehearsal().with()));
    }

    private static Stream<@Nullable String> trade(Assessment it) {
        return Stream.of(it.job().job().fitter(), it.installer().contact());
    }

    private static Stream<@Nullable String> hands(Job job) {
        return Stream.of(
                        job.tests().stream().map(TestResult::by),
                        job.settings().stream().map(Setting::by),
                        job.deviations().stream().map(Deviation::by))
                .flatMap(names -> names);
    }

    private static Pattern mention(String name) {
        return Pattern.compile(
                "(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** The same facts without mentions. */
    public Map<String, Object> blank(Map<String, Object> facts) {
        Map<String, Object> left = new LinkedHashMap<>();
        facts.forEach((subject, value) -> left.put(subject, subject.equals(TRADE_DETAILS) ? value : blank(value)));
        return left;
    }

    private Object blank(Object value) {
        if (value instanceof String text) {
            String left = text;
            for (Pattern mention : mentions) {
                left = mention.matcher(left).replaceAll(blank);
            }
            return left;
        }
        if (value instanceof List<?> list) {
            return list.stream().map(this::blank).toList();
        }
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> left = new LinkedHashMap<>();
            map.forEach((name, fact) -> left.put(name, blank(fact)));
            return left;
        }
        return value;
    }
}
