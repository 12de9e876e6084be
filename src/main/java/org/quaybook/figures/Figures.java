package org.quaybook.figures;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.calc.DayPlan;
import org.quaybook.calc.Limits;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Severity;
import org.quaybook.job.Isolator;
import org.quaybook.job.Job;
import org.quaybook.job.Protection;
import org.quaybook.job.Source;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.NotInTable;

/**
 * All figures of a job.
 *
 * @param way what shares fuses and cables with the inverter
 * @param pairs every two appliances; none where there are too many
 * @param room what takes the place of the pairs of too many appliances
 * @param withLeftOn what the job wishes a time for and what somebody depends on, each with all that stays on beside it
 * @param pastInverter what hangs on circuits that the inverter never feeds
 * @param largestDraws each branch while it takes its largest current
 * @param protectionPeak short-time current of the bank at which the protection of its hardest worked string may open;
 *     empty where the job does not state it
 * @param bankLoad what all that draws asks of the bank and its blocks
 * @param isolators what passes each switch in the feed of the inverter
 * @param all every figure in the order it was reached
 */
public record Figures(
        BankFigures bank,
        InverterFigures inverter,
        SupplyFigures supply,
        FaultFigures fault,
        SharedWay way,
        List<FuseFigures> fuses,
        List<SelectivityFigures> selectivity,
        AcFigures ac,
        List<EarthFigures> earths,
        List<ApplianceFigures> appliances,
        List<PastInverterFigures> pastInverter,
        List<TogetherFigures> pairs,
        Optional<RoomFigures> room,
        List<GroupFigures> groups,
        List<GroupFigures> withLeftOn,
        List<LargestDraw> largestDraws,
        Optional<Figure<Current>> protectionPeak,
        BankLoad bankLoad,
        List<IsolatorFigures> isolators,
        AbsenceFigures absence,
        Optional<VentFigures> vent,
        BankCharging bankCharging,
        List<ChargeFigures> charging,
        List<ChargeFigures.Together> chargingTogether,
        DayFigures day,
        Optional<ReturnFigures> shoreReturn,
        Optional<AtShoreFigures> atShore,
        Optional<GeneratorFigures> generator,
        BaselineFigures baseline,
        List<Figure<?>> all) {

    public Figures {
        fuses = List.copyOf(fuses);
        selectivity = List.copyOf(selectivity);
        earths = List.copyOf(earths);
        appliances = List.copyOf(appliances);
        pastInverter = List.copyOf(pastInverter);
        pairs = List.copyOf(pairs);
        groups = List.copyOf(groups);
        withLeftOn = List.copyOf(withLeftOn);
        largestDraws = List.copyOf(largestDraws);
        isolators = List.copyOf(isolators);
        charging = List.copyOf(charging);
        chargingTogether = List.copyOf(chargingTogether);
        all = List.copyOf(all);
    }

    /**
     * Figures, or the reasons why there are none.
     *
     * @param figures null exactly if there are problems
     */
    public record Outcome(@Nullable Figures figures, List<Diagnostic> problems) {
        public Outcome {
            problems = List.copyOf(problems);
        }
    }

    /** What passes a switch in the feed of the inverter; empty of any other switch. */
    public Optional<Figure<Current>> most(Isolator isolator) {
        return isolators.stream()
                .filter(it -> it.isolator().equals(isolator))
                .map(IsolatorFigures::most)
                .findFirst();
    }

    /** An appliance that a time is wished for or somebody depends on, with what stays on; empty if nothing else does. */
    public Optional<GroupFigures> withLeftOn(ApplianceFigures appliance) {
        return withLeftOn(appliance.key());
    }

    /** A group that a time is wished for, with what stays on; empty if nothing else does. */
    public Optional<GroupFigures> withLeftOn(GroupFigures group) {
        return withLeftOn(group.key());
    }

    private Optional<GroupFigures> withLeftOn(String key) {
        String wanted = GroupFigures.withLeftOn(key);
        return withLeftOn.stream().filter(it -> it.key().equals(wanted)).findFirst();
    }

    /** Calculates a job. */
    public static Outcome of(Job job, Tables tables) {
        List<Diagnostic> missing = Needs.of(job);
        if (!missing.isEmpty()) {
            return new Outcome(null, missing);
        }
        try {
            return new Outcome(calculate(job, tables), List.of());
        } catch (Unanswerable e) {
            return new Outcome(null, List.of(e.diagnostic()));
        } catch (NotInTable e) {
            return new Outcome(null, List.of(notInTable(job, e)));
        }
    }

    private static Figures calculate(Job job, Tables tables) {
        FigureBook book = new FigureBook();
        BankFigures bank = BankFigures.of(job.bank(), tables, book);
        InverterFigures inverter = InverterFigures.of(job.inverter(), bank, tables, book);
        SharedWay way = new SharedWay(job.fuses(), job.charging());
        SupplyFigures supply = SupplyFigures.of(job.cables(), way, bank, inverter, tables, book);
        FaultFigures fault = FaultFigures.of(job.bank(), bank, tables, book);
        List<FuseFigures> fuses = FuseFigures.of(job, way, bank, fault, inverter, supply, tables, book);
        List<SelectivityFigures> selectivity = SelectivityFigures.of(fuses, bank, tables, book);
        AcFigures ac = new AcReckoning(job, inverter, tables, book).figures();
        List<EarthFigures> earths = EarthFigures.of(job, bank, supply, ac, tables, book);
        Limits limits = new Limits(bank.reserve().value(), inverter.cutOut().value(), protectionCutOut(job));
        SteadyDraw draw = SteadyDraw.of(job, bank, way, supply, book);
        RunSystem system = RunSystem.of(job, bank, inverter, supply, draw, limits, tables, book);
        List<ApplianceFigures> appliances = ApplianceFigures.of(system);
        List<GroupFigures> groups = GroupFigures.of(system, appliances);
        AbsenceFigures absence = AbsenceFigures.of(job, appliances, bank, inverter, supply, draw, limits, book);
        BankCharging bankCharging = BankCharging.of(job.bank(), bank, book);
        DayFigures.Walked walked = new DayFigures.Walked(
                DayPlan.of(DayUses.of(appliances), inverter.losses()),
                bank,
                bankCharging,
                inverter,
                supply,
                limits,
                draw,
                book);
        DayFigures.Dark dark = DayFigures.dark(walked, appliances);
        ChargeFigures.Charged charged = new ChargeFigures.Charged(
                job,
                bank,
                bankCharging,
                absence,
                way,
                supply,
                new RechargeFigures.After(appliances, dark.end()),
                tables,
                book);
        List<ChargeFigures> charging = ChargeFigures.of(charged);
        List<PastInverterFigures> pastInverter = PastInverterFigures.of(job, book);
        List<MainsLoad> onShore = MainsLoad.on(Source.SHORE, appliances, pastInverter);
        Optional<ReturnFigures> shoreReturn = ReturnFigures.of(job, charging, onShore, bankCharging, book);
        return new Figures(
                bank,
                inverter,
                supply,
                fault,
                way,
                fuses,
                selectivity,
                ac,
                earths,
                appliances,
                pastInverter,
                TogetherFigures.pairs(system, appliances),
                RoomFigures.of(system, appliances),
                groups,
                GroupFigures.withLeftOn(system, appliances, groups),
                LargestDraw.of(system, way, appliances),
                protectionPeak(job, bank, book),
                BankLoad.of(job, bank, inverter, way, book),
                IsolatorFigures.of(job, way, bank, inverter, book),
                absence,
                VentFigures.of(bank, book),
                bankCharging,
                charging,
                ChargeFigures.together(charging, charged),
                DayFigures.of(walked, dark, charging),
                shoreReturn,
                AtShoreFigures.of(job, shoreReturn, onShore, book),
                GeneratorFigures.of(
                        job, charging, MainsLoad.on(Source.GENERATOR, appliances, pastInverter), bankCharging, book),
                BaselineFigures.of(job, bank, inverter, supply, book),
                book.all());
    }

    private static @Nullable Voltage protectionCutOut(Job job) {
        Protection protection = job.bank().protection();
        return protection == null || protection.cutOut() == null
                ? null
                : protection.cutOut().value();
    }

    private static Optional<Figure<Current>> protectionPeak(Job job, BankFigures bank, FigureBook book) {
        return Optional.ofNullable(job.bank().protection())
                .map(Protection::peak)
                .filter(peak -> peak.value() != null)
                .map(peak -> book.enter(
                        "bank.protection-peak",
                        BankFigures.seen(peak)
                                .dividedBy(bank.worstShare().value().fraction()),
                        Rounding.DOWN,
                        Formula.PROTECTION_PEAK,
                        Input.of("I₁", peak),
                        Input.of("a", bank.worstShare())));
    }

    private static Diagnostic notInTable(Job job, NotInTable e) {
        return new Diagnostic(
                Severity.ERROR,
                FiguresMessage.NOT_IN_TABLE.key(),
                job.place(),
                "",
                org.quaybook.diag.Message.of(FiguresMessage.NOT_IN_TABLE, e.table(), e.wanted(), e.holds()),
                List.of());
    }
}
