package org.quaybook.serve;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;

/**
 * What a request makes its answer depend on (RFC 9110, 13).
 *
 * @param tag strong validator of the selected representation
 * @param modified when it was last modified, whole seconds
 * @param now when it is asked
 */
record Conditions(HttpFields asked, String tag, Instant modified, Instant now) {

    /** What the conditions come to. */
    enum Verdict {
        HOLD,
        /** The asker has it already. */
        NOT_MODIFIED,
        /** The asker wants another one. */
        FAILED
    }

    private static final Pattern TAG = Pattern.compile("(?:W/)?\"[^\"]*\"");

    /** In the order of RFC 9110, 13.2.2. */
    Verdict verdict() {
        if (asked.contains(HttpHeader.IF_MATCH)) {
            if (!lists(HttpHeader.IF_MATCH, false)) {
                return Verdict.FAILED;
            }
        } else if (date(HttpHeader.IF_UNMODIFIED_SINCE)
                .filter(modified::isAfter)
                .isPresent()) {
            return Verdict.FAILED;
        }
        boolean had = asked.contains(HttpHeader.IF_NONE_MATCH)
                ? lists(HttpHeader.IF_NONE_MATCH, true)
                : date(HttpHeader.IF_MODIFIED_SINCE)
                        .filter(since -> !modified.isAfter(since))
                        .isPresent();
        return had ? Verdict.NOT_MODIFIED : Verdict.HOLD;
    }

    /** Whether a part may be sent, which has to go with the part that the asker has (RFC 9110, 13.1.5). */
    boolean allowPart() {
        List<String> values = asked.getValuesList(HttpHeader.IF_RANGE);
        if (values.isEmpty()) {
            return true;
        }
        if (values.size() != 1) {
            return false;
        }
        // A date is as good as a tag only if nothing can have changed within its second (RFC 9110, 8.8.2.2).
        boolean sure = modified.isBefore(now.minus(1, ChronoUnit.SECONDS));
        return values.get(0).equals(tag)
                || (sure && date(HttpHeader.IF_RANGE).filter(modified::equals).isPresent());
    }

    /** Whether a field lists the tag, by weak or by strong comparison (RFC 9110, 8.8.3.2). */
    private boolean lists(HttpHeader field, boolean weak) {
        List<String> values = asked.getValuesList(field);
        if (values.equals(List.of("*"))) {
            return true;
        }
        return TAG.matcher(String.join(",", values))
                .results()
                .map(MatchResult::group)
                .anyMatch(listed -> listed.equals(tag) || (weak && listed.equals("W/" + tag)));
    }

    private Optional<Instant> date(HttpHeader field) {
        List<String> values = asked.getValuesList(field);
        return values.size() == 1 ? HttpDate.read(values.get(0), now) : Optional.empty();
    }
}
