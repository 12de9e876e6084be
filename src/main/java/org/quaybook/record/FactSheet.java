package org.quaybook.record;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Alike;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Finding;
import org.quaybook.figures.CircuitSources;
import org.quaybook.figures.Figure;
import org.quaybook.figures.FuseFigures;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Bank;
import org.quaybook.job.Charging;
import org.quaybook.job.Deviation;
import org.quaybook.job.Fuse;
import org.quaybook.job.Given;
import org.quaybook.job.Inverter;
import org.quaybook.job.Isolator;
import org.quaybook.job.Job;
import org.quaybook.job.Provenance;
import org.quaybook.job.Rcd;
import org.quaybook.job.Shore;
import org.quaybook.job.Socket;
import org.quaybook.job.TestResult;
import org.quaybook.proof.Fingerprint;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.text.Words;

/**
 * The facts of a job in the words of one language, as maps and lists for templates. Guide, labels and record take them
 * from here, so that a fact reads the same everywhere. Holds nothing personal: owner and berth are not in it.
 */
public final class FactSheet {

    private final Assessment it;
    private final Job job;
    private final Words words;

    public FactSheet(Assessment assessment, Words words) {
        this.it = assessment;
        this.job = assessment.job();
        this.words = words;
    }

    /** Everything, under one key a subject. */
    public Map<String, Object> all() {
        return new Rows()
                .put("job", job())
                .put("craft", craft())
                .put("installer", installer())
                .put("bank", bank())
                .put("restTable", restTable())
                .put("inverter", inverter())
                .put("supply", supply())
                .put(
                        "cables",
                        it.figures().supply().runs().stream().map(this::cable).toList())
                .put("direct", new DirectDraw(it.figures().absence().draw(), words).lines())
                .put("uncounted", new DirectDraw(it.figures().absence().draw(), words).uncounted())
                .put("fuses", it.figures().fuses().stream().map(this::fuse).toList())
                .put("mostToInterrupt", mostToInterrupt())
                .put("isolators", job.isolators().stream().map(this::isolator).toList())
                .put("shore", shore())
                .put("rcds", job.rcds().stream().map(this::rcd).toList())
                .put("circuits", job.acCircuits().stream().map(this::circuit).toList())
                .put("sockets", job.sockets().stream().map(this::socket).toList())
                .put("charging", job.charging().stream().map(this::charging).toList())
                .put("appliances", new ApplianceSheet(it, words).rows())
                .put("pastInverter", new ApplianceSheet(it, words).past())
                .put("together", new ApplianceSheet(it, words).together())
                .put("notTogether", new ApplianceSheet(it, words).notTogether())
                .put("apart", new ApplianceSheet(it, words).apart())
                .put("absence", absence())
                .put("vent", vent())
                .put("tests", job.testsAtHandover().stream().map(this::test).toList())
                .put(
                        "findings",
                        Alike.of(it.findings()).stream().map(this::finding).toList())
                .put("expiries", expiries())
                .put("scope", job.scope())
                .put("policyConditions", job.policyConditions())
                .put("ownersFirstMistake", job.ownersFirstMistake())
                .map();
    }

    private Map<String, Object> job() {
        return new Rows()
                .put("number", job.job().number())
                .put("code", job.job().record().toString())
                .put("revision", job.job().revision().toString())
                .put("date", words.date(job.job().date()))
                .put("isoDate", job.job().date().toString())
                .put("rulebook", it.tables().rules().title())
                .put("fitter", job.job().fitter())
                .map();
    }

    private Map<String, Object> craft() {
        return new Rows()
                .put("name", job.craft().name())
                .put("kind", job.craft().kind().name().toLowerCase(Locale.ROOT))
                .put("kindWord", words.term(job.craft().kind()))
                .put("type", job.craft().type())
                .put("hull", job.craft().hull())
                .map();
    }

    private Map<String, Object> installer() {
        return new Rows()
                .put("firm", it.installer().firm())
                .put("contact", it.installer().contact())
                .put("phone", it.installer().phone())
                .put("email", it.installer().email())
                .put("address", it.installer().address())
                .put("website", it.installer().website())
                .put("registration", it.installer().registration())
                .put(
                        "fingerprint",
                        it.installer().publicKey() == null
                                ? null
                                : Fingerprint.of(it.installer().publicKey()).toString())
                .map();
    }

    private Map<String, Object> bank() {
        Bank bank = job.bank();
        var figures = it.figures().bank();
        return new Rows()
                .put("chemistry", given(bank.chemistry()))
                .put("lithium", !figures.battery().leadAcid())
                .put("vented", figures.battery().vented())
                .put("leadAcid", figures.battery().leadAcid())
                .put(
                        "block",
                        words.say(
                                "facts.block",
                                given(bank.block().voltage()),
                                given(bank.block().capacity())))
                .put("layout", layout(bank))
                .put("nominal", say(figures.nominal()))
                .put("system", words.numbers().fixed(figures.system().value(), "V", 0, Rounding.NEAREST))
                .put("capacity", say(figures.capacity()))
                .put("energy", say(figures.energy()))
                .put("usableCharge", say(figures.usableCharge()))
                .put("usableEnergy", say(figures.usableEnergy()))
                .put("reserve", say(figures.reserve()))
                .put("restAtReserve", say(figures.restAtReserve()))
                .put("restFull", say(figures.restFull()))
                .put("shortCircuit", say(figures.shortCircuit()))
                .put("worstShare", say(figures.worstShare()))
                .put(
                        "fitted",
                        bank.block().fitted() == null
                                ? ""
                                : words.word(bank.block().fitted()))
                .put("serial", bank.block().serial())
                .put("takeOff", given(bank.takeOff()))
                .put("temperature", given(bank.temperature()))
                .put("torque", given(bank.torque()))
                .put("stack", given(bank.stack()))
                .put("lugHole", given(bank.lugHole()))
                .put("where", bank.where())
                .put("protection", protection(bank))
                .map();
    }

    private String layout(Bank bank) {
        int series = bank.series().known().orElse(1);
        int parallel = bank.parallel().known().orElse(1);
        String key = series > 1 && parallel > 1
                ? "facts.layout.both"
                : series > 1 ? "facts.layout.series" : parallel > 1 ? "facts.layout.parallel" : "facts.layout.one";
        return words.say(key, series, parallel);
    }

    private Object protection(Bank bank) {
        if (bank.protection() == null) {
            return "";
        }
        return new Rows()
                .put("discharge", given(bank.protection().discharge()))
                .put("cutOut", given(bank.protection().cutOut()))
                .put("chargeAbove", given(bank.protection().chargeAbove()))
                .map();
    }

    private List<Map<String, Object>> restTable() {
        Ratio reserve = it.figures().bank().reserve().value();
        return it.figures().bank().restTable().stream()
                .map(row -> new Rows()
                        .put("charge", words.word(row.stateOfCharge()))
                        .put("percent", Math.round(row.stateOfCharge().fraction() * 100))
                        .put("volts", words.numbers().fixed(row.rest().value(), "V", 2, Rounding.NEAREST))
                        .put("exactVolts", row.rest().value().volts())
                        .put("belowReserve", tenths(row.stateOfCharge()) < tenths(reserve))
                        .map())
                .toList();
    }

    /** Tenths of a per cent: 20 % reckoned in one way must not lie below 20 % reckoned in another. */
    private static long tenths(Ratio ratio) {
        return Math.round(ratio.fraction() * 1000);
    }

    private Map<String, Object> inverter() {
        Inverter inverter = job.inverter();
        var figures = it.figures().inverter();
        return new Rows()
                .put("name", inverter.name())
                .put("continuous", say(figures.continuous()))
                .put("shortTime", say(figures.shortTime()))
                .put(
                        "shortTimeFor",
                        inverter.shortTime() == null
                                ? ""
                                : given(inverter.shortTime().time()))
                .put("idle", say(figures.idle()))
                .put("alarm", say(figures.alarm()))
                .put("cutOut", say(figures.cutOut()))
                .put("restart", figures.restart() == null ? "" : say(figures.restart()))
                .put("nominalCurrent", say(figures.nominalCurrent()))
                .put("worstCurrent", say(figures.worstCurrent()))
                .put(
                        "outputVoltage",
                        Given.maybe(inverter.output().voltage())
                                .map(volts -> words.numbers().fixed(volts, "V", 0, Rounding.NEAREST))
                                .orElse(given(inverter.output().voltage())))
                .put("frequency", given(inverter.output().frequency()))
                .put("wave", given(inverter.output().wave()))
                .put("neutralBond", given(inverter.neutralBond()))
                .put(
                        "changeover",
                        inverter.changeover() == null
                                ? ""
                                : given(inverter.changeover().kind()))
                .put(
                        "whenShoreFails",
                        inverter.changeover() == null
                                ? ""
                                : given(inverter.changeover().whenShoreFails()))
                .put("takesOver", takesOver(inverter))
                .put("inputLimit", given(inverter.inputLimit()))
                .put("where", inverter.where())
                .put("serial", inverter.serial())
                .put("firmware", inverter.firmware())
                .put("access", inverter.access())
                .map();
    }

    private static boolean takesOver(Inverter inverter) {
        return inverter.changeover() != null
                && Given.maybe(inverter.changeover().whenShoreFails())
                        .map(what -> what == org.quaybook.job.WhenShoreFails.TAKE_OVER)
                        .orElse(false);
    }

    private Map<String, Object> supply() {
        var supply = it.figures().supply();
        return new Rows()
                .put("drop", say(supply.drop()))
                .put("dropByRule", say(supply.dropByRule()))
                .put("decidingDrop", say(supply.decidingDrop()))
                .put("decidingShare", say(supply.decidingShare()))
                .put("allowedDrop", say(supply.allowedDrop()))
                .put("jointDrop", say(supply.jointDrop()))
                .put("bankDrop", say(supply.bankDrop()))
                .put("resistance", say(supply.resistance()))
                .map();
    }

    private Map<String, Object> cable(RunFigures run) {
        return new Rows()
                .put("id", run.cable().id())
                .put("from", run.cable().from())
                .put("to", run.cable().to())
                .put("length", given(run.cable().length()))
                .put("conductor", words.word(run.rating().conductor()))
                .put("fitted", run.fitted())
                .put("insulation", given(run.cable().insulation()))
                .put("allowed", say(run.allowed()))
                .put("drop", say(run.drop()))
                .put("torque", given(run.cable().torque()))
                .map();
    }

    private Map<String, Object> fuse(FuseFigures fuse) {
        List<String> chargers = Stream.ofNullable(fuse.fuse())
                .flatMap(fitted -> it.figures().way().chargers(fitted).stream())
                .map(charging -> ChargerName.of(charging, words))
                .toList();
        return new Rows()
                .put("id", fuse.id())
                .put("protects", fuse.fuse() == null ? List.of() : fuse.fuse().protects())
                .put(
                        "feeds",
                        fuse.fuse() == null || !chargers.isEmpty()
                                ? ""
                                : fuse.fuse().feeds())
                .put("chargers", chargers)
                .put(
                        "through",
                        fuse.fuse() == null ? List.of() : Fuse.parts(fuse.fuse().through()))
                .put("family", fuse.family().map(words::term).orElse(""))
                .put("rating", fuse.rating().map(this::say).orElse(""))
                .put("fitted", fuse.ratingFitted())
                .put("interrupts", fuse.interrupts().map(this::say).orElse(""))
                .put("mustInterrupt", say(fuse.mustInterrupt()))
                .put("least", say(fuse.least()))
                .put("most", say(fuse.most()))
                .put("where", fuse.fuse() == null ? "" : fuse.fuse().where())
                .put("spare", fuse.fuse() == null ? "" : fuse.fuse().spare())
                .put("distance", fuse.fuse() == null ? "" : given(fuse.fuse().distance()))
                .map();
    }

    /** What any fuse of the installation must be able to interrupt: enough for whichever is replaced. */
    private String mostToInterrupt() {
        return it.figures().fuses().stream()
                .map(FuseFigures::mustInterrupt)
                .max(Comparator.comparing(Figure::value))
                .map(this::say)
                .orElse("");
    }

    private Map<String, Object> isolator(Isolator isolator) {
        return new Rows()
                .put("id", isolator.id())
                .put("name", isolator.name())
                .put("where", isolator.where())
                .put("isolates", isolator.isolates())
                .map();
    }

    private Object shore() {
        Shore shore = job.shore();
        if (shore == null) {
            return "";
        }
        return new Rows()
                .put("inlet", given(shore.inlet()))
                .put("cable", given(shore.cable()))
                .put("breaker", given(shore.breaker()))
                .put("rcd", shore.rcd())
                .put("polarityLamp", Given.isYes(shore.polarityLamp()))
                .put("galvanicIsolator", Given.isYes(shore.galvanicIsolator()))
                .put("transformer", TransformerWords.neutral(shore, words))
                .put("smallestPedestal", given(shore.smallestPedestal()))
                .put("where", shore.where())
                .map();
    }

    private Map<String, Object> rcd(Rcd rcd) {
        return new Rows()
                .put("id", rcd.id())
                .put("rating", given(rcd.rating()))
                .put("type", given(rcd.type()))
                .put("source", new RcdSources(it.job(), words).of(rcd))
                .put("where", rcd.where())
                .map();
    }

    private Map<String, Object> circuit(AcCircuit circuit) {
        return new Rows()
                .put("id", circuit.id())
                .put("name", circuit.name())
                .put("breaker", given(circuit.breaker()))
                .put("curve", given(circuit.curve()))
                .put("cable", given(circuit.cable()))
                .put(
                        "source",
                        Given.maybe(circuit.source()).isPresent()
                                ? words.list(new CircuitSources(it.job())
                                        .of(circuit).stream().map(words::term).toList())
                                : given(circuit.source()))
                .put("rcd", circuit.rcd())
                .map();
    }

    private Map<String, Object> socket(Socket socket) {
        return new Rows()
                .put("name", socket.name())
                .put("where", socket.where())
                .put("shoreOn", given(socket.shoreOn()))
                .put("shoreOff", given(socket.shoreOff()))
                .map();
    }

    private Map<String, Object> charging(Charging charging) {
        return new Rows()
                .put("name", ChargerName.of(charging, words))
                .put("kind", words.term(charging.kind()))
                .put("current", given(charging.current()))
                .put("peak", given(charging.peak()))
                .map();
    }

    private Map<String, Object> absence() {
        var absence = it.figures().absence();
        return new Rows()
                .put("leftOn", absence.leftOn())
                .put("leftOnWords", words.list(absence.leftOn()))
                .put("power", say(absence.power()))
                .put("toReserve", say(absence.toReserve()))
                .put("toReserveWorn", say(absence.toReserveWorn()))
                .put("idleToReserve", say(absence.idleToReserve()))
                .put("idlePerDay", say(absence.idlePerDay()))
                .map();
    }

    private Object vent() {
        return it.figures()
                .vent()
                .<Object>map(vent -> new Rows()
                        .put("flow", say(vent.boostFlow()))
                        .put("opening", say(vent.boostOpening()))
                        .map())
                .orElse("");
    }

    private Map<String, Object> test(TestResult test) {
        return new Rows()
                .put("test", words.term(test.test()))
                .put("of", words.list(test.of()))
                .put("source", given(test.source()))
                .put("at", given(test.at()))
                .put("result", test.result() == null ? "" : given(test.result()))
                .put("outcome", test.outcome() == null ? "" : words.term(test.outcome()))
                .put("by", test.by())
                .put("on", test.on() == null ? "" : words.date(test.on()))
                .put("instrument", test.instrument())
                .map();
    }

    private Map<String, Object> finding(Alike alike) {
        Finding finding = alike.finding();
        Optional<Deviation> accepted = finding.accepted();
        return new Rows()
                .put("check", finding.check().id())
                .put("severity", words.term(finding.severity()))
                .put("message", AlikeWords.of(alike, words.say(finding.message()), words))
                .put("remedy", words.say(finding.remedy()))
                .put("accepted", accepted.isPresent())
                .put("why", accepted.map(Deviation::why).orElse(""))
                .put("by", accepted.map(Deviation::by).orElse(""))
                .put("on", accepted.map(deviation -> words.date(deviation.on())).orElse(""))
                .map();
    }

    private List<Map<String, Object>> expiries() {
        return job.expiries().stream()
                .map(expiry -> new Rows()
                        .put("what", expiry.what())
                        .put("on", words.date(expiry.on()))
                        .map())
                .toList();
    }

    private String say(Figure<?> figure) {
        return words.word(figure.stated());
    }

    /** A value of the job in words: empty when the job leaves it out, "not seen" when nobody has seen it. */
    private String given(@Nullable Given<?> given) {
        if (given == null) {
            return "";
        }
        return given.provenance() == Provenance.NOT_SEEN
                ? words.term(Provenance.NOT_SEEN)
                : words.word(Objects.requireNonNull(given.value()));
    }
}
