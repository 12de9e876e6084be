package org.quaybook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/**
 * What is printed beside a figure is what it was worked out from: the printed formula, worked out by itself from the printed
 * inputs, gives the figure.
 */
class WrittenFormulaTest {

    /**
     * An integral, a search, a network, a row of a table or a rule in words: no arithmetic to read off the page. Their own tests
     * hold them against integrators, Kirchhoff's laws, hand calculations and standards.
     */
    private static final Set<Formula> NOT_ON_PAPER = EnumSet.of(
            Formula.RUN_TIME,
            Formula.RUN_TIME_FROM,
            Formula.WARNING_TIME,
            Formula.RECHARGE,
            Formula.DAY_USE,
            Formula.DAY_COURSE,
            Formula.DAYS,
            Formula.DAYS_TO_FULL,
            Formula.WISHED_CAPACITY,
            Formula.WISHED_STRINGS,
            Formula.WISHED_RESISTANCE,
            Formula.LOWEST_CHARGE,
            Formula.LOWEST_CHARGE_BESIDE,
            Formula.MOST_OUTPUT,
            Formula.TIME_RANGE,
            Formula.LADDER,
            Formula.FAULT_RESISTANCE,
            Formula.INTERRUPTING,
            Formula.CASE_CONDUCTOR,
            Formula.TEST_CURRENT,
            Formula.TOO_COLD,
            Formula.LOSS_NOT_IN_PROPORTION);

    /** With a constant whose unit is that of a table or of copper: 0.00393 for each kelvin, 0.05 and 28 of ventilation. */
    private static final Set<Formula> OF_UNITS_OF_ITS_OWN =
            EnumSet.of(Formula.LINK, Formula.DROP, Formula.DROP_BOTH_WAYS, Formula.VENTILATION, Formula.OPENING);

    private static Stream<Figures> jobs() {
        return Stream.concat(
                FiguresTest.jobsOfEveryFormula().stream().map(ChangedDemo::figures),
                VariedJobs.calculated().stream().map(Observed::figures));
    }

    @Test
    void whatIsPrintedBesideAFigureGivesIt() {
        List<String> wrong = new ArrayList<>();
        Set<Formula> held = EnumSet.copyOf(NOT_ON_PAPER);
        jobs().flatMap(job -> job.all().stream()).forEach(figure -> {
            Formula formula = figure.working().formula();
            if (formula.takesOver() || NOT_ON_PAPER.contains(formula)) {
                held.add(formula);
            } else if (holds(figure, Measure.USUAL, wrong)) {
                held.add(formula);
            }
        });
        assertThat(wrong.stream().sorted().distinct().limit(40)).isEmpty();
        assertThat(held).containsExactlyInAnyOrder(Formula.values());
    }

    /**
     * Whoever reckons in other units of volts, amperes, hours, metres and kelvins comes to the same: no input is printed in a
     * unit that the formula is not made for.
     */
    @Test
    void unitsOfInputsAreThoseOfTheFormula() {
        List<String> wrong = new ArrayList<>();
        Measure other = new Measure(2, 3, 5, 7, 11);
        jobs().flatMap(job -> job.all().stream())
                .filter(figure -> !figure.working().formula().takesOver())
                .filter(figure -> !NOT_ON_PAPER.contains(figure.working().formula()))
                .filter(figure -> !OF_UNITS_OF_ITS_OWN.contains(figure.working().formula()))
                .forEach(figure -> holds(figure, other, wrong));
        assertThat(wrong.stream().sorted().distinct().limit(40)).isEmpty();
        assertThat(jobs().flatMap(job -> job.all().stream())
                        .filter(figure ->
                                OF_UNITS_OF_ITS_OWN.contains(figure.working().formula()))
                        .filter(figure -> !holds(figure, other, new ArrayList<>()))
                        .map(figure -> figure.working().formula()))
                .as("nothing is left out that need not be")
                .containsAll(OF_UNITS_OF_ITS_OWN);
    }

    private static boolean holds(Figure<?> figure, Measure measure, List<String> wrong) {
        Formula formula = figure.working().formula();
        double value = measure.count(figure.value());
        try {
            double reckoned = WrittenFormula.of(figure.working(), measure) * unit(formula);
            boolean same = switch (formula) {
                case BREAKER_MOST -> value <= reckoned;
                case FUSE_CHOSEN -> value >= reckoned;
                default -> Math.abs(reckoned - value) <= 1e-9 * Math.max(1, Math.abs(value));
            };
            if (!same) {
                wrong.add(formula + ": " + figure.key() + " is " + value + ", not " + reckoned + ", from "
                        + figure.working().inputs());
            }
            return same;
        } catch (IllegalArgumentException e) {
            wrong.add(formula + ": " + figure.key() + ": " + e.getMessage());
            return false;
        }
    }

    /** Some formulas are made for units of their own: seconds of a short, square centimetres, milliamperes. */
    private static double unit(Formula formula) {
        return switch (formula) {
            case ADIABATIC -> Math.sqrt(3600);
            case OPENING -> 100;
            case VENTILATION -> 1000;
            default -> 1;
        };
    }

    /** The end of a range: the root of the sum of squares of what each input at its end changes (GUM 5.1.2, from memory). */
    @Test
    void aRangeIsTheRootOfTheSumOfSquares() {
        List<Figure<?>> ends = jobs().flatMap(job -> job.all().stream())
                .filter(it -> it.working().formula() == Formula.TIME_RANGE)
                .toList();
        assertThat(ends).isNotEmpty().allSatisfy(end -> {
            double time = 0;
            double squares = 0;
            for (Input input : end.working().inputs()) {
                if (input.symbol().equals("t")) {
                    time = Measure.USUAL.count(input.value());
                }
            }
            for (Input input : end.working().inputs()) {
                if (input.symbol().startsWith("t_")) {
                    double change = Measure.USUAL.count(input.value()) - time;
                    squares += change * change;
                }
            }
            double sign = end.key().endsWith("least") ? -1 : 1;
            assertThat(Measure.USUAL.count(end.value()))
                    .as(end.key())
                    .isCloseTo(Math.max(0, time + sign * Math.sqrt(squares)), within(1e-9 * Math.max(1, time)));
        });
    }

    /** The reader of formulas itself, against arithmetic by hand. */
    @Test
    void readsFormulasAsTheyArePrinted() {
        assertThat(of(
                        Formula.LOADED_VOLTAGE,
                        Input.usual("E", new Voltage(13), Reason.ROW),
                        Input.usual("P₁", new Power(800), Reason.ROW),
                        Input.usual("P_on", new Power(40), Reason.ROW),
                        Input.usual("R", 0.006, Reason.ROW),
                        Input.usual("R", 0.004, Reason.ROW)))
                .isEqualTo((13 + Math.sqrt(169 - 4 * 0.01 * 840)) / 2);
        assertThat(of(
                        Formula.LEFT_FOR_BANK,
                        Input.usual("I₁", new Current(4), Reason.ROW),
                        Input.usual("P", new Power(120), Reason.ROW),
                        Input.usual("U", new Voltage(12), Reason.ROW)))
                .as("4 A − 10 A, but never below 0")
                .isZero();
        assertThat(of(
                        Formula.SHARE_PER_USE,
                        Input.usual("s_end", new Ratio(0.2), Reason.ROW),
                        Input.usual("t_use", TimeSpan.ofHours(0.5), Reason.ROW),
                        Input.usual("t", TimeSpan.ofHours(4), Reason.ROW)))
                .isEqualTo(0.8 / 8);
        assertThatThrownBy(() -> of(Formula.OHM, Input.usual("I", new Current(4), Reason.ROW)))
                .as("an input that is not there")
                .hasMessageContaining("R is 0 times");
        assertThatThrownBy(() -> of(
                        Formula.OHM,
                        Input.usual("I", new Current(4), Reason.ROW),
                        Input.usual("R", 1.0, Reason.ROW),
                        Input.usual("R", 2.0, Reason.ROW)))
                .as("two of a kind that the formula does not add")
                .hasMessageContaining("R is 2 times");
    }

    private static double of(Formula formula, Input... inputs) {
        return WrittenFormula.of(new Working(formula, List.of(inputs)));
    }
}
