package org.quaybook.record;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.job.Job;
import org.quaybook.job.Mentions;
import org.quaybook.job.Owner;

/** Blanks the owner's name where a free text of the job repeats it, on papers that name who worked and tested. */
public final class Discretion {

    /** The installer chose to publish these; a name in them is a trade name. */
    private static final String TRADE_DETAILS = "installer";

    private final Mentions mentions;

    private Discretion(Mentions mentions) {
        this.mentions = mentions;
    }

    /**
     * About the owner alone.
     *
     * @param blank what stands in the place of a name
     */
    public static Discretion ofOwner(Assessment it, String blank) {
        return new Discretion(Mentions.of(owner(it.job()), blank));
    }

    private static Stream<@Nullable String> owner(Job job) {
        Owner owner = job.owner();
        return Stream.concat(
                owner == null
                        ? Stream.<@Nullable String>of()
                        : Stream.<@Nullable String>of(owner.name(), owner.phone(), owner.email()),
                Stream.<@Nullable String>of(
                        job.craft().berth(),
                        job.rehearsal() == null ? null : job.rehearsal().with()));
    }

    /** The same facts without mentions. */
    public Map<String, Object> blank(Map<String, Object> facts) {
        Map<String, Object> left = new LinkedHashMap<>();
        facts.forEach((subject, value) -> left.put(subject, subject.equals(TRADE_DETAILS) ? value : blank(value)));
        return left;
    }

    private Object blank(Object value) {
        if (value instanceof String text) {
            return mentions.blank(text);
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
