package org.quaybook.record;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.quaybook.calc.Drift;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.TripTime;
import org.quaybook.figures.BaselineFigures.Item;
import org.quaybook.figures.BaselineFigures.Reading;
import org.quaybook.figures.BaselineRule;
import org.quaybook.job.Given;
import org.quaybook.job.TestKind;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Kind;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Stated;
import org.quaybook.reference.TestLimits;
import org.quaybook.text.Words;

/**
 * The readings of the handover for a later visit: each with from where on it has moved, and as data for the page's script,
 * which compares what is typed and takes every number from here.
 */
public final class BaselineSheet {

    private static final double OHMS_PER_MEGOHM = 1e6;
    private static final double VOLTS_PER_MILLIVOLT = 1e-3;

    private final Assessment it;
    private final Words words;

    public BaselineSheet(Assessment assessment, Words words) {
        this.it = assessment;
        this.words = words;
    }

    /** Each number that a visit reads, those that nobody has read yet among them. */
    public List<Map<String, Object>> rows() {
        return it.figures().baseline().items().stream().map(this::row).toList();
    }

    private Map<String, Object> row(Item item) {
        return new Rows()
                .put("what", words.say(item.subject()))
                .put(
                        "expected",
                        item.predicted()
                                .map(figure -> words.word(figure.stated()))
                                .orElse(""))
                .put("handover", item.first().map(this::reading).orElse(""))
                .put("latest", item.latest().map(this::reading).orElse(""))
                .put("latestOn", item.latest().map(this::day).orElse(""))
                .put("moved", moved(item))
                .put("fields", fields(item.kind()))
                .put(
                        "data",
                        item.rule().map(rule -> data(item, rule).toString()).orElse(""))
                .map();
    }

    /** What has to be written down for a number to be compared. */
    private List<Map<String, Object>> fields(TestKind kind) {
        List<Map<String, Object>> fields = new ArrayList<>();
        fields.add(field(
                "reading", words.say("record.baseline.reading", usual(kind).get(0))));
        switch (kind) {
            case BANK_DROP, VOLTAGE_DROP, JOINT_DROP, INVERTER_VOLTAGE ->
                fields.add(field("load", words.say("record.baseline.load")));
            case JOINT_TEMPERATURE -> {
                fields.add(field("load", words.say("record.baseline.load")));
                fields.add(field("air", words.say("record.baseline.air")));
            }
            default -> {}
        }
        return fields;
    }

    private static Map<String, Object> field(String name, String label) {
        return new Rows().put("field", name).put("label", label).map();
    }

    private String day(Reading reading) {
        return reading.test().on() == null ? "" : words.date(reading.test().on());
    }

    private String reading(Reading reading) {
        String read = words.word(Stated.asGiven(reading.reading()));
        return Given.maybe(reading.test().at())
                .map(at -> words.say("record.baseline.at", read, Stated.asGiven(at)))
                .orElse(read);
    }

    private String moved(Item item) {
        boolean falls = item.rule().filter(BaselineRule::fallsOnMeter).isPresent();
        return item.movedFrom()
                .map(from -> words.say(falls ? "record.baseline.down" : "record.baseline.up", from.stated()))
                .orElse("");
    }

    /** Numbers are in canonical units, and in the form that is compared. */
    private ObjectNode data(Item item, BaselineRule rule) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("form", rule.form().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .put("first", rule.limits().first())
                .put("up", rule.limits().up())
                .put("down", rule.limits().down())
                .put("tolerance", rule.limits().tolerance())
                .put("noise", Drift.NOISE)
                .put("blur", rule.blur())
                .put("blurOfLoad", rule.blurOfLoad());
        if (rule.smallerIsWorse()) {
            node.put("falling", true);
        }
        if (Double.isFinite(rule.ceiling())) {
            node.put("ceiling", rule.ceiling());
        }
        if (item.kind() == TestKind.REST_VOLTAGE) {
            node.put("rest", true);
        }
        rule.load().ifPresent(load -> node.put("load", load.amperes()));
        least(item.kind()).ifPresent(least -> node.put("least", least));
        most(item, rule).ifPresent(most -> node.put("most", most));
        ObjectNode units = node.putObject("units");
        usual(item.kind())
                .forEach(symbol ->
                        units.put(symbol, kind(item).unit(symbol).orElseThrow().factor()));
        return node;
    }

    private static Kind<? extends Quantity> kind(Item item) {
        return item.first().orElseThrow().reading().kind();
    }

    /** The unit that a meter shows, then others that it may show. */
    private static List<String> usual(TestKind kind) {
        return switch (kind) {
            case JOINT_DROP -> List.of("mV", "V");
            case RCD_TRIP -> List.of("ms", "s");
            case LEAKAGE -> List.of("mA", "A");
            case INSULATION -> List.of("MΩ", "kΩ", "Ω");
            case EARTH_CONTINUITY, NEUTRAL_BOND -> List.of("Ω", "mΩ");
            case JOINT_TEMPERATURE -> List.of("°C");
            default -> List.of("V", "mV");
        };
    }

    private static OptionalDouble least(TestKind kind) {
        return kind == TestKind.INSULATION
                ? OptionalDouble.of(limit("insulation", true) * OHMS_PER_MEGOHM)
                : OptionalDouble.empty();
    }

    /** The largest that may stand, whatever the handover read; for a joint as it would be at full load. */
    private OptionalDouble most(Item item, BaselineRule rule) {
        Current worst = it.figures().inverter().worstCurrent().value();
        return switch (item.kind()) {
            case RCD_TRIP ->
                OptionalDouble.of(TripTime.most(item.first().orElseThrow().test(), it.job(), it.tables())
                        .canonical());
            case EARTH_CONTINUITY -> OptionalDouble.of(limit("earth-continuity", false));
            case NEUTRAL_BOND -> OptionalDouble.of(limit("bond-inverter", false));
            case JOINT_DROP -> OptionalDouble.of(limit("joint-drop", false) * VOLTS_PER_MILLIVOLT / worst.amperes());
            case JOINT_TEMPERATURE -> {
                double load = rule.load().orElseThrow().ratioTo(worst);
                yield OptionalDouble.of(limit("joint-rise", false) * load * load);
            }
            default -> OptionalDouble.empty();
        };
    }

    private static double limit(String name, boolean least) {
        var limit = TestLimits.standard().of(name);
        return (least ? limit.least() : limit.most()).orElseThrow();
    }
}
