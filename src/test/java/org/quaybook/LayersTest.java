package org.quaybook;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The road is straight: who may use whom, and which package alone may touch which library. No exceptions. */
@AnalyzeClasses(packages = "org.quaybook", importOptions = ImportOption.DoNotIncludeTests.class)
class LayersTest {

    @ArchTest
    static final ArchRule stages = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("org.quaybook..")
            .withOptionalLayers(true)
            .layer("quantity")
            .definedBy("org.quaybook.quantity..")
            .layer("diag")
            .definedBy("org.quaybook.diag..")
            .layer("text")
            .definedBy("org.quaybook.text..")
            .layer("reference")
            .definedBy("org.quaybook.reference..")
            .layer("render")
            .definedBy("org.quaybook.render..")
            .layer("job")
            .definedBy("org.quaybook.job..")
            .layer("calc")
            .definedBy("org.quaybook.calc..")
            .layer("figures")
            .definedBy("org.quaybook.figures..")
            .layer("checks")
            .definedBy("org.quaybook.checks..")
            .layer("proof")
            .definedBy("org.quaybook.proof..")
            .layer("seal")
            .definedBy("org.quaybook.seal..")
            .layer("record")
            .definedBy("org.quaybook.record..")
            .layer("pack")
            .definedBy("org.quaybook.pack..")
            .layer("api")
            .definedBy("org.quaybook.api..")
            .layer("intake")
            .definedBy("org.quaybook.intake..")
            .layer("serve")
            .definedBy("org.quaybook.serve..")
            .layer("cli")
            .definedBy("org.quaybook.cli..")
            .whereLayer("quantity")
            .mayNotAccessAnyLayer()
            .whereLayer("diag")
            .mayNotAccessAnyLayer()
            .whereLayer("text")
            .mayOnlyAccessLayers("quantity", "diag")
            .whereLayer("reference")
            .mayOnlyAccessLayers("quantity")
            .whereLayer("render")
            .mayOnlyAccessLayers("diag")
            .whereLayer("job")
            .mayOnlyAccessLayers("quantity", "diag")
            .whereLayer("proof")
            .mayOnlyAccessLayers("diag")
            .whereLayer("seal")
            .mayNotAccessAnyLayer()
            .whereLayer("calc")
            .mayOnlyAccessLayers("quantity", "reference")
            .whereLayer("figures")
            .mayOnlyAccessLayers("job", "calc", "quantity", "diag", "reference")
            .whereLayer("checks")
            .mayOnlyAccessLayers("figures", "job", "calc", "quantity", "diag", "reference")
            .whereLayer("record")
            .mayOnlyAccessLayers(
                    "figures",
                    "checks",
                    "render",
                    "text",
                    "job",
                    "calc",
                    "quantity",
                    "diag",
                    "reference",
                    "proof",
                    "seal")
            .whereLayer("api")
            .mayOnlyAccessLayers("pack", "job", "figures", "checks", "text", "diag")
            .whereLayer("intake")
            .mayOnlyAccessLayers("job", "quantity", "diag", "reference")
            .whereLayer("serve")
            .mayOnlyAccessLayers("diag")
            .whereLayer("cli")
            .mayOnlyAccessLayers(
                    "api",
                    "pack",
                    "intake",
                    "serve",
                    "job",
                    "figures",
                    "checks",
                    "text",
                    "diag",
                    "quantity",
                    "reference",
                    "proof")
            .as("each stage uses only the stages before it, so that a change of wording never reaches a formula");

    @ArchTest
    static final ArchRule yaml = only("org.quaybook.job", "com.fasterxml.jackson.dataformat..", "org.yaml..")
            .because("only the job reader knows YAML");

    @ArchTest
    static final ArchRule drawing = only(
                    "org.quaybook.render",
                    "com.lowagie..",
                    "org.xhtmlrenderer..",
                    "com.github.weisj..",
                    "com.google.zxing..",
                    "freemarker..")
            .because("moving to another renderer must be a change in one package");

    @ArchTest
    static final ArchRule terminal =
            only("org.quaybook.cli", "picocli..").because("only the way in knows the command line");

    @ArchTest
    static final ArchRule web =
            only("org.quaybook.serve", "org.eclipse.jetty..").because("only the server of records knows HTTP");

    @ArchTest
    static final ArchRule pureFormulas = noClasses()
            .that()
            .resideInAnyPackage("org.quaybook.calc..", "org.quaybook.quantity..", "org.quaybook.checks..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.util.logging..")
            .because("formulas and checks neither read nor write");

    @ArchTest
    static final ArchRule noClock = noClasses()
            .that()
            .resideOutsideOfPackage("org.quaybook.cli..")
            .should()
            .callMethod(java.time.LocalDate.class, "now")
            .orShould()
            .callMethod(java.time.Instant.class, "now")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .because("same job, same bytes: only a new job file asks the clock for its date");

    @ArchTest
    static final ArchRule keys = only("org.quaybook.proof", "java.security.spec..", "java.net.http..")
            .because("keys and what comes over the network are read in one place, strictly");

    @ArchTest
    static final ArchRule ciphers = noClasses()
            .that()
            .resideOutsideOfPackages("org.quaybook.proof..", "org.quaybook.seal..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.crypto..")
            .because(
                    "keys are protected where they are read, records where they are sealed, and nothing is ciphered elsewhere");

    private static com.tngtech.archunit.lang.syntax.elements.ClassesShouldConjunction only(
            String home, String... libraries) {
        return noClasses()
                .that()
                .resideOutsideOfPackage(home + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(libraries);
    }

    @ArchTest
    static final ArchRule marked = classes()
            .that()
            .haveSimpleName("package-info")
            .should()
            .beAnnotatedWith(org.jspecify.annotations.NullMarked.class)
            .because("null is the visible exception");
}
