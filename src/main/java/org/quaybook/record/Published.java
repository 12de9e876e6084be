package org.quaybook.record;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What anybody who scans the label may read: the whole model of the record page. Only the facts listed here get in, so
 * that a fact added elsewhere stays private until somebody lists it; and {@link PublicEdition} has taken out everyone's
 * name before.
 *
 * @param facts texts, numbers, booleans, lists and maps
 */
public record Published(Map<String, Object> facts) {

    private static final String[] OF_A_TEST = {
        "kind", "test", "of", "source", "at", "result", "limit", "limitSource", "on", "instrument"
    };

    /** The names that may be shown, by subject; a subject without names is a text or a list of texts. */
    private static final Map<String, Set<String>> LISTED = Map.ofEntries(
            subject("job", "code", "revision", "date", "isoDate", "rulebook"),
            subject("craft", "name", "kind", "kindWord", "type"),
            subject("installer", "firm", "phone", "email", "address", "website", "registration", "fingerprint"),
            subject(
                    "bank",
                    "chemistry",
                    "lithium",
                    "vented",
                    "leadAcid",
                    "layout",
                    "system",
                    "energy",
                    "reserve",
                    "shortCircuit",
                    "fitted",
                    "serial",
                    "protection",
                    "chargeAbove",
                    "where"),
            subject("restTable", "charge", "volts", "belowReserve"),
            subject(
                    "inverter",
                    "name",
                    "continuous",
                    "alarm",
                    "cutOut",
                    "restart",
                    "worstCurrent",
                    "takesOver",
                    "where",
                    "serial",
                    "firmware",
                    "access"),
            subject("supply", "drop", "allowedDrop", "jointDrop"),
            subject(
                    "fuses",
                    "id",
                    "protects",
                    "feeds",
                    "chargers",
                    "through",
                    "family",
                    "rating",
                    "fitted",
                    "interrupts",
                    "mustInterrupt",
                    "where",
                    "spare",
                    "distance"),
            subject("direct"),
            subject("leftOnBattery"),
            subject("isolators", "id", "name", "where"),
            subject(
                    "shore",
                    "inlet",
                    "cable",
                    "breaker",
                    "rcd",
                    "polarityLamp",
                    "galvanicIsolator",
                    "transformer",
                    "smallestPedestal",
                    "where"),
            subject("rcds", "id", "rating", "type", "source", "where"),
            subject("circuits", "id", "name", "breaker", "curve", "cable", "source", "rcd"),
            subject("sockets", "name", "where", "shoreOn", "shoreOff"),
            subject(
                    "appliances",
                    "name",
                    "verdictWords",
                    "runs",
                    "power",
                    "average",
                    "pulsing",
                    "time",
                    "wornTime",
                    "bar",
                    "wornBar",
                    "alarmBelow",
                    "alarmRest",
                    "alwaysAlarms",
                    "runningVoltage",
                    "ending",
                    "endsAtReserve"),
            subject("pastInverter"),
            subject("notTogether", "first", "second", "power", "onlyStart"),
            subject("apart"),
            subject("absence", "leftOn", "leftOnWords", "toReserve", "toReserveWorn", "idleToReserve", "idlePerDay"),
            subject("vent", "flow", "opening"),
            subject("findings", "severity", "message", "remedy", "accepted", "why", "on"),
            subject("expiries", "what", "on"),
            subject("scope"),
            subject("ownersFirstMistake"),
            subject("sources", "name", "where", "by", "stays"),
            subject("steps", "id", "do", "where"),
            subject("heating"),
            subject("heaviest", "name", "power"),
            subject(
                    "fittedBank",
                    "chemistry",
                    "voltage",
                    "capacity",
                    "resistance",
                    "shortCircuit",
                    "takeOff",
                    "links",
                    "health",
                    "temperature",
                    "chargeLimit",
                    "torque",
                    "stack",
                    "lugsPerStud",
                    "lugHole",
                    "protection",
                    "discharge",
                    "peak",
                    "cutOut",
                    "chargeAbove",
                    "alarmBefore",
                    "vent",
                    "inlet",
                    "outlet",
                    "leadsTo"),
            subject(
                    "fittedInverter",
                    "continuous",
                    "shortTime",
                    "idle",
                    "output",
                    "alarm",
                    "alarmDelay",
                    "cutOut",
                    "cutOutDelay",
                    "cutOutAtOnce",
                    "restart",
                    "restartDelay",
                    "hot",
                    "neutralBond",
                    "changeover",
                    "kind",
                    "time",
                    "whenShoreFails",
                    "interlocked",
                    "switchesNeutral",
                    "passThrough",
                    "inputLimit",
                    "search",
                    "searchOn",
                    "bypass",
                    "bypassTested"),
            subject(
                    "fittedCables",
                    "id",
                    "from",
                    "to",
                    "conductor",
                    "fitted",
                    "length",
                    "insulation",
                    "route",
                    "bundled",
                    "joints",
                    "torque",
                    "allowed"),
            subject(
                    "charging",
                    "name",
                    "through",
                    "current",
                    "peak",
                    "rated",
                    "currentLimited",
                    "fedBy",
                    "coldStop",
                    "temperatureSensor"),
            subject("generator", "power", "neutralBond", "where"),
            subject("settings", "device", "name", "value", "was", "on", "by", "season"),
            subject(
                    "baseline",
                    "what",
                    "expected",
                    "handover",
                    "latest",
                    "latestOn",
                    "moved",
                    "fields",
                    "field",
                    "label",
                    "data"),
            subject(
                    "service",
                    Stream.concat(
                                    Stream.of(
                                            "revision",
                                            "date",
                                            "firm",
                                            "did",
                                            "tests",
                                            "settings",
                                            "device",
                                            "name",
                                            "value",
                                            "was"),
                                    Stream.of(OF_A_TEST))
                            .toArray(String[]::new)),
            subject("tests", OF_A_TEST));

    private static Map.Entry<String, Set<String>> subject(String subject, String... names) {
        return Map.entry(subject, Set.of(names));
    }

    /** Keeps what is listed and drops the rest. */
    public Published {
        Map<String, Object> kept = new LinkedHashMap<>();
        facts.forEach((subject, value) -> {
            Set<String> names = LISTED.get(subject);
            if (names != null) {
                kept.put(subject, listed(value, names));
            }
        });
        facts = Collections.unmodifiableMap(kept);
    }

    private static Object listed(Object value, Set<String> names) {
        if (value instanceof List<?> list) {
            return list.stream().map(item -> listed(item, names)).toList();
        }
        if (value instanceof Map<?, ?> map) {
            Map<String, Object> kept = new LinkedHashMap<>();
            map.forEach((name, fact) -> {
                if (names.contains((String) name)) {
                    kept.put((String) name, listed(fact, names));
                }
            });
            return kept;
        }
        return value;
    }

    /** What may be shown of a job. */
    public static Published of(PublicEdition edition) {
        return new Published(new RecordFacts(
                        edition.edition().assessment(), edition.edition().words())
                .all());
    }
}
