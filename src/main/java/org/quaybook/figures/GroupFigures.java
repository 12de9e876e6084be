package org.quaybook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.figures.ApplianceFigures.Verdict;
import org.quaybook.job.Given;
import org.quaybook.job.Together;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.TimeSpan;

/**
 * Appliances that the owner wants to run at the same time.
 *
 * @param group the wish of the job
 * @param members two or more, in the job's order
 * @param verdict whether they can run together, the one with the largest step from start to running starting last
 * @param power their input while all of them work
 * @param average their mean input
 * @param startPower their input while that one starts
 * @param load what the inverter then takes from the bank
 * @param startLoad what it takes during that start
 * @param running how they run the bank down; all of them work at once for so much of the time that the mean is right, so
 *     that the voltage is judged at the peak
 */
public record GroupFigures(
        Together group,
        String key,
        List<ApplianceFigures> members,
        Verdict verdict,
        Figure<Power> power,
        Figure<Power> average,
        Figure<Power> startPower,
        Figure<Power> load,
        Figure<Power> startLoad,
        RunningFigures running) {

    public GroupFigures {
        members = List.copyOf(members);
    }

    /** Whether they run together on the bank as it is. */
    public boolean runs() {
        return verdict.runs();
    }

    /** The names of its members. */
    public List<String> names() {
        return members.stream().map(member -> member.appliance().name()).toList();
    }

    /** A figure for each group of two or more, numbered in the job's order. */
    static List<GroupFigures> of(RunSystem system, List<ApplianceFigures> appliances) {
        List<GroupFigures> groups = new ArrayList<>();
        for (Together group : system.job().together()) {
            List<ApplianceFigures> members = group.appliances().stream()
                    .distinct()
                    .flatMap(name -> appliances.stream()
                            .filter(it -> it.appliance().name().equals(name)))
                    .toList();
            if (members.size() > 1) {
                groups.add(group(system, group, members, "together." + (groups.size() + 1)));
            }
        }
        return List.copyOf(groups);
    }

    /**
     * What a wished time is judged by, and what somebody depends on: that appliance or group with all that stays on beside
     * it. None where nothing else stays on.
     */
    static List<GroupFigures> withLeftOn(
            RunSystem system, List<ApplianceFigures> appliances, List<GroupFigures> groups) {
        List<GroupFigures> all = new ArrayList<>();
        for (ApplianceFigures it : appliances) {
            if (it.appliance().isReliedOn() || it.appliance().wishedTime() != null) {
                withLeftOn(
                                system,
                                List.of(it),
                                appliances,
                                it.appliance().wishedTime(),
                                it.appliance().place(),
                                withLeftOn(it.key()))
                        .ifPresent(all::add);
            }
        }
        for (GroupFigures it : groups) {
            if (it.group().wishedTime() != null) {
                withLeftOn(
                                system,
                                it.members(),
                                appliances,
                                it.group().wishedTime(),
                                it.group().place(),
                                withLeftOn(it.key()))
                        .ifPresent(all::add);
            }
        }
        return all;
    }

    /** The key of what stays on beside the appliance or the group of a key. */
    static String withLeftOn(String key) {
        return "together." + key.replace('.', '-') + "-and-left-on";
    }

    private static Optional<GroupFigures> withLeftOn(
            RunSystem system,
            List<ApplianceFigures> of,
            List<ApplianceFigures> appliances,
            @Nullable Given<TimeSpan> wished,
            Place place,
            String key) {
        List<ApplianceFigures> members = Stream.concat(
                        of.stream(),
                        appliances.stream()
                                .filter(it -> Given.isYes(it.appliance().leftOn()))
                                .filter(it ->
                                        of.stream().noneMatch(one -> one.key().equals(it.key()))))
                .toList();
        if (members.size() == of.size()) {
            return Optional.empty();
        }
        List<String> names = members.stream().map(it -> it.appliance().name()).toList();
        return Optional.of(group(system, new Together(names, wished, place), members, key));
    }

    private static GroupFigures group(RunSystem system, Together group, List<ApplianceFigures> members, String key) {
        FigureBook book = system.book();
        Figure<Power> power = sum(key + ".power", members.stream().map(ApplianceFigures::power), book);
        Figure<Power> average = sum(key + ".average", members.stream().map(ApplianceFigures::average), book);
        Figure<Power> start = start(key + ".start-power", members, power, book);
        Figure<Power> load = system.inverter().load(key + ".load", power, book);
        Figure<Power> startLoad = system.inverter().load(key + ".start-load", start, book);
        Ratio duty = new Ratio(Math.min(1, average.value().ratioTo(power.value())));
        LoadReckoning reckoning = new LoadReckoning(
                system,
                new LoadReckoning.Load(
                        key,
                        power,
                        start,
                        load,
                        startLoad,
                        system.inverter().cutOut(),
                        duty,
                        false,
                        Input.of("P_mean", average),
                        members.stream()
                                .map(it -> system.powerSpread(it.appliance()))
                                .reduce(RunSystem::larger)
                                .orElseThrow(),
                        members.stream()
                                .flatMap(it -> system.dutySpread(it.appliance()).stream())
                                .reduce(RunSystem::larger),
                        group.wishedTime()));
        return new GroupFigures(
                group, key, members, reckoning.verdict(), power, average, start, load, startLoad, reckoning.figures());
    }

    private static Figure<Power> sum(String key, Stream<Figure<Power>> powers, FigureBook book) {
        List<Figure<Power>> all = powers.toList();
        return book.enter(
                key,
                all.stream().map(Figure::value).reduce(new Power(0), Power::plus),
                Rounding.UP,
                Formula.SUM,
                all.stream().map(one -> Input.of("P", one)).toList());
    }

    private static Figure<Power> start(
            String key, List<ApplianceFigures> members, Figure<Power> power, FigureBook book) {
        ApplianceFigures last =
                members.stream().max((a, b) -> step(a).compareTo(step(b))).orElseThrow();
        return book.enter(
                key,
                power.value().plus(step(last)),
                Rounding.UP,
                Formula.START_LAST,
                Input.of("P", power),
                Input.of("P_s", last.startPower()),
                Input.of("P_r", last.power()));
    }

    private static Power step(ApplianceFigures it) {
        return it.startPower().value().minus(it.power().value());
    }
}
