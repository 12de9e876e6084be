package org.quaybook.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * What the trade also calls the values that a field chooses from. Such a word is refused like any other that is not
 * allowed, and the message asks for the value meant: what somebody meant is not for a program to settle. A word that the
 * trade uses for several values leads to all of them; one for something else, such as another lithium chemistry or a
 * square wave, leads to none.
 */
final class TradeWords {

    private static final Map<Enum<?>, List<String>> OTHER_WORDS = Map.ofEntries(
            Map.entry(
                    Chemistry.FLOODED,
                    List.of("lead", "lead-acid", "wet", "wet cell", "liquid acid", "vented", "open", "FLA")),
            Map.entry(
                    Chemistry.AGM,
                    List.of("lead", "lead-acid", "sealed", "sealed lead-acid", "SLA", "VRLA", "absorbed glass mat")),
            Map.entry(
                    Chemistry.GEL,
                    List.of("lead", "lead-acid", "sealed", "sealed lead-acid", "SLA", "VRLA", "gel cell")),
            Map.entry(
                    Chemistry.LITHIUM_IRON_PHOSPHATE,
                    List.of("LiFePO4", "LiFePO", "LFP", "lithium", "lithium iron", "lithium ferrophosphate")),
            Map.entry(
                    Wave.SINE,
                    List.of("pure sine", "pure sine wave", "true sine", "true sine wave", "sine wave", "sinus")),
            Map.entry(
                    Wave.MODIFIED,
                    List.of(
                            "modified sine",
                            "modified sine wave",
                            "quasi-sine",
                            "quasi-sine wave",
                            "simulated sine",
                            "stepped",
                            "trapezoidal")),
            Map.entry(BreakerCurve.B, List.of("type B", "curve B", "B curve")),
            Map.entry(BreakerCurve.C, List.of("type C", "curve C", "C curve")),
            Map.entry(BreakerCurve.D, List.of("type D", "curve D", "D curve")),
            Map.entry(RcdType.AC, List.of("type AC", "AC type")),
            Map.entry(RcdType.A, List.of("type A", "A type")),
            Map.entry(RcdType.F, List.of("type F", "F type")),
            Map.entry(RcdType.B, List.of("type B", "B type")),
            Map.entry(
                    CraftKind.BOAT,
                    List.of(
                            "yacht",
                            "vessel",
                            "ship",
                            "narrowboat",
                            "barge",
                            "sailboat",
                            "sailing boat",
                            "motorboat",
                            "motor yacht",
                            "catamaran",
                            "houseboat")),
            Map.entry(
                    CraftKind.MOTORHOME,
                    List.of(
                            "camper",
                            "camper van",
                            "van",
                            "RV",
                            "recreational vehicle",
                            "caravan",
                            "trailer",
                            "vehicle")),
            Map.entry(CraftKind.CABIN, List.of("hut", "house", "cottage", "chalet", "lodge", "building", "off-grid")),
            Map.entry(
                    Route.ENGINE_SPACE,
                    List.of("engine room", "engine bay", "engine compartment", "machinery space", "hot")),
            Map.entry(
                    Route.OUTSIDE_ENGINE_SPACE,
                    List.of(
                            "outside engine room",
                            "outside engine compartment",
                            "living space",
                            "accommodation",
                            "locker",
                            "saloon",
                            "cabin")),
            Map.entry(
                    Laid.IN_INSULATION,
                    List.of("insulated wall", "thermal insulation", "insulation", "A2", "method A2")),
            Map.entry(Laid.IN_CONDUIT, List.of("conduit", "trunking", "duct", "B2", "method B2")),
            Map.entry(Laid.ON_SURFACE, List.of("clipped", "clipped direct", "surface", "method C")),
            Map.entry(FuseFamily.CLASS_T, List.of("T", "type T", "T class")),
            Map.entry(FuseFamily.MRBF, List.of("terminal fuse", "battery terminal fuse", "cube")),
            Map.entry(FuseFamily.NH_GG, List.of("NH", "gG", "NH00", "HRC", "knife blade")),
            Map.entry(FuseFamily.BLADE, List.of("standard blade", "regular blade", "flat", "automotive")),
            Map.entry(FuseFamily.BLADE_MINI, List.of("mini", "mini blade")),
            Map.entry(FuseFamily.BLADE_MAXI, List.of("maxi", "maxi blade")),
            Map.entry(FuseFamily.GLASS, List.of("glass tube", "tube", "cartridge")),
            Map.entry(FuseFamily.DC_BREAKER, List.of("breaker", "circuit breaker", "MCB", "MCCB", "thermal breaker")),
            Map.entry(FuseRole.MAIN, List.of("battery", "bank", "main fuse")),
            Map.entry(FuseRole.STRING, List.of("string fuse")),
            Map.entry(FuseRole.BRANCH, List.of("branch fuse", "sub", "consumer", "load", "circuit")),
            Map.entry(EarthKind.PROTECTIVE, List.of("PE", "CPC", "earth", "protective earth", "equipment ground")),
            Map.entry(EarthKind.CASE, List.of("chassis", "casing", "housing", "enclosure", "frame")),
            Map.entry(EarthKind.BOND, List.of("bonding", "equipotential", "equipotential bonding", "hull")),
            Map.entry(
                    NeutralBond.INVERTER_ONLY,
                    List.of("relay", "switched", "automatic", "ground relay", "earth relay", "inverter")),
            Map.entry(NeutralBond.ALWAYS, List.of("permanent", "fixed")),
            Map.entry(NeutralBond.NONE, List.of("floating", "isolated", "never", "no", "IT")),
            Map.entry(ChangeoverKind.AUTOMATIC, List.of("auto", "transfer relay", "relay", "transfer switch")),
            Map.entry(
                    ChangeoverKind.MANUAL, List.of("switch", "hand", "rotary", "changeover switch", "transfer switch")),
            Map.entry(ChangeoverKind.NONE, List.of("no")),
            Map.entry(
                    ChargeKind.SHORE_CHARGER,
                    List.of("mains", "mains charger", "shore", "shore power", "charger", "battery charger")),
            Map.entry(ChargeKind.ALTERNATOR, List.of("engine", "engine alternator", "DC-DC", "DC-DC charger")),
            Map.entry(ChargeKind.SOLAR, List.of("PV", "photovoltaic", "panel", "solar panel", "MPPT", "PWM")),
            Map.entry(ChargeKind.GENERATOR, List.of("genset", "generator charger")),
            Map.entry(ChargeKind.WIND, List.of("wind turbine", "turbine", "wind generator")),
            Map.entry(Source.INVERTER, List.of("battery")),
            Map.entry(Source.SHORE, List.of("mains", "shore power", "grid", "hook-up")),
            Map.entry(Source.GENERATOR, List.of("genset")),
            Map.entry(Source.NOTHING, List.of("none", "off")),
            Map.entry(
                    LoadKind.HEATING,
                    List.of("heat", "heater", "heating element", "element", "resistive", "immersion heater")),
            Map.entry(LoadKind.MOTOR, List.of("compressor", "pump", "fan", "inductive", "fridge", "refrigerator")),
            Map.entry(
                    LoadKind.ELECTRONICS,
                    List.of("electronic", "switched power supply", "SMPS", "computer", "charger", "LED")),
            Map.entry(LoadKind.MICROWAVE, List.of("microwave oven")),
            Map.entry(LoadKind.MEDICAL, List.of("medicine", "CPAP", "health", "life support")),
            Map.entry(
                    TakeOff.OPPOSITE_ENDS, List.of("diagonal", "diagonally", "cross", "opposite", "opposite corners")),
            Map.entry(TakeOff.SAME_END, List.of("one end", "same side", "same battery")),
            Map.entry(TakeOff.BUSBAR, List.of("bus", "bus bar", "busbars", "posts", "common bar")),
            Map.entry(WhenShoreFails.TAKE_OVER, List.of("on", "automatic", "start", "uninterruptible", "UPS")),
            Map.entry(WhenShoreFails.STAY_OFF, List.of("off", "manual")),
            Map.entry(TestKind.RCD_TRIP, List.of("RCD", "RCD time", "RCD trip time", "trip time", "GFCI trip")),
            Map.entry(TestKind.RCD_BUTTON, List.of("RCD", "test button", "RCD test button", "GFCI button")),
            Map.entry(TestKind.VOLTAGE_DROP, List.of("volt drop", "drop", "cable drop")),
            Map.entry(TestKind.INSULATION, List.of("IR", "insulation resistance")),
            Map.entry(
                    TestKind.EARTH_CONTINUITY,
                    List.of("continuity", "earth", "R1+R2", "ground continuity", "protective conductor")),
            Map.entry(TestKind.POLARITY, List.of("live polarity", "reverse polarity")),
            Map.entry(TestKind.NEUTRAL_BOND, List.of("bond", "N-PE", "neutral-earth bond", "neutral-ground bond")),
            Map.entry(TestKind.SHORE_LOST, List.of("changeover", "transfer", "mains failure", "shore fails")),
            Map.entry(TestKind.LEAKAGE, List.of("leakage current", "earth leakage", "ground leakage")),
            Map.entry(TestKind.JOINT_TEMPERATURE, List.of("joint temp", "thermal", "thermography", "hot spot")),
            Map.entry(TestKind.REST_VOLTAGE, List.of("OCV", "open circuit voltage", "resting voltage")),
            Map.entry(Outcome.PASSED, List.of("pass", "OK", "good")),
            Map.entry(Outcome.FAILED, List.of("fail", "not OK", "bad")),
            Map.entry(Pole.POSITIVE, List.of("plus", "+", "pos")),
            Map.entry(Pole.NEGATIVE, List.of("minus", "-", "neg")),
            Map.entry(WireColour.GREEN, List.of("green-yellow", "green and yellow", "yellow-green")),
            Map.entry(WireColour.GREY, List.of("gray")),
            Map.entry(Height.LOW, List.of("bottom", "floor", "down")),
            Map.entry(Height.HIGH, List.of("top", "ceiling", "up")),
            Map.entry(Side.OUTSIDE, List.of("out", "front")),
            Map.entry(Side.INSIDE, List.of("in", "back")),
            Map.entry(PaperKind.A4, List.of("DIN A4", "ISO A4", "A5")),
            Map.entry(PaperKind.LETTER, List.of("US letter", "American letter", "half letter")),
            Map.entry(StockPrinting.INKJET, List.of("ink", "ink-jet")),
            Map.entry(StockPrinting.THERMAL_TRANSFER, List.of("thermal", "ribbon", "transfer")),
            Map.entry(StockPrinting.DIRECT_THERMAL, List.of("thermal", "direct")),
            Map.entry(StockPrinting.ENGRAVING, List.of("engraved", "cut")),
            Map.entry(Provenance.MEASURED, List.of("meter", "tested", "measurement")),
            Map.entry(Provenance.PLATE, List.of("nameplate", "rating plate", "data plate", "label")),
            Map.entry(Provenance.TOLD, List.of("owner", "said", "reported", "hearsay")),
            Map.entry(Provenance.ASSUMED, List.of("guess", "guessed", "estimate", "estimated", "typical")));

    private static final Pattern BETWEEN_WORDS = Pattern.compile("[-_ ]");

    private TradeWords() {}

    /**
     * The values that the trade means by a word, in the order in which they are allowed; capitals, hyphens and spaces
     * make no difference.
     *
     * @return empty if the trade has no such word for any of them
     */
    static List<String> meant(Class<?> type, String word) {
        String plain = plain(word);
        List<String> meant = new ArrayList<>();
        for (Object constant : type.getEnumConstants()) {
            if (constant instanceof Enum<?> value
                    && OTHER_WORDS.getOrDefault(value, List.of()).stream()
                            .anyMatch(other -> plain(other).equals(plain))) {
                meant.add(Names.of(value));
            }
        }
        return meant;
    }

    private static String plain(String word) {
        String without = BETWEEN_WORDS.matcher(word).replaceAll("");
        return (without.isEmpty() ? word : without).toLowerCase(Locale.ROOT);
    }
}
