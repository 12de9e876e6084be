package org.quaybook.job;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.quaybook.diag.Message;

/** Whether names are given once, and whether what is referred to has been named. */
final class NameChecks {

    private final Found found;
    private final Problems problems;
    private final Vocabulary vocabulary;
    private final List<Found.Name> elsewhere;

    /** @param elsewhere what another file names and this one may refer to */
    NameChecks(Found found, Problems problems, Vocabulary vocabulary, List<Found.Name> elsewhere) {
        this.found = found;
        this.problems = problems;
        this.vocabulary = vocabulary;
        this.elsewhere = List.copyOf(elsewhere);
    }

    void check() {
        repeated();
        found.references().forEach(this::known);
    }

    /** Names that differ only in capitals count as the same: nobody tells tags b1 and B1 apart. */
    private void repeated() {
        List<Found.Name> names = found.names();
        for (int i = 0; i < names.size(); i++) {
            Found.Name name = names.get(i);
            names.subList(0, i).stream()
                    .filter(earlier -> earlier.thing().sharesNamesWith(name.thing()))
                    .filter(earlier -> earlier.text().equalsIgnoreCase(name.text()))
                    .findFirst()
                    .ifPresent(first -> problems.add(
                            name.place(),
                            Message.of(
                                    JobMessage.NAME_REPEATED,
                                    name.text(),
                                    first.place().path(),
                                    first.place().position().line() + 1)));
        }
    }

    private void known(Found.Reference reference) {
        List<String> allowed = Stream.concat(
                        Arrays.stream(reference.to().value()).flatMap(this::names),
                        Arrays.stream(reference.to().words()))
                .distinct()
                .toList();
        if (!allowed.contains(reference.text())) {
            List<Message> hints = new ArrayList<>(Scalars.meant(reference.text(), allowed));
            hints.add(
                    allowed.isEmpty()
                            ? Message.of(JobMessage.NOTHING_NAMED)
                            : Message.of(JobMessage.ALLOWED, String.join(", ", allowed)));
            problems.add(reference.place(), Message.of(JobMessage.NAME_UNKNOWN, reference.text()), hints);
        }
    }

    private Stream<String> names(Thing thing) {
        return switch (thing) {
            case RULEBOOK -> vocabulary.rulebooks().stream();
            case LANGUAGE -> vocabulary.languages().stream();
            default ->
                Stream.concat(elsewhere.stream(), found.names().stream())
                        .filter(name -> name.thing() == thing)
                        .map(Found.Name::text);
        };
    }
}
