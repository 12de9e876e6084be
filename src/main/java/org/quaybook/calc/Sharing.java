package org.quaybook.calc;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;

/**
 * How equal strings in parallel share a load.
 *
 * @param shares share of each string, the first being the one at the positive take-off; they sum to 1
 * @param resistance resistance of the bank between its take-off points
 */
public record Sharing(List<Ratio> shares, Resistance resistance) {

    public Sharing {
        shares = List.copyOf(shares);
    }

    /**
     * Solves the ladder of strings and links by Kirchhoff's laws.
     *
     * @param string resistance of each string, one or more, each above 0
     * @param link resistance of one link between neighbours, plus side and minus side each; 0 is a perfect bar
     */
    public static Sharing of(List<Resistance> string, Resistance link, TakeOffPoint takeOff) {
        if (string.isEmpty() || string.stream().anyMatch(r -> r.ohms() <= 0)) {
            throw new IllegalArgumentException("strings need a resistance above 0: " + string);
        }
        if (string.size() == 1 || link.ohms() == 0 || takeOff == TakeOffPoint.BUSBAR) {
            return ofBars(string, takeOff == TakeOffPoint.BUSBAR ? link : new Resistance(0));
        }
        double[] currents = new Ladder(
                        string.stream().mapToDouble(Resistance::ohms).toArray(), link.ohms())
                .currents(takeOff == TakeOffPoint.SAME_END);
        List<Ratio> shares = new ArrayList<>();
        for (double current : currents) {
            shares.add(new Ratio(current));
        }
        // With 1 A drawn, the drop along any path between the take-off points is the resistance of the bank.
        double drop = currents[0] * string.get(0).ohms();
        if (takeOff == TakeOffPoint.OPPOSITE_ENDS) {
            double along = 0;
            for (int i = 0; i < currents.length - 1; i++) {
                along += currents[i];
                drop += along * link.ohms();
            }
        }
        return new Sharing(shares, new Resistance(drop));
    }

    /** On common bars each string has two leads of its own, so strings are simply in parallel. */
    private static Sharing ofBars(List<Resistance> string, Resistance lead) {
        double[] conductance = string.stream()
                .mapToDouble(r -> 1 / (r.ohms() + 2 * lead.ohms()))
                .toArray();
        double sum = 0;
        for (double g : conductance) {
            sum += g;
        }
        List<Ratio> shares = new ArrayList<>();
        for (double g : conductance) {
            shares.add(new Ratio(g / sum));
        }
        return new Sharing(shares, new Resistance(1 / sum));
    }

    /** The largest share, that of the string that wears first. */
    public Ratio worst() {
        return Collections.max(shares);
    }

    /** How much more than its fair part the hardest worked string gives: 1 is fair. */
    public double worstOverMean() {
        return worst().fraction() * shares.size();
    }

    /** The current of each string when the bank gives a current. */
    public List<Current> of(Current whole) {
        return shares.stream().map(share -> whole.times(share.fraction())).toList();
    }
}
