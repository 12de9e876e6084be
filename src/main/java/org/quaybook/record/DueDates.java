package org.quaybook.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.quaybook.job.Expiry;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Rcd;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.proof.Digest;
import org.quaybook.render.CalendarFile;
import org.quaybook.text.Words;

/**
 * What falls due and when: what the job says runs out, and of the guide's care what somebody has to remember. How often is
 * the care calendar's (common practice, no source).
 */
public final class DueDates {

    private static final int MONTH = 1;
    private static final int HALF_YEAR = 6;
    private static final int YEAR = 12;

    /** Whoever reads these stands before the joints. New joints settle: the second look is due early. */
    private static final Set<TestKind> OF_JOINTS =
            Set.of(TestKind.VOLTAGE_DROP, TestKind.JOINT_DROP, TestKind.JOINT_TEMPERATURE);

    /** Hexadecimal digits that tell one text from another. */
    private static final int ID_LENGTH = 12;

    private DueDates() {}

    /**
     * Something due.
     *
     * @param id the same in every language and revision, of one job alone
     * @param first when, or when first
     * @param months after how many months again; 0 for once
     */
    public record Due(String id, LocalDate first, int months, String what) {}

    /**
     * What falls due, soonest first.
     *
     * @param first the same job in its first language, which makes the ids
     */
    public static List<Due> of(Edition edition, Edition first) {
        List<Due> dues = new ArrayList<>(expiries(edition, first));
        dues.addAll(care(edition));
        return dues.stream().sorted(Comparator.comparing(Due::first)).toList();
    }

    private static List<Due> expiries(Edition edition, Edition first) {
        List<Expiry> shown = edition.assessment().job().expiries();
        List<Expiry> original = first.assessment().job().expiries();
        Set<String> ids = new HashSet<>();
        List<Due> dues = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            String plain = "due-" + Digest.of(original.get(i).what()).substring(0, ID_LENGTH);
            String id = plain;
            for (int again = 2; !ids.add(id); again++) {
                id = plain + "-" + again;
            }
            dues.add(new Due(id, shown.get(i).on(), 0, shown.get(i).what()));
        }
        return dues;
    }

    private static List<Due> care(Edition edition) {
        Job job = edition.assessment().job();
        Words words = edition.words();
        LocalDate issued = job.job().date();
        List<String> rcds = job.rcds().stream().map(Rcd::id).toList();
        List<Due> dues = new ArrayList<>();
        if (!rcds.isEmpty()) {
            dues.add(new Due(
                    "rcd-button",
                    last(job, Set.of(TestKind.RCD_BUTTON, TestKind.RCD_TRIP))
                            .orElse(issued)
                            .plusMonths(MONTH),
                    MONTH,
                    words.say("guide.care.month.rcd" + (rcds.size() == 1 ? "" : "s"), rcds)));
            dues.add(new Due(
                    "rcd-trip",
                    last(job, Set.of(TestKind.RCD_TRIP)).orElse(issued).plusMonths(YEAR),
                    YEAR,
                    yearly(words, words.say("guide.care.year.rcd"))));
        }
        dues.add(new Due("alarms", issued.plusMonths(HALF_YEAR), HALF_YEAR, words.say("guide.care.half-year.alarm")));
        dues.add(new Due(
                "joints",
                last(job, OF_JOINTS)
                        .orElse(issued)
                        .plusMonths(dates(job, OF_JOINTS).size() > 1 ? YEAR : HALF_YEAR),
                YEAR,
                yearly(
                        words,
                        Given.maybe(job.bank().torque())
                                .map(torque -> words.say("guide.care.year.joints", torque))
                                .orElseGet(() -> words.say("guide.care.year.joints.any")))));
        return dues;
    }

    /** The work of every year is not the owner's: it says whose. */
    private static String yearly(Words words, String what) {
        return words.say("record.due.row", words.say("guide.care.year"), what);
    }

    /** A revision that tests nothing puts nothing off. */
    private static Optional<LocalDate> last(Job job, Set<TestKind> kinds) {
        return dates(job, kinds).stream().max(LocalDate::compareTo);
    }

    private static Set<LocalDate> dates(Job job, Set<TestKind> kinds) {
        return job.tests().stream()
                .filter(test -> kinds.contains(test.test()))
                .map(TestResult::on)
                .flatMap(Stream::ofNullable)
                .collect(Collectors.toSet());
    }

    /** The same as days for a calendar program, of what anybody may read. */
    public static byte[] calendar(PublicEdition edition, PublicEdition first) {
        Edition it = edition.edition();
        Job job = it.assessment().job();
        Words words = it.words();
        // Calendars are kept on other people's servers.
        RecordLink link = RecordLink.of(it.assessment()).withoutKey();
        String description = words.say("record.title", job.craft().name())
                + ", "
                + words.say(
                        "record.revision",
                        job.job().revision().toString(),
                        words.date(job.job().date()))
                + "\n"
                + words.say("record.foot.local");
        CalendarFile file = new CalendarFile(
                "-//Quaybook//Install record//EN", job.job().date(), job.job().revision(), link.address());
        return file.of(of(it, first.edition()).stream()
                .map(due -> new CalendarFile.Event(
                        link.folder() + "-" + due.id(),
                        due.first(),
                        due.months(),
                        words.say("record.due.row", job.craft().name(), due.what()),
                        description))
                .toList());
    }
}
