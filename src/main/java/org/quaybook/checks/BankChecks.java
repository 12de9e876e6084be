package org.quaybook.checks;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.figures.BankFigures;
import org.quaybook.figures.BankLoad;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.job.Bank;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Protection;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.Voltage;

/** The bank: sharing, its own protection, ventilation, terminals. */
final class BankChecks {

    /** What the trade calls a cable lug, in each language that a job may be written in. */
    private static final List<String> LUG = List.of("lug", "kabelschuh", "cosse", "kabelschoen", "terminal");

    /** What a sum of decimals may be off. */
    private static final double HAIR = 1 + 1e-9;

    private static final double UNEVEN = 1.10;
    private static final int MANY_STRINGS = 3;
    private static final double SHORT_UNLIKE_RESISTANCE = 3;

    private final Bank bank;
    private final Figures figures;
    private final Findings findings;
    private final BankLoad load;

    private BankChecks(Bank bank, Figures figures, Findings findings) {
        this.bank = bank;
        this.figures = figures;
        this.findings = findings;
        this.load = figures.bankLoad();
    }

    static void run(Job job, Figures figures, Findings findings) {
        BankChecks checks = new BankChecks(job.bank(), figures, findings);
        checks.sharing();
        checks.shortCircuit();
        Protection protection = job.bank().protection();
        if (protection != null) {
            checks.protection(protection);
        }
        checks.dischargeRate(protection);
        checks.reserve();
        checks.chargeVoltage();
        checks.terminals();
    }

    private void sharing() {
        BankFigures it = figures.bank();
        if (bank.links() == null && it.sharing().shares().size() > 1) {
            findings.add(Severity.NOTE, Check.LINKS_UNKNOWN, bank.place());
        }
        if (it.sharing().worstOverMean() > UNEVEN) {
            findings.add(
                    Severity.DECIDE,
                    Check.TAKE_OFF_UNEVEN,
                    bank.takeOff() == null ? bank.place() : bank.takeOff().place(),
                    it.worstShare().stated(),
                    load.fairShare().stated(),
                    it.worstShareOppositeEnds().orElse(it.worstShare()).stated());
        }
        if (it.battery().leadAcid() && it.sharing().shares().size() > MANY_STRINGS) {
            findings.add(
                    Severity.NOTE,
                    Check.STRINGS_MANY,
                    bank.parallel().place(),
                    it.sharing().shares().size());
        }
    }

    /** A slip in what the maker states of a short: a unit, or a figure of the whole bank. */
    private void shortCircuit() {
        Given<Current> stated = bank.block().shortCircuit();
        if (stated == null || stated.value() == null) {
            return;
        }
        Figure<Current> byResistance = load.shortByResistance().orElseThrow();
        double ratio = stated.value().ratioTo(byResistance.value());
        if (ratio > SHORT_UNLIKE_RESISTANCE || ratio < 1 / SHORT_UNLIKE_RESISTANCE) {
            findings.add(
                    Severity.DECIDE,
                    Check.SHORT_CIRCUIT_UNLIKELY,
                    stated.place(),
                    Stated.asGiven(stated.value()),
                    figures.bank().blockResistance().stated(),
                    byResistance.stated());
        }
    }

    private void protection(Protection protection) {
        Optional<Current> limit = Given.maybe(protection.discharge());
        if (limit.isPresent()) {
            Figure<Current> usable = load.usable().orElseThrow();
            if (load.hardestBlock().value().compareTo(usable.value()) > 0) {
                findings.add(
                        Severity.DECIDE,
                        Check.PROTECTION_CURRENT,
                        place(protection.discharge()),
                        load.hardestBlock().stated(),
                        usable.stated(),
                        Stated.asGiven(limit.get()));
            }
            cascade(limit.get(), place(protection.discharge()));
        }
        Optional<Voltage> cutOut = Given.maybe(protection.cutOut());
        Voltage inverter = figures.inverter().cutOut().value();
        if (cutOut.isPresent() && inverter.compareTo(cutOut.get()) <= 0) {
            findings.add(
                    Severity.FORBIDS,
                    Check.PROTECTION_CUT_OUT,
                    place(protection.cutOut()),
                    Stated.asGiven(inverter),
                    Stated.asGiven(cutOut.get()));
        }
    }

    /** A lithium battery whose protection nobody has written opens at some current all the same, and without an alarm. */
    private void dischargeRate(@Nullable Protection protection) {
        boolean known =
                protection != null && Given.maybe(protection.discharge()).isPresent();
        BankFigures it = figures.bank();
        if (known || it.battery().leadAcid()) {
            return;
        }
        if (load.hardestBlock().value().compareTo(load.usualDischarge().value()) > 0) {
            findings.add(
                    Severity.DECIDE,
                    Check.DISCHARGE_RATE,
                    bank.place(),
                    load.hardestBlock().stated(),
                    load.usualDischarge().stated(),
                    Stated.asGiven(bank.block().capacity().known().orElseThrow()));
        }
    }

    private void reserve() {
        BankFigures it = figures.bank();
        Ratio usual = new Ratio(1 - it.battery().usualDepth().fraction());
        if (it.battery().leadAcid() && it.reserve().value().compareTo(usual) < 0) {
            findings.add(
                    Severity.DECIDE,
                    Check.RESERVE_LOW,
                    bank.reserve().place(),
                    it.reserve().stated(),
                    Stated.asGiven(usual));
        }
    }

    /** Beyond 3.65 V a cell no maker of lithium iron phosphate goes; of lead-acid some do. */
    private void chargeVoltage() {
        Voltage highest = figures.bank().highestUsual();
        Given.maybe(bank.chargeVoltage())
                .filter(stated -> stated.volts() > highest.volts() * HAIR)
                .ifPresent(stated -> findings.add(
                        BankFigures.isLithium(bank) ? Severity.FORBIDS : Severity.DECIDE,
                        Check.CHARGE_VOLTAGE_HIGH,
                        place(bank.chargeVoltage()),
                        Stated.asGiven(stated),
                        Stated.asGiven(highest)));
    }

    private Place place(@Nullable Given<?> given) {
        return given == null ? bank.place() : given.place();
    }

    private void cascade(Current limit, Place place) {
        int strings = figures.bank().sharing().shares().size();
        load.otherBlocks()
                .filter(others -> others.value().compareTo(limit) > 0)
                .ifPresent(others -> findings.add(
                        Severity.NOTE,
                        Check.PROTECTION_CASCADE,
                        place,
                        OtherBlocks.of(strings, others.stated(), Stated.asGiven(limit))));
    }

    private void terminals() {
        if (Given.maybe(bank.torque()).isEmpty()) {
            findings.add(Severity.DECIDE, Check.TORQUE_MISSING, bank.place());
        }
        Optional<String> stack = Given.maybe(bank.stack());
        if (stack.isPresent() && !startsWithLug(stack.get())) {
            findings.add(Severity.FORBIDS, Check.STACK_ORDER, bank.place(), stack.get());
        }
    }

    private static boolean startsWithLug(String stack) {
        String lowest = stack.trim().toLowerCase(Locale.ROOT);
        return LUG.stream().anyMatch(lowest::startsWith);
    }
}
