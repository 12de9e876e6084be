package org.quaybook.checks;

import java.util.Optional;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Figures;
import org.quaybook.figures.VentFigures;
import org.quaybook.job.Bank;
import org.quaybook.job.Given;
import org.quaybook.job.Height;
import org.quaybook.job.Vent;
import org.quaybook.quantity.AirFlow;
import org.quaybook.quantity.Area;
import org.quaybook.quantity.Stated;

/** The air of a bank that makes gas. */
final class VentChecks {

    private final Bank bank;
    private final boolean vented;
    private final Findings findings;

    private VentChecks(Bank bank, boolean vented, Findings findings) {
        this.bank = bank;
        this.vented = vented;
        this.findings = findings;
    }

    static void run(Bank bank, Figures figures, Findings findings) {
        VentChecks checks = new VentChecks(bank, figures.bank().battery().vented(), findings);
        figures.vent().ifPresent(checks::judge);
    }

    private void judge(VentFigures need) {
        Vent vent = bank.vent();
        if (vent == null) {
            unknown(need, bank.place());
            return;
        }
        Optional<AirFlow> fan = Given.maybe(vent.fan());
        if (fan.isPresent()) {
            fan(need, vent, fan.get());
        } else {
            openings(need, vent);
        }
        if (Given.isNo(vent.outside())) {
            findings.add(vented ? Severity.FORBIDS : Severity.DECIDE, Check.VENT_INSIDE, vent.place());
        } else if (vented && !Given.isYes(vent.outside()) && vent.leadsTo() == null) {
            findings.add(Severity.DECIDE, Check.VENT_OUTSIDE_UNKNOWN, vent.place());
        }
    }

    private void unknown(VentFigures need, Place place) {
        findings.add(
                vented ? Severity.FORBIDS : Severity.DECIDE,
                Check.VENTILATION_UNKNOWN,
                place,
                need.boostOpening().stated());
    }

    /** A fan that stands still makes no draught, so what it moves must do and it must run whenever the bank is charged. */
    private void fan(VentFigures need, Vent vent, AirFlow fan) {
        if (fan.compareTo(need.boostFlow().value()) < 0) {
            findings.add(
                    Severity.FORBIDS,
                    Check.VENT_FAN,
                    vent.place(),
                    Stated.down(fan),
                    need.boostFlow().stated());
        }
    }

    private void openings(VentFigures need, Vent vent) {
        Optional<Area> inlet = Given.maybe(vent.inlet());
        Optional<Area> outlet = Given.maybe(vent.outlet());
        if (inlet.isEmpty() || outlet.isEmpty()) {
            unknown(need, vent.place());
            return;
        }
        Height low = Given.maybe(vent.inletPlace()).orElse(Height.LOW);
        Height high = Given.maybe(vent.outletPlace()).orElse(Height.HIGH);
        opening(need, vent, inlet.get(), low);
        opening(need, vent, outlet.get(), high);
        if (low != Height.LOW || high != Height.HIGH) {
            findings.add(Severity.DECIDE, Check.VENT_PLACES, vent.place(), low, high);
        }
    }

    private void opening(VentFigures need, Vent vent, Area area, Height height) {
        if (area.compareTo(need.boostOpening().value()) < 0) {
            findings.add(
                    Severity.FORBIDS,
                    Check.VENTILATION,
                    vent.place(),
                    Stated.down(area),
                    need.boostOpening().stated(),
                    need.boostFlow().stated(),
                    height);
        }
    }
}
