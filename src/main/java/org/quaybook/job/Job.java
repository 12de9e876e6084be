package org.quaybook.job;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/** One job: everything that is known of one installation. */
@Means("One job: everything that is known of one installation.")
public record Job(
        @Means("who, when, by which rules") Header job,
        @Means("what the installation lives in") Craft craft,

        @Means("who the pack is for; never published") @Personal @Nullable Owner owner,

        @Means("the batteries") Bank bank,
        @Means("the inverter") Inverter inverter,
        @Means("DC cables between bank and inverter") List<Cable> cables,
        @Means("DC fuses and breakers") List<Fuse> fuses,
        @Means("switches that make something dead") List<Isolator> isolators,

        @Means("the shore inlet and what follows it") @Nullable Shore shore,

        @Means("an AC generator") @Nullable Generator generator,
        @Means("residual current devices") List<Rcd> rcds,
        @Means("AC circuits with their breakers") List<AcCircuit> acCircuits,

        @Means("the AC board that they are in") @Nullable AcBoard acBoard,

        @Means("earth and bonding conductors") List<Earth> earths,
        @Means("outlets and what feeds them") List<Socket> sockets,
        @Means("what charges the bank") List<Charging> charging,
        @Means("what the owner wants to run") List<Appliance> appliances,

        @Means("appliances that the owner wants to run at the same time")
        List<Together> together,

        @Means("settings as left") List<Setting> settings,
        @Means("tests done at handover") List<TestResult> tests,
        @Means("findings accepted, with the reason") List<Deviation> deviations,
        @Means("what runs out or is due, and when") List<Expiry> expiries,
        @Means("photographs of the work") List<Photo> photos,

        @Means("old work left in place, not looked at or not tested")
        List<String> scope,

        @Means("what the insurance policy asks of use and charging") @Personal
        List<String> policyConditions,

        @Means("remote accounts that go with the installation; no passwords") @Personal
        List<Account> accounts,

        @Means("what the owner did at handover") @Nullable Rehearsal rehearsal,

        @Means("what the owner will probably do wrong first, in his words") @Nullable String ownersFirstMistake,

        @Means("the texts of this job in other languages of its documents")
        List<Translation> translations,

        @Means("visits after handing over, earliest first") @Beside
        List<ServiceEntry> service,

        Place place) {
    public Job {
        cables = List.copyOf(cables);
        fuses = List.copyOf(fuses);
        isolators = List.copyOf(isolators);
        rcds = List.copyOf(rcds);
        acCircuits = List.copyOf(acCircuits);
        earths = List.copyOf(earths);
        sockets = List.copyOf(sockets);
        charging = List.copyOf(charging);
        appliances = List.copyOf(appliances);
        together = List.copyOf(together);
        settings = List.copyOf(settings);
        tests = List.copyOf(tests);
        deviations = List.copyOf(deviations);
        expiries = List.copyOf(expiries);
        photos = List.copyOf(photos);
        scope = List.copyOf(scope);
        policyConditions = List.copyOf(policyConditions);
        accounts = List.copyOf(accounts);
        translations = List.copyOf(translations);
        service = List.copyOf(service);
    }

    /** This job with its texts in a language as far as they are translated; what is reckoned from it stays the same. */
    public Job in(String language) {
        Map<String, String> texts = new HashMap<>();
        translations.stream()
                .filter(translation -> translation.language().equals(language))
                .forEach(translation -> texts.putAll(translation.byText()));
        return texts.isEmpty() ? this : new Rewriting(text -> texts.getOrDefault(text, text)).of(this);
    }

    /**
     * This job as anybody may read it: without what is {@link Personal}, and with a blank wherever another text repeats it.
     *
     * @param others further names to blank, such as the installer's contact
     * @param role what may stand for a person, such as a firm's name; empty if nothing may
     * @param blank what stands in the place of a name
     */
    public Job withoutPeople(Collection<String> others, Function<String, Optional<String>> role, String blank) {
        Stream<String> people = People.of(this).stream().filter(name -> !name.equals(Owner.WORD));
        Mentions mentions = Mentions.of(Stream.concat(people, others.stream()), blank);
        return new Rewriting(mentions::blank, role, blank).of(this);
    }

    /** The circuit that an appliance hangs on; empty where the job does not say. */
    public Optional<AcCircuit> circuitOf(Appliance appliance) {
        return acCircuits.stream()
                .filter(it -> it.id().equals(appliance.circuit()))
                .findFirst();
    }

    /** The tests done up to handing over: all but those that visits after it have added. */
    public List<TestResult> testsAtHandover() {
        Set<Place> later = service.stream()
                .flatMap(entry -> entry.readings().stream())
                .map(TestResult::place)
                .collect(Collectors.toSet());
        return tests.stream().filter(test -> !later.contains(test.place())).toList();
    }

    /** This job with tests of a later visit after its own. */
    public Job with(List<TestResult> later) {
        return with(job, settings, Stream.concat(tests.stream(), later.stream()).toList(), translations, service);
    }

    /** This job after visits: as they left it, and of the last revision. */
    public Job serviced(ServiceLog log) {
        List<ServiceEntry> visits = Serviced.entries(settings, log.entries());
        return with(
                Serviced.header(job, visits),
                Serviced.settings(settings, visits),
                Serviced.tests(tests, visits),
                Stream.concat(translations.stream(), log.translations().stream())
                        .toList(),
                visits);
    }

    private Job with(
            Header job,
            List<Setting> settings,
            List<TestResult> tests,
            List<Translation> translations,
            List<ServiceEntry> service) {
        return new Job(
                job,
                craft,
                owner,
                bank,
                inverter,
                cables,
                fuses,
                isolators,
                shore,
                generator,
                rcds,
                acCircuits,
                acBoard,
                earths,
                sockets,
                charging,
                appliances,
                together,
                settings,
                tests,
                deviations,
                expiries,
                photos,
                scope,
                policyConditions,
                accounts,
                rehearsal,
                ownersFirstMistake,
                translations,
                service,
                place);
    }
}
