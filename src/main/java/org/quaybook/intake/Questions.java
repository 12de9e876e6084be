package org.quaybook.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.quaybook.job.BreakerCurve;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Chemistry;
import org.quaybook.job.CraftKind;
import org.quaybook.job.FuseFamily;
import org.quaybook.job.LoadKind;
import org.quaybook.job.NeutralBond;
import org.quaybook.job.Route;
import org.quaybook.job.TakeOff;
import org.quaybook.job.WhenShoreFails;
import org.quaybook.quantity.Kind;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Appliances;
import org.quaybook.reference.Batteries;
import org.quaybook.reference.Battery;
import org.quaybook.reference.Inverters;
import org.quaybook.reference.NotInTable;
import org.quaybook.reference.Rulebook;
import org.quaybook.reference.TypicalAppliance;

/** The questions in the order of a survey: who, what, battery, inverter, cables, mains, charging, loads. */
public final class Questions {

    /** More entries of a list than this are written into the file by hand. */
    private static final int MOST_ENTRIES = 40;

    private static final int LEAST_LETTERS = 5;

    /** Answered when an installer profile lies beside the new file already. */
    public static final String INSTALLER_THERE = "installer.there";

    private static final Pattern WITH_UNIT = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,9})?) *([^ (]+).*");

    private Questions() {}

    /**
     * The next question that is asked and not yet answered.
     *
     * @param wanted which questions count
     * @return empty if all are answered
     */
    static Optional<Question> next(Answers answers, Predicate<Question> wanted) {
        return all(answers).stream()
                .filter(wanted)
                .filter(question -> question.asked().test(answers))
                .filter(question -> !answers.answered(question.path()))
                .findFirst();
    }

    /** All questions that the answers so far lead to. */
    private static List<Question> all(Answers answers) {
        List<Question> questions = new ArrayList<>();
        questions.addAll(who());
        questions.addAll(firm());
        questions.addAll(bank());
        questions.addAll(inverter());
        questions.addAll(directCurrent());
        questions.addAll(mains(answers));
        questions.addAll(charging(answers));
        questions.addAll(appliances(answers));
        return List.copyOf(questions);
    }

    private static List<Question> who() {
        return List.of(
                Question.of("job.number", "number"),
                Question.of("craft.name", "craft"),
                Question.of("craft.kind", "kind")
                        .among(names(CraftKind.values()))
                        .usually("boat"),
                Question.of("craft.type", "type").mayBeLeftOut(),
                Question.of("job.rulebook", "rulebook").among(Rulebook.names()).usually(Questions::rulebook),
                Question.of("job.fitter", "fitter").mayBeLeftOut(),
                Question.of("owner.name", "owner").mayBeLeftOut());
    }

    /** Asked once: the next job finds the profile beside it. */
    private static List<Question> firm() {
        return List.of(
                Question.of("installer.firm", "firm").when(answers -> !answers.answered(INSTALLER_THERE)),
                Question.of("installer.phone", "phone")
                        .mayBeLeftOut()
                        .when(answers -> !answers.answered(INSTALLER_THERE)),
                Question.of("installer.records", "records").when(answers -> !answers.answered(INSTALLER_THERE)));
    }

    private static Optional<String> rulebook(Answers answers) {
        return Optional.of(
                switch (answers.of("craft.kind").orElse("boat")) {
                    case "motorhome" -> "caravan";
                    case "cabin" -> "cabin";
                    default -> "iso-13297";
                });
    }

    private static List<Question> bank() {
        return List.of(
                Question.of("bank.chemistry", "chemistry").among(names(Chemistry.values())),
                Question.of("bank.block.voltage", "block-voltage").usually(Questions::blockVoltage),
                Question.of("bank.block.capacity", "block-capacity"),
                Question.of("bank.series", "series").usually("1"),
                Question.of("bank.parallel", "parallel").usually("1"),
                Question.of("bank.take-off", "take-off")
                        .among(names(TakeOff.values()))
                        .when(answers -> !answers.is("bank.parallel", "1")),
                Question.of("bank.temperature", "temperature").usually("5 °C"),
                Question.of("bank.reserve", "reserve").usually(Questions::reserve),
                Question.of("bank.where", "bank-where").mayBeLeftOut());
    }

    private static Optional<Battery> battery(Answers answers) {
        return answers.of("bank.chemistry").map(Batteries.standard()::of);
    }

    private static Optional<String> blockVoltage(Answers answers) {
        return battery(answers)
                .map(battery -> battery.nominalCell()
                        .times(battery.cellsPer12VoltBlock())
                        .volts())
                .map(volts -> number(volts) + " V");
    }

    private static Optional<String> reserve(Answers answers) {
        return battery(answers).map(battery -> number((1 - battery.usualDepth().fraction()) * 100) + " %");
    }

    private static List<Question> inverter() {
        return List.of(
                Question.of("inverter.continuous", "continuous"),
                Question.of("inverter.idle", "idle").usually(Questions::idle).mayBeLeftOut(),
                Question.of("inverter.alarm", "alarm").usually(answers -> perBlock(answers, 11.0)),
                Question.of("inverter.cut-out", "cut-out").usually(answers -> perBlock(answers, 10.5)),
                Question.of("inverter.neutral-bond", "neutral-bond")
                        .among(names(NeutralBond.values()))
                        .usually("inverter-only"),
                Question.of("inverter.changeover.kind", "changeover")
                        .among(names(ChangeoverKind.values()))
                        .usually("automatic"),
                Question.of("inverter.changeover.when-shore-fails", "when-shore-fails")
                        .among(names(WhenShoreFails.values()))
                        .usually("stay-off")
                        .when(answers -> answers.is("inverter.changeover.kind", "automatic")),
                Question.of("inverter.where", "inverter-where").mayBeLeftOut());
    }

    private static Optional<String> idle(Answers answers) {
        try {
            return answers.of("inverter.continuous")
                    .flatMap(text -> value(text, Power.KIND))
                    .map(watts -> number(Inverters.standard()
                                    .idleDraw(new Power(watts))
                                    .value()
                                    .watts())
                            + " W (assumed)");
        } catch (NotInTable e) {
            return Optional.empty();
        }
    }

    /** Common practice for a 12 V system, scaled to this one: alarm 11.0 V, cut-out 10.5 V. */
    private static Optional<String> perBlock(Answers answers, double voltsAt12) {
        Optional<Double> block = answers.of("bank.block.voltage").flatMap(text -> value(text, Voltage.KIND));
        Optional<Integer> series = answers.of("bank.series")
                .filter(text -> text.matches("\\d{1,2}"))
                .map(Integer::valueOf);
        return block.flatMap(volts -> series.map(count -> volts * count))
                .map(volts -> Math.max(1, Math.rint(volts / 12.8)) * voltsAt12)
                .map(volts -> number(volts) + " V");
    }

    private static List<Question> directCurrent() {
        List<Question> questions = new ArrayList<>();
        for (int pole = 0; pole < 2; pole++) {
            String cable = "cables[" + pole + "].";
            String words = pole == 0 ? "plus" : "minus";
            questions.add(Question.of(cable + "length", words + "-length"));
            questions.add(Question.of(cable + "fitted", words + "-size").mayBeLeftOut());
        }
        questions.add(Question.of("cables[0].insulation", "insulation").usually("90 °C"));
        questions.add(Question.of("cables[0].route", "route")
                .among(names(Route.values()))
                .usually("outside-engine-space"));
        questions.add(Question.of("fuses[0].family", "fuse-family")
                .among(names(FuseFamily.values()))
                .mayBeLeftOut());
        questions.add(Question.of("fuses[0].rating", "fuse-rating")
                .mayBeLeftOut()
                .when(answers -> answers.of("fuses[0].family").isPresent()));
        questions.add(Question.of("fuses[0].distance", "fuse-distance").mayBeLeftOut());
        questions.add(Question.of("isolators[0].where", "isolator").mayBeLeftOut());
        return questions;
    }

    private static List<Question> mains(Answers answers) {
        List<Question> questions = new ArrayList<>();
        questions.add(Question.of("shore.inlet", "inlet").mayBeLeftOut());
        questions.add(Question.of("shore.breaker", "shore-breaker")
                .mayBeLeftOut()
                .usually(given -> given.of("shore.inlet"))
                .when(given -> given.of("shore.inlet").isPresent()));
        questions.add(Question.of("shore.smallest-pedestal", "pedestal")
                .mayBeLeftOut()
                .when(given -> given.of("shore.inlet").isPresent()));
        int circuits = Math.min(MOST_ENTRIES, answers.count("ac-circuits", "name"));
        for (int i = 0; i <= circuits; i++) {
            String circuit = "ac-circuits[" + i + "].";
            questions.add(Question.of(circuit + "name", i == 0 ? "circuit" : "another-circuit")
                    .mayBeLeftOut());
            questions.add(given(circuit, "name", "breaker", "breaker").usually("10 A"));
            questions.add(given(circuit, "name", "curve", "curve")
                    .among(names(BreakerCurve.values()).stream()
                            .map(name -> name.toUpperCase(Locale.ROOT))
                            .toList())
                    .usually("B")
                    .mayBeLeftOut());
            questions.add(given(circuit, "name", "cable", "circuit-cable").mayBeLeftOut());
        }
        questions.add(Question.of("rcds[0].rating", "rcd")
                .usually("30 mA")
                .mayBeLeftOut()
                .when(it -> it.of("ac-circuits[0].name").isPresent()));
        return questions;
    }

    private static Question given(String entry, String first, String key, String words) {
        return Question.of(entry + key, words)
                .when(answers -> answers.of(entry + first).isPresent());
    }

    private static List<Question> charging(Answers answers) {
        List<Question> questions = new ArrayList<>();
        int chargers = Math.min(MOST_ENTRIES, answers.count("charging", "kind"));
        for (int i = 0; i <= chargers; i++) {
            String charger = "charging[" + i + "].";
            questions.add(Question.of(charger + "kind", i == 0 ? "charger" : "another-charger")
                    .among(names(ChargeKind.values()))
                    .mayBeLeftOut());
            questions.add(given(charger, "kind", "current", "charge-current"));
        }
        return questions;
    }

    private static List<Question> appliances(Answers answers) {
        List<Question> questions = new ArrayList<>();
        int appliances = Math.min(MOST_ENTRIES, answers.count("appliances", "name"));
        for (int i = 0; i <= appliances; i++) {
            String appliance = "appliances[" + i + "].";
            Question name = Question.of(appliance + "name", i == 0 ? "appliance" : "another-appliance");
            questions.add(i == 0 ? name : name.mayBeLeftOut());
            questions.add(given(appliance, "name", "power", "power")
                    .usually(it -> typical(it, appliance)
                            .map(usual -> number(usual.power().value().watts()) + " W (assumed)")));
            questions.add(given(appliance, "name", "kind", "load-kind")
                    .among(names(LoadKind.values()))
                    .mayBeLeftOut());
            questions.add(given(appliance, "name", "per-use", "per-use")
                    .usually(it -> typical(it, appliance).map(usual -> duration(usual.perUse()) + " (assumed)"))
                    .mayBeLeftOut());
            questions.add(Question.of(appliance + "uses-per-day", "uses-per-day")
                    .usually(it -> typical(it, appliance)
                            .map(usual -> number(usual.usesPerDay()))
                            .or(() -> Optional.of("1")))
                    .mayBeLeftOut()
                    .when(it -> it.of(appliance + "per-use").isPresent()));
            questions.add(given(appliance, "name", "left-on", "left-on")
                    .among(List.of("yes", "no"))
                    .usually("no"));
        }
        return questions;
    }

    /** What an appliance of that name usually draws; the first of the table that shares a word of five letters or more. */
    private static Optional<TypicalAppliance> typical(Answers answers, String appliance) {
        List<String> words = Stream.of(answers.of(appliance + "name")
                        .orElse("")
                        .toLowerCase(Locale.ROOT)
                        .split("[^\\p{L}]+"))
                .filter(word -> word.length() >= LEAST_LETTERS)
                .toList();
        return Appliances.standard().all().stream()
                .filter(usual -> !usual.onDirectCurrent())
                .filter(usual -> Stream.of(usual.kind().split("[^\\p{L}]+")).anyMatch(words::contains))
                .findFirst();
    }

    /** An answer with its unit as a canonical value; words on how it is known are let go. */
    private static Optional<Double> value(String answer, Kind<?> kind) {
        Matcher parts = WITH_UNIT.matcher(answer);
        return parts.matches()
                ? kind.unit(parts.group(2)).map(unit -> unit.toCanonical(Double.parseDouble(parts.group(1))))
                : Optional.empty();
    }

    /** As a person writes it: whole hours from two on, else minutes. */
    private static String duration(TimeSpan time) {
        double hours = time.seconds() / 3600;
        return hours >= 2 && hours == Math.rint(hours) ? number(hours) + " h" : number(time.seconds() / 60) + " min";
    }

    private static String number(double value) {
        return Double.toString(Math.round(value * 100) / 100.0).replaceFirst("\\.0$", "");
    }

    private static List<String> names(Enum<?>[] values) {
        return Arrays.stream(values)
                .map(value -> value.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .toList();
    }
}
