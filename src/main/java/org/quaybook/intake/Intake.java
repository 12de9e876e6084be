package org.quaybook.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Severity;
import org.quaybook.job.JobReader;
import org.quaybook.job.JobReading;
import org.quaybook.job.Vocabulary;
import org.quaybook.quantity.Frequency;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Rulebook;

/**
 * A job file in the making.
 *
 * @param answers what was answered so far
 * @param record the code of the new record
 * @param sealKey what it is sealed with; empty for a record that everybody with the code may read
 * @param date the day the file is begun, ISO 8601
 * @param language of the documents
 */
public record Intake(Answers answers, String record, Optional<String> sealKey, String date, String language) {

    private static final String INSTALLER = "installer.";

    public Intake with(Answers more) {
        return new Intake(more, record, sealKey, date, language);
    }

    /** The next question among those that are wanted; empty when all of them are answered. */
    public Optional<Question> next(Predicate<Question> wanted) {
        return Questions.next(answers, wanted);
    }

    /**
     * What is wrong with an answer, by the rules of the job file itself.
     *
     * @return empty if it will do
     */
    public List<Diagnostic> faults(Question question, String answer, Vocabulary vocabulary) {
        Intake changed = with(answers.with(question.path(), answer));
        boolean profile = question.path().startsWith(INSTALLER);
        JobReading reading = profile
                ? JobReader.parseInstaller(changed.installerText(section -> ""), "")
                : JobReader.parse(changed.text(section -> ""), "", vocabulary);
        String path = profile ? question.path().substring(INSTALLER.length()) : question.path();
        return reading.problems().stream()
                .filter(problem -> problem.severity() == Severity.ERROR)
                .filter(problem -> problem.place().path().equals(path))
                .toList();
    }

    /** The installer profile that the answers make, for a folder that has none. */
    public String installerText(UnaryOperator<String> comment) {
        return JobText.installer(answers, comment);
    }

    /**
     * The job file.
     *
     * @param comment the comment of the head or of a section
     */
    public String text(UnaryOperator<String> comment) {
        return JobText.of(answers, given(), comment);
    }

    /** What follows from the answers or is the same in every new file. */
    private Map<String, String> given() {
        Map<String, String> given = new LinkedHashMap<>();
        given.put("job.record", record);
        sealKey.ifPresent(key -> {
            given.put("job.sealed", "yes");
            given.put("job.seal-key", key);
        });
        given.put("job.revision", "1");
        given.put("job.date", date);
        given.put("job.languages", "[" + language + "]");
        given.put("job.installer", "installer.yaml");
        String rulebook = answers.of("job.rulebook").orElse("iso-13297");
        if (Rulebook.names().contains(rulebook)) {
            Rulebook rules = Rulebook.named(rulebook);
            Voltage volts = rules.mainsVoltage().value();
            Frequency hertz = rules.mainsFrequency().value();
            given.put("inverter.output.voltage", Math.round(volts.volts()) + " V");
            given.put("inverter.output.frequency", Math.round(hertz.hertz()) + " Hz");
        }
        given.put("inverter.output.wave", "sine");
        cables(given);
        mains(given);
        return given;
    }

    private void cables(Map<String, String> given) {
        for (int pole = 0; pole < 2; pole++) {
            String cable = "cables[" + pole + "].";
            String sign = pole == 0 ? "+" : "-";
            given.put(cable + "id", "B" + (pole + 1));
            given.put(cable + "from", "battery " + sign);
            given.put(cable + "to", "inverter " + sign);
        }
        answers.of("cables[0].insulation").ifPresent(it -> given.put("cables[1].insulation", it));
        answers.of("cables[0].route").ifPresent(it -> given.put("cables[1].route", it));
        given.put("fuses[0].id", "F1");
        given.put("fuses[0].protects", "[B1]");
        if (answers.of("isolators[0].where").isPresent()) {
            given.put("isolators[0].id", "S1");
            given.put("isolators[0].name", "Battery switch");
            given.put("isolators[0].isolates", "[B1]");
        }
    }

    private void mains(Map<String, String> given) {
        int circuits = answers.count("ac-circuits", "name");
        boolean rcd = circuits > 0 && answers.of("rcds[0].rating").isPresent();
        for (int i = 0; i < circuits; i++) {
            given.put("ac-circuits[" + i + "].id", "A" + (i + 1));
            given.put("ac-circuits[" + i + "].source", "inverter");
            if (rcd) {
                given.put("ac-circuits[" + i + "].rcd", "R1");
            }
        }
        if (rcd) {
            given.put("rcds[0].id", "R1");
            given.put("rcds[0].type", "A");
            given.put("rcds[0].source", "inverter");
            if (answers.of("shore.inlet").isPresent()) {
                given.put("shore.rcd", "R1");
            }
        }
    }
}
