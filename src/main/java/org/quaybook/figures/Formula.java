package org.quaybook.figures;

import java.util.Locale;
import java.util.Optional;
import org.quaybook.diag.MessageKey;
import org.quaybook.reference.Citation.Standing;

/**
 * The formulas behind the figures, each with its source. One of symbols alone stands here; one with words or with a
 * decimal sign is written in each language.
 */
public enum Formula {
    AS_STATED("job-file", Standing.SEEN),
    FROM_TABLE("named-table", Standing.SEEN),
    IN_SERIES("U = n · U₁", "kirchhoff-voltage", Standing.SEEN),
    IN_PARALLEL("C = m · C₁", "kirchhoff-current", Standing.SEEN),
    SYSTEM_VOLTAGE("system-voltages", Standing.COMMON_PRACTICE),
    HEALTH("C = h · C₀", "state-of-health", Standing.SEEN),
    ENERGY("E = U · C", "energy", Standing.SEEN),
    USABLE("C = C₀ · (1 − s)", "state-of-charge", Standing.SEEN),
    AGED_RESISTANCE("r = r₀ · (1 + (a − 1) · (1 − h) / 20 %)", "worn-block", Standing.COMMON_PRACTICE),
    STRING("r = n · r + (n − 1) · l", "kirchhoff-voltage", Standing.SEEN),
    LADDER("kirchhoff", Standing.SEEN),
    LINK("ohm-copper", Standing.SEEN),
    JOINTS_OF_LINK("l = j · r_j", "joints-in-series", Standing.SEEN),
    UNEVENNESS("u = share · m", "kirchhoff", Standing.SEEN),
    REST_VOLTAGE("E = n · E₁(s)", "rest-voltages", Standing.SEEN),
    LEAST_RESISTANCE("r = r₀ · a / b", "batteries-span", Standing.FROM_MEMORY),
    LEAST_OF_STATED("r = a · r₀", "largest-short", Standing.FROM_MEMORY),
    LEAST_OF_BOTH("largest-short-stated", Standing.FROM_MEMORY),
    BEHIND_STATED_SHORT("r = E / (n · I)", "stated-short", Standing.SEEN),
    SHORT_CIRCUIT("I = E · m / (r · n)", "bolted-fault", Standing.SEEN),
    WORN_CAPACITY("C = C₀ · h · (1 − λ · (25 °C − T))", "cold-capacity", Standing.FROM_MEMORY),
    LOW_RESISTANCE("R = k · R₀", "named-table", Standing.FROM_MEMORY),
    WORN_RESISTANCE("R = R₀ · a · k", "no-source", Standing.COMMON_PRACTICE),
    WORN_RESISTANCE_OF_USED("no-source", Standing.COMMON_PRACTICE),
    LOSS_WITH_SQUARE("c = (√(P₀ / P_n) + √(1 / η − 1 / η_best))²", "three-terms", Standing.COMPUTED),
    LOSS_IN_PROPORTION("a = 1 / η_best − 1 − 2 · √(P₀ / P_n) · √c", "three-terms", Standing.COMPUTED),
    LOSS_ALL_SQUARE("c = 1 / η − 1 − P₀ / P_n, c ≥ 0", "three-terms", Standing.COMPUTED),
    BEST_REACHED("η = 1 / (1 + a + 2 · √(P₀ · c / P_n))", "three-terms", Standing.COMPUTED),
    LOSS_NOT_IN_PROPORTION("three-terms", Standing.COMPUTED),
    NO_MORE_THAN("= P", "no-short-time", Standing.COMMON_PRACTICE),
    NOT_ABOVE_BEST("η = η_best", "above-best", Standing.COMPUTED),
    NOT_BELOW_FULL("η_best = η", "below-full", Standing.COMPUTED),
    DERATED("derating", Standing.FROM_MEMORY),
    CURRENT("I = P / U", "power", Standing.SEEN),
    CURRENT_OF_ALL("I = Σ P / U", "power", Standing.SEEN),
    ALLOWED_DROP("ΔU = d · U", "rule-limit", Standing.SEEN),
    DROP_BY_RULE("ΔU = Σ k · I · L / A", "rule-formula", Standing.SEEN),
    DROP_AT_20("ΔU = Σ I · r · L / number", "ohm-copper", Standing.SEEN),
    SUM_OF_DROPS("ΔU = Σ U", "sum", Standing.SEEN),
    DROP("ohm-copper", Standing.SEEN),
    DROP_WITH_SHARED("ΔU = U + Σ I · R", "ohm-kirchhoff", Standing.SEEN),
    DROP_BOTH_WAYS("ohm-copper", Standing.SEEN),
    ALLOWED_ALONE("I = I₁ · k₁ · number", "rule-ampacity", Standing.SEEN),
    BUNDLED("I = k₂ · I₁", "rule-ampacity", Standing.SEEN),
    ALLOWED_CURRENT("I = I₁ · k₁ · k₂ · number", "rule-ampacity", Standing.SEEN),
    CONDUCTOR_TEMPERATURE("T = T₀ + (T₁ − 30 °C) · (I / (number · I₁ · k₂))²", "joule", Standing.COMPUTED),
    JOINTS("R = Σ n · r", "joints-in-series", Standing.SEEN),
    OHM("ΔU = I · R", "ohm", Standing.SEEN),
    COLD_RESISTANCE("ohm-copper", Standing.SEEN),
    TEST_CURRENT("test-current", Standing.COMMON_PRACTICE),
    OHM_IN_SERIES("ΔU = I · Σ R", "ohm", Standing.SEEN),
    REST_WHEN_FULL("U = E", "rested-full", Standing.SEEN),
    VOLTAGE_BEHIND("ohm-kirchhoff", Standing.SEEN),
    RESISTANCE_READ("R = U / I", "ohm", Standing.SEEN),
    RESISTANCE_BEHIND("R = (E − U) / I", "ohm-kirchhoff", Standing.SEEN),
    WARMTH_AT_FIRST_LOAD("T = T₁ + (T − T₀) · (I₁ / I)²", "joule", Standing.COMPUTED),
    DROP_AT_FULL_LOAD("U = U₁ · I / I₁", "ohm", Standing.SEEN),
    WARMTH_AT_FULL_LOAD("T = T₀ + (T₁ − T₀) · (I / I₁)²", "joule", Standing.COMPUTED),
    MOVED_UP("no-source", Standing.COMMON_PRACTICE),
    MOVED_DOWN("no-source", Standing.COMMON_PRACTICE),
    MOVED_DROP("no-source", Standing.COMMON_PRACTICE),
    MOVED_BEHIND("no-source", Standing.COMMON_PRACTICE),
    MOVED_WARMTH("no-source", Standing.COMMON_PRACTICE),
    LARGER("worse-decides", Standing.COMMON_PRACTICE),
    SHARE("a / b", "share", Standing.SEEN),
    PATH_RESISTANCE("R = Σ U / I + R_j", "ohm", Standing.SEEN),
    FUSE_LEAST("I ≥ I_load / f", "fuse-load", Standing.SEEN),
    FUSE_CHOSEN("I_n ≥ I", "table-of-fuses", Standing.FROM_MEMORY),
    FUSE_MOST("I ≤ I_cable · q", "fuse-over-cable", Standing.SEEN),
    FAULT_RESISTANCE("kirchhoff", Standing.SEEN),
    HIGHEST_VOLTAGE("highest-charging-voltage", Standing.FROM_MEMORY),
    HIGHEST_VOLTAGE_STATED("highest-charging-voltage", Standing.FROM_MEMORY),
    MUST_INTERRUPT("I ≥ E / (R + r · L / number)", "short-behind-fuse", Standing.SEEN),
    STRING_FAULT("string-fault", Standing.SEEN),
    SHARE_OF_STRING("I = I₁ · share", "kirchhoff-current", Standing.SEEN),
    FAIR_SHARE("share = 1 / m", "share", Standing.SEEN),
    OTHER_BLOCKS("I = I₁ / (m − 1)", "kirchhoff-current", Standing.SEEN),
    PART_OF_CURRENT("I = f · I₁", "no-source", Standing.COMMON_PRACTICE),
    DISCHARGE_RATE("I = r · C", "charge-rate", Standing.FROM_MEMORY),
    SHORT_BY_RESISTANCE("I = E / (n · r)", "ohm", Standing.SEEN),
    STRING_LOAD("I = (I_load + Σ I_b) · share", "kirchhoff-current", Standing.SEEN),
    SHARED_LOAD("I = I_load + Σ I_b", "kirchhoff-current", Standing.SEEN),
    CHARGED_AT_ONCE("I = Σ I_c + Σ P / U", "kirchhoff-current", Standing.SEEN),
    BEHIND_JOINT("I_cable = I − Σ I_c, I_cable ≥ 0", "kirchhoff-current", Standing.SEEN),
    SELECTIVITY("(a / share) / b", "ratio-of-ratings", Standing.COMPUTED),
    INTERRUPTING("table-of-fuses", Standing.FROM_MEMORY),
    INVERTER_FAULT("I = 2 · P / U", "inverter-fault", Standing.FROM_MEMORY),
    TRIP("I = c · I_n", "trip-bands", Standing.FROM_MEMORY),
    BREAKER_MOST("I_n ≤ I", "breaker-most", Standing.SEEN),
    LEAKAGE("Σ I", "kirchhoff-current", Standing.SEEN),
    LEAKAGE_BUDGET("a · I_n", "no-source", Standing.COMMON_PRACTICE),
    EARTH_LOOP("R ≤ U / I_n", "earth-loop", Standing.SEEN),
    PROTECTIVE_CONDUCTOR("protective-conductor", Standing.SEEN),
    CASE_CONDUCTOR("case-conductor", Standing.SEEN),
    ADIABATIC("S ≥ I · √Δt / k", "adiabatic", Standing.SEEN),
    EARTH_RESISTANCE("R = r · L / number", "ohm-copper", Standing.SEEN),
    INVERTER_LOAD("P₁ = P + P₀ + a · P + c · P² / P_n", "three-terms", Standing.COMPUTED),
    INVERTER_LOAD_OF_ALL("P₁ = P₀ + (1 + a) · Σ P + c · (Σ P)² / P_n", "three-terms", Standing.COMPUTED),
    POWER_DRAWN("P_on = E · I_on", "power", Standing.SEEN),
    START("P₁ = s · P", "start-factor", Standing.SEEN),
    START_LAST("start-factor", Standing.SEEN),
    MEAN("P_mean = d · P", "duty", Standing.SEEN),
    RUN_TIME("running-time", Standing.FROM_MEMORY),
    RUN_TIME_FROM("running-time-from", Standing.FROM_MEMORY),
    TIME_RANGE("uncertainty", Standing.FROM_MEMORY),
    WARNING_TIME("warning-time", Standing.FROM_MEMORY),
    WISHED_CAPACITY("turned-round", Standing.COMPUTED),
    WISHED_STRINGS("more-strings", Standing.COMPUTED),
    WISHED_BLOCKS("m · n", "strings", Standing.SEEN),
    WISHED_RESISTANCE("turned-round", Standing.COMPUTED),
    START_CURRENT("I = (E − √(E² − 4 · Σ R · (P₁ + Σ P_on))) / (2 · Σ R)", "ohm-kirchhoff", Standing.SEEN),
    PROTECTION_PEAK("I = I₁ / a", "hardest-string", Standing.SEEN),
    LOWEST_CHARGE("ohm-bisection", Standing.SEEN),
    LOWEST_CHARGE_BESIDE("ohm-bisection", Standing.SEEN),
    LOADED_VOLTAGE("V = (E + √(E² − 4 · Σ R · (P₁ + Σ P_on))) / 2", "ohm-kirchhoff", Standing.SEEN),
    USES("definition", Standing.SEEN),
    SHARE_PER_USE("(100 % − s_end) · t_use / t", "definition", Standing.SEEN),
    SUM("Σ P", "sum", Standing.SEEN),
    MOST_LOAD("P₁ = U · (E − U) / Σ R − Σ P_on, U ≥ E / 2", "ohm-kirchhoff", Standing.SEEN),
    MOST_RESISTANCE("R = (E − limit) · limit / (P₁ + Σ P_on) − R_i, R ≥ 0", "ohm-kirchhoff", Standing.SEEN),
    MOST_BESIDE(
            "I_b = (E − limit − (R_i + R) · P₁ / limit − Σ I_on · (R_i + R_on)) / (R_i + R_s), I_b ≥ 0",
            "ohm-kirchhoff",
            Standing.SEEN),
    MOST_OUTPUT("three-terms", Standing.COMPUTED),
    LEFT_FOR_ANOTHER("sum", Standing.SEEN),
    OFF_TIME("t = C₁ / (Σ I + C · d / 720 h)", "off-time", Standing.FROM_MEMORY),
    SHARE_PER_DAY("24 h / t", "definition", Standing.SEEN),
    VENTILATION("ventilation", Standing.SEEN),
    OPENING("A = 28 · Q", "ventilation", Standing.SEEN),
    CHARGE_LIMIT("I = I₁ / a", "charge-share", Standing.SEEN),
    CHARGE_RATE("I = r · C / u", "charge-rate", Standing.FROM_MEMORY),
    AS_WARM("= I", "as-warm", Standing.COMMON_PRACTICE),
    TOO_COLD("lithium-cold", Standing.FROM_MEMORY),
    SUM_OF_CURRENTS("Σ I", "kirchhoff-current", Standing.SEEN),
    GENERATOR_LIMIT("generator-limit", Standing.COMMON_PRACTICE),
    INPUT_LIMIT("input-limit", Standing.COMMON_PRACTICE),
    LEFT_FOR_BANK("I = I₁ − P / U, I ≥ 0", "kirchhoff-current", Standing.SEEN),
    SUPPLY_LIMIT("S = I_limit · U_mains", "power", Standing.SEEN),
    LEFT_OF_SHARED("I = I₁ · b, b = S / S₁, b ≤ 1, S₁ = Σ U · I / (η · λ)", "power-factor", Standing.SEEN),
    LEFT_BESIDE_LOADS(
            "I = I₁ · (d · a + (1 − d) · b), a = (S − Σ P) / S₁, 0 ≤ a ≤ 1, b = S / S₁, b ≤ 1, d = P_mean / Σ P, S₁ = Σ U · I / (η · λ)",
            "power-factor",
            Standing.SEEN),
    LEFT_BESIDE_CHARGING("I = I₁ − I_charger, I ≥ 0", "kirchhoff-current", Standing.SEEN),
    LEFT_BESIDE_DRAW("I = I₁ − I_on, I ≥ 0", "kirchhoff-current", Standing.SEEN),
    ALL_FOR_BANK("= I₁", "fed-by-mains", Standing.SEEN),
    RECHARGE("recharge", Standing.COMPUTED),
    DAY_USE("energy", Standing.SEEN),
    DAY_SOLAR("solar-share", Standing.COMMON_PRACTICE),
    DAY_CHARGED("E = η₁ · U · I · t", "energy-acceptance", Standing.SEEN),
    SUM_OF_ENERGIES("Σ E", "sum", Standing.SEEN),
    DAY_COURSE("day-model", Standing.COMPUTED),
    DAYS("day-model", Standing.COMPUTED),
    DAYS_TO_FULL("day-model", Standing.COMPUTED),
    CHARGER_INPUT("I = U · I / (η · λ · U_mains)", "power-factor", Standing.SEEN),
    CHARGER_POWER("P = Σ U · I / (η · λ)", "power-factor", Standing.SEEN),
    SPARE("I = I₁ − I_charger − I_on, I ≥ 0", "kirchhoff-current", Standing.SEEN),
    CHARGE_THAT_FITS("I = (I − I_on) · U_mains · η · λ / U, I ≥ 0", "power-factor", Standing.SEEN),
    CHARGE_BESIDE_LOAD("I = (P − P_on − P₁) · η · λ / U, I ≥ 0", "power-factor", Standing.SEEN),
    LEAST("weakest", Standing.SEEN);

    private final String symbols;
    private final String source;
    private final Standing standing;

    Formula(String source, Standing standing) {
        this("", source, standing);
    }

    Formula(String symbols, String source, Standing standing) {
        this.symbols = symbols;
        this.source = source;
        this.standing = standing;
    }

    /** Whether a value is only taken over, with nothing worked out. */
    public boolean takesOver() {
        return this == AS_STATED || this == FROM_TABLE;
    }

    /** The formula in symbols; empty where it needs words or takes over. */
    public String symbols() {
        return symbols;
    }

    /** The formula in words; empty where it is one of symbols or takes over. */
    public Optional<MessageKey> words() {
        String key = "formula." + name().toLowerCase(Locale.ROOT).replace('_', '-');
        return takesOver() || !symbols.isEmpty() ? Optional.empty() : Optional.of(() -> key);
    }

    /** The law, standard or practice behind it. */
    public MessageKey source() {
        return () -> "formula.source." + source;
    }

    /** How far that source can be trusted. */
    public Standing standing() {
        return standing;
    }
}
