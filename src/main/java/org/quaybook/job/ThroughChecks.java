package org.quaybook.job;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;

/** Whether the ways that branches and chargers share with the inverter can be as they are written. */
final class ThroughChecks {

    private final Found found;
    private final Problems problems;
    private final Map<String, Fuse> fuses;

    ThroughChecks(Found found, Problems problems) {
        this.found = found;
        this.problems = problems;
        this.fuses = found.all(Fuse.class).stream()
                .collect(Collectors.toUnmodifiableMap(Fuse::id, Function.identity(), (first, again) -> first));
    }

    void check() {
        for (Fuse fuse : found.all(Fuse.class)) {
            if (hasRole(fuse, FuseRole.STRING) && !fuse.through().isEmpty()) {
                problems.add(at(fuse.place(), 0), Message.of(JobMessage.THROUGH_OF_STRING, fuse.id()));
            }
            named(fuse.through(), fuse.place());
            circle(fuse);
        }
        for (Charging charging : found.all(Charging.class)) {
            named(charging.through(), charging.place());
            twice(charging);
        }
    }

    private void named(List<String> through, Place place) {
        for (int i = 0; i < through.size(); i++) {
            String id = through.get(i);
            if (id.equals(Fuse.AT_BANK) && through.size() > 1) {
                String other = through.get(i == 0 ? 1 : 0);
                problems.add(at(place, i), Message.of(JobMessage.THROUGH_BANK_AND_MORE, other));
            }
            Fuse fuse = fuses.get(id);
            if (fuse != null && hasRole(fuse, FuseRole.STRING)) {
                problems.add(at(place, i), Message.of(JobMessage.THROUGH_STRING, id));
            }
        }
    }

    /** A fuse that is behind itself; told once for each fuse of the circle, at what leads into it. */
    private void circle(Fuse fuse) {
        for (int i = 0; i < fuse.through().size(); i++) {
            String next = fuse.through().get(i);
            if (leadsTo(next, fuse.id())) {
                problems.add(at(fuse.place(), i), Message.of(JobMessage.THROUGH_CIRCLE, fuse.id(), next));
            }
        }
    }

    private boolean leadsTo(String from, String to) {
        Deque<String> open = new ArrayDeque<>(List.of(from));
        Set<String> seen = new HashSet<>();
        while (!open.isEmpty()) {
            String id = open.remove();
            if (id.equals(to)) {
                return true;
            }
            if (seen.add(id)) {
                Optional.ofNullable(fuses.get(id)).map(Fuse::through).ifPresent(open::addAll);
            }
        }
        return false;
    }

    private void twice(Charging charging) {
        String own = charging.fuse();
        Fuse fuse = own == null ? null : fuses.get(own);
        if (fuse == null
                || charging.through().isEmpty()
                || fuse.through().isEmpty()
                || Set.copyOf(charging.through()).equals(Set.copyOf(fuse.through()))) {
            return;
        }
        problems.add(
                at(charging.place(), 0),
                Message.of(
                        JobMessage.THROUGH_TWICE,
                        charging.name() == null ? charging.place().path() : charging.name(),
                        String.join(", ", charging.through()),
                        fuse.id(),
                        String.join(", ", fuse.through())));
    }

    private Place at(Place of, int index) {
        return found.placeOf(of.path() + ".through[" + index + "]");
    }

    private static boolean hasRole(Fuse fuse, FuseRole role) {
        return Given.maybe(fuse.role()).filter(role::equals).isPresent();
    }
}
