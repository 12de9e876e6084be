package org.quaybook.figures;

import org.quaybook.reference.Citation;
import org.quaybook.reference.Citation.Standing;

/** The formulas behind the figures, in symbols that need no translation, each with its source. */
public enum Formula {
    AS_STATED("", "the job file", Standing.SEEN),
    FROM_TABLE("", "the table named with the input", Standing.SEEN),
    IN_SERIES("U = n · U₁", "Kirchhoff's voltage law", Standing.SEEN),
    IN_PARALLEL("C = m · C₁", "Kirchhoff's current law", Standing.SEEN),
    SYSTEM_VOLTAGE("12 V · round(U / 12.8 V)", "trade names of system voltages", Standing.COMMON_PRACTICE),
    HEALTH("C = h · C₀", "definition of state of health", Standing.SEEN),
    ENERGY("E = U · C", "definition of energy", Standing.SEEN),
    USABLE("C = C₀ · (1 − s)", "definition of state of charge", Standing.SEEN),
    AGED_RESISTANCE(
            "r = r₀ · (1 + (a − 1) · (1 − h) / 20 %)",
            "common practice, no source: the rise of a worn block, in proportion", Standing.COMMON_PRACTICE),
    STRING("r = n · r + (n − 1) · l", "Kirchhoff's voltage law", Standing.SEEN),
    LADDER("Σ I = 0 at each post, m strings r and links l in a ladder", "Kirchhoff's laws", Standing.SEEN),
    LINK(
            "l = r · L · (1 + 0.00393 · (T − 20 °C)) / number + j · r_j",
            "Ohm's law, IEC 60228 resistances",
            Standing.SEEN),
    JOINTS_OF_LINK("l = j · r_j", "sum of joints in series", Standing.SEEN),
    UNEVENNESS("share of the hardest worked string · m", "Kirchhoff's laws", Standing.SEEN),
    REST_VOLTAGE("E = n · E₁(s)", "table of rest voltages", Standing.SEEN),
    LEAST_RESISTANCE("r = r₀ · a / b", "table of batteries, ends of the usual span", Standing.FROM_MEMORY),
    SHORT_CIRCUIT("I = E · m / (r · n)", "Ohm's law, bolted fault, links left out", Standing.SEEN),
    WORN_CAPACITY(
            "C = C₀ · h · (1 − λ · (25 °C − T))", "IEC 60896 form of the temperature correction", Standing.FROM_MEMORY),
    WORN_RESISTANCE("R = R₀ · a · k", "common practice, no source", Standing.COMMON_PRACTICE),
    INVERTER_INPUT(
            "P₁ = P + P₀ + a · P + b · P², a and b from P₀ and both efficiencies",
            "three-term loss model, own derivation",
            Standing.COMPUTED),
    NO_MORE_THAN("= P", "no short-time output is stated", Standing.COMMON_PRACTICE),
    NOT_ABOVE_BEST("η = η_best", "the usual value lies above the best that is stated", Standing.COMPUTED),
    NOT_BELOW_FULL("η_best = η", "the usual value lies below that at full output", Standing.COMPUTED),
    DERATED(
            "P · (1 − a · (T − T₀)), not below 0",
            "output derated in proportion above a temperature",
            Standing.FROM_MEMORY),
    CURRENT("I = P / U", "definition of power", Standing.SEEN),
    ALLOWED_DROP("ΔU = d · U", "the rulebook's limit", Standing.SEEN),
    DROP_BY_RULE("ΔU = k · I · L / S, summed over the runs", "the rulebook's formula", Standing.SEEN),
    DROP("ΔU = I · r · L · (1 + 0.00393 · (T − 20 °C)) / number", "Ohm's law, IEC 60228 resistances", Standing.SEEN),
    ALLOWED_CURRENT("I = I₁ · k₁ · k₂ · number", "the rulebook's ampacity table and factors", Standing.SEEN),
    CONDUCTOR_TEMPERATURE(
            "T = T₀ + (T₁ − 30 °C) · (I / (number · I₁ · k₂))²", "Joule's law, steady state", Standing.COMPUTED),
    JOINTS("R = Σ n · r", "sum of joints in series", Standing.SEEN),
    OHM("ΔU = I · R", "Ohm's law", Standing.SEEN),
    COLD_RESISTANCE("R = r · L / number + n · r_j, at 20 °C", "Ohm's law, IEC 60228 resistances", Standing.SEEN),
    TEST_CURRENT(
            "half of I, in whole tens of amperes",
            "common practice, no source: enough to see milliohms, little enough for some minutes",
            Standing.COMMON_PRACTICE),
    OHM_IN_SERIES("ΔU = I · Σ R", "Ohm's law", Standing.SEEN),
    REST_WHEN_FULL("U = E", "table of rest voltages; the bank is full and has rested", Standing.SEEN),
    VOLTAGE_BEHIND("U = E − I · Σ R, full bank, cold conductors", "Ohm's and Kirchhoff's laws", Standing.SEEN),
    RESISTANCE_READ("R = U / I", "Ohm's law", Standing.SEEN),
    RESISTANCE_BEHIND("R = (E − U) / I", "Ohm's and Kirchhoff's laws", Standing.SEEN),
    WARMTH_AT_FIRST_LOAD("T = T₁ + (T − T₀) · (I₁ / I)²", "Joule's law, steady state", Standing.COMPUTED),
    DROP_AT_FULL_LOAD("U = U₁ · I / I₁", "Ohm's law", Standing.SEEN),
    WARMTH_AT_FULL_LOAD("T = T₀ + (T₁ − T₀) · (I / I₁)²", "Joule's law, steady state", Standing.COMPUTED),
    LARGER("the larger of a and b", "the worse value decides", Standing.COMMON_PRACTICE),
    SHARE("a / b", "definition of a share", Standing.SEEN),
    PATH_RESISTANCE("R = U / I + joints", "Ohm's law", Standing.SEEN),
    FUSE_LEAST("I ≥ I_load / f", "load factor of fuses, the rulebook's note", Standing.SEEN),
    FUSE_MOST("I ≤ I_cable · q", "the rulebook's limit over the conductor's ampacity", Standing.SEEN),
    FAULT_RESISTANCE(
            "R: ladder of m strings E · m / I_k and the links' copper at 20 °C, joints left out",
            "Kirchhoff's laws",
            Standing.SEEN),
    HIGHEST_VOLTAGE("the larger of E and U₁₂ · n / n₁₂", "charging voltage of the chemistry", Standing.FROM_MEMORY),
    MUST_INTERRUPT("I ≥ E / (R + r · L)", "Ohm's law, short behind the fuse, copper at 20 °C", Standing.SEEN),
    STRING_FAULT(
            "I ≥ I_k · max(1, m − 1) / m",
            "Kirchhoff's current law: its own string, or all the others into it",
            Standing.SEEN),
    STRING_LOAD("I = I_load · share", "Kirchhoff's current law", Standing.SEEN),
    SELECTIVITY("(a / share) / b", "ratio of ratings, referred to the current through b", Standing.COMPUTED),
    INTERRUPTING(
            "usual breaking capacity of the family at the bank's highest voltage",
            "table of fuses",
            Standing.FROM_MEMORY),
    INVERTER_FAULT("I = 2 · P / U", "fault current of inverters: about twice the rated one", Standing.FROM_MEMORY),
    TRIP("I = c · I_n", "IEC 60898-1 trip bands", Standing.FROM_MEMORY),
    BREAKER_MOST("I_n ≤ I", "ISO 13297:2020 13.1.5; ratings of IEC 60898-1", Standing.SEEN),
    LEAKAGE("Σ I", "Kirchhoff's current law", Standing.SEEN),
    LEAKAGE_BUDGET("a · I_n", "common practice, no source", Standing.COMMON_PRACTICE),
    EARTH_LOOP("R ≤ U / I_n", "BS 7671 Table 41.5", Standing.SEEN),
    PROTECTIVE_CONDUCTOR("S ≥ the larger of S₁ and S₂", "IEC 60364-5-54 Table 54.2 and 543.1.3", Standing.SEEN),
    CASE_CONDUCTOR(
            "S ≥ one size below S₊, at least S₂",
            "ABYC E-11, older text: grounding conductor of direct current",
            Standing.SEEN),
    ADIABATIC("S ≥ I · √Δt / k", "IEC 60364-5-54 543.1.2", Standing.SEEN),
    EARTH_RESISTANCE("R = r · L / number", "Ohm's law, IEC 60228 resistances", Standing.SEEN),
    INVERTER_LOAD("P₁ = P + P₀ + a · P + b · P²", "three-term loss model, own derivation", Standing.COMPUTED),
    START("P₁ = s · P", "definition of the start factor", Standing.SEEN),
    START_LAST("P + P_s − P_r, the largest step starting last", "definition of the start factor", Standing.SEEN),
    DUTY("d = P_mean / P", "definition of the duty", Standing.SEEN),
    RUN_TIME(
            "t = ∫ C / I' ds, I' = I · (I · H / C)^(k−1) where I > C / H, I from V · (E(s) − V) / R = P₁",
            "Peukert's law for an H-hour rating; Ohm's law; Gauss's rule",
            Standing.FROM_MEMORY),
    RUN_TIME_FROM("t = ∫ C / I' ds from this state of charge", "as the running time from full", Standing.FROM_MEMORY),
    TIME_RANGE(
            "t ± √Σ(tᵢ − t)², tᵢ with one input at an end of its spread",
            "ISO/IEC Guide 98-3 (GUM) 5.1.2 for inputs that do not hang together",
            Standing.FROM_MEMORY),
    WARNING_TIME(
            "t − t_a, t = ∫ C / I' ds from where the alarm sounds to the cut-out",
            "as the running time; alarm delay taken off, cut-out delay left out",
            Standing.FROM_MEMORY),
    WISHED_CAPACITY(
            "least C with t(C) ≥ t_w, bank old and cold, its resistance as it is",
            "the running time turned round; bisection",
            Standing.COMPUTED),
    WISHED_STRINGS(
            "least m with t(m) ≥ t_w, bank old and cold",
            "the running time with m equal strings in the ladder",
            Standing.COMPUTED),
    WISHED_BLOCKS("m · n", "definition of strings", Standing.SEEN),
    WISHED_RESISTANCE(
            "largest R with t(R) ≥ t_w, bank old and cold",
            "the running time turned round; bisection",
            Standing.COMPUTED),
    START_CURRENT("I = P₁ / V(s), V · (E(s) − V) / R = P₁", "Ohm's law", Standing.SEEN),
    PROTECTION_PEAK("I = I₁ / a", "Kirchhoff's current law: the hardest worked string opens first", Standing.SEEN),
    LOWEST_CHARGE("least s with V(s) ≥ limit, V · (E(s) − V) / R = P₁", "Ohm's law; bisection", Standing.SEEN),
    LOADED_VOLTAGE("V = (E + √(E² − 4 · R · P₁)) / 2", "Ohm's and Kirchhoff's laws", Standing.SEEN),
    USES("t / t_use, whole uses", "definition", Standing.SEEN),
    SHARE_PER_USE("(100 % − s_end) · t_use / t", "definition", Standing.SEEN),
    SUM("Σ P", "sum", Standing.SEEN),
    OFF_TIME(
            "t = (1 − s) · C / (I + C · d / month), month of 720 h",
            "definition of charge; self-discharge from the table of batteries",
            Standing.FROM_MEMORY),
    SHARE_PER_DAY("24 h / t", "definition", Standing.SEEN),
    VENTILATION("Q = 0.05 · n · I_gas · C / 1000", "IEC 62485-2", Standing.SEEN),
    OPENING("A = 28 · Q", "IEC 62485-2", Standing.SEEN),
    CHARGE_LIMIT("I = I₁ / a", "Kirchhoff's laws: the hardest worked string takes the share a", Standing.SEEN),
    CHARGE_RATE("I = r · C", "usual limit of the chemistry", Standing.FROM_MEMORY),
    AS_WARM("= I", "the maker's limit, or a chemistry whose limit does not hang on the cold", Standing.COMMON_PRACTICE),
    TOO_COLD("I = 0 where T < T₀", "lithium cells must not be charged in the cold", Standing.FROM_MEMORY),
    SUM_OF_CURRENTS("Σ I", "Kirchhoff's current law", Standing.SEEN),
    GENERATOR_LIMIT(
            "I = the least of I₁ and P · η · λ / U",
            "definition of power; the generator bears volt-amperes as it does watts",
            Standing.COMMON_PRACTICE),
    INPUT_LIMIT(
            "I = the least of I₁ and I_limit · U_mains · η · λ / U",
            "definition of power; the inverter's input limit holds the charger back",
            Standing.COMMON_PRACTICE),
    LEFT_FOR_BANK("I = I₁ − P / U", "Kirchhoff's current law", Standing.SEEN),
    ALL_FOR_BANK("= I₁", "what runs is fed by the mains meanwhile", Standing.SEEN),
    RECHARGE(
            "t = ∫ C / (η · I') ds, I' = the least of I, I_most and C · (r_end + (r₁ − r_end) · (1 − s) / (1 − s₁)),"
                    + " η = η₁ below s₁, else η₂",
            "own model: full current, then a tail; acceptance from the table",
            Standing.COMPUTED),
    DAY_USE(
            "Σ P₁ · t over the stretches of a day, what runs at once through the inverter together; its idle draw, and what"
                    + " always draws",
            "definition of energy",
            Standing.SEEN),
    DAY_SOLAR(
            "E = P_peak · t_sun · 0.75",
            "common practice, no source: 75 % of the panels' peak arrives",
            Standing.COMMON_PRACTICE),
    DAY_CHARGED("E = η₁ · U · I · t", "definition of energy; acceptance from the table", Standing.SEEN),
    SUM_OF_ENERGIES("Σ E", "sum", Standing.SEEN),
    DAY_COURSE(
            "ds/dt = −I' / C out, η · I / C in; I from V · (E(s) + R · I_in − V) / R = P₁ at each hour",
            "Ohm's, Kirchhoff's and Peukert's laws; midpoint rule; own model of the day",
            Standing.COMPUTED),
    DAYS(
            "the day's course from full, day after day until s is reached, 365 days at most",
            "Ohm's, Kirchhoff's and Peukert's laws; midpoint rule; own model of the day",
            Standing.COMPUTED),
    DAYS_TO_FULL(
            "the day's course from s, day after day until full",
            "Ohm's, Kirchhoff's and Peukert's laws; midpoint rule; own model of the day",
            Standing.COMPUTED),
    CHARGER_INPUT("I = U · I / (η · λ · U_mains)", "definition of power and power factor", Standing.SEEN),
    CHARGER_POWER("P = Σ U · I / (η · λ)", "definition of power and power factor", Standing.SEEN),
    SPARE("I = the least of I and I_limit − I_charger − I_on, at least 0", "Kirchhoff's current law", Standing.SEEN),
    CHARGE_THAT_FITS("I = (I − I_on) · U_mains · η · λ / U", "definition of power and power factor", Standing.SEEN),
    CHARGE_BESIDE_LOAD("I = (P − largest load) · η · λ / U", "definition of power and power factor", Standing.SEEN),
    LEAST("the least of them", "the weakest part decides", Standing.SEEN);

    private final String text;
    private final String source;
    private final Standing standing;

    Formula(String text, String source, Standing standing) {
        this.text = text;
        this.source = source;
        this.standing = standing;
    }

    /** The formula in symbols; empty where a value is only taken over. */
    public String text() {
        return text;
    }

    public Citation citation() {
        return new Citation(source, standing);
    }
}
