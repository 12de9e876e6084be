package org.quaybook;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which packages users of the library may lean on: said in each one's description, and closed under their signatures. */
class OpenPackagesTest {

    private static final Path SOURCES = Path.of("src/main/java");
    private static final String ALL = "org.quaybook";

    private static final String OPEN = " * <p>Open to users of the library.\n";
    private static final String CLOSED = " * <p>Not for users of the library: may change without notice.\n";

    private static final Set<String> OPENED = Set.of(
            "org.quaybook.api",
            "org.quaybook.calc",
            "org.quaybook.checks",
            "org.quaybook.diag",
            "org.quaybook.figures",
            "org.quaybook.job",
            "org.quaybook.pack.workings",
            "org.quaybook.quantity",
            "org.quaybook.reference",
            "org.quaybook.text");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(ALL);

    /** What package-info.java says of each package that holds code. */
    private static Map<String, String> descriptions() {
        Map<String, String> descriptions = new TreeMap<>();
        try (Stream<Path> all = Files.walk(SOURCES)) {
            for (Path file : all.filter(it -> it.endsWith("package-info.java")).toList()) {
                String name = SOURCES.relativize(file.getParent()).toString().replaceAll("[/\\\\]", ".");
                descriptions.put(name, Files.readString(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        assertThat(descriptions.remove(ALL))
                .as("the overview, which holds no code")
                .isNotNull();
        return descriptions;
    }

    private static Set<String> closed() {
        Set<String> closed = new TreeSet<>(descriptions().keySet());
        closed.removeAll(OPENED);
        return closed;
    }

    @Test
    void everyPackageSaysForWhomItIs() {
        Map<String, String> descriptions = descriptions();
        assertThat(descriptions.keySet())
                .containsAll(OPENED)
                .containsExactlyInAnyOrderElementsOf(CLASSES.stream()
                        .map(JavaClass::getPackageName)
                        .filter(name -> !name.equals(ALL))
                        .collect(Collectors.toSet()));
        descriptions.forEach((name, text) -> {
            boolean open = OPENED.contains(name);
            assertThat(text).as(name).contains(open ? OPEN : CLOSED).doesNotContain(open ? CLOSED : OPEN);
        });
    }

    @Test
    void thePublishedPagesLeaveTheOthersOut() throws IOException {
        Pattern left = Pattern.compile("<sourceFileExclude>(.*)/\\*\\.java</sourceFileExclude>");
        assertThat(left.matcher(Files.readString(Path.of("pom.xml")))
                        .results()
                        .map(found -> found.group(1).replace('/', '.')))
                .containsExactlyInAnyOrderElementsOf(closed());
    }

    @Test
    void whatIsOpenMentionsNothingElse() {
        classes()
                .that()
                .resideInAnyPackage(OPENED.toArray(String[]::new))
                .and()
                .arePublic()
                .should(mentionOnlyOpenTypes())
                .because("who may use a type must be able to name what it gives and takes")
                .check(CLASSES);
    }

    private static ArchCondition<JavaClass> mentionOnlyOpenTypes() {
        return new ArchCondition<>("mention only types of open packages in what users see") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                type.getSuperclass().ifPresent(it -> mention(type, it, events));
                type.getInterfaces().forEach(it -> mention(type, it, events));
                type.getFields().stream()
                        .filter(field -> seen(field.getModifiers()))
                        .map(JavaField::getType)
                        .forEach(it -> mention(type, it, events));
                type.getCodeUnits().stream()
                        .filter(unit -> seen(unit.getModifiers()))
                        .flatMap(unit -> mentioned(unit))
                        .forEach(it -> mention(type, it, events));
            }
        };
    }

    private static boolean seen(Set<JavaModifier> modifiers) {
        return modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED);
    }

    private static Stream<JavaType> mentioned(JavaCodeUnit unit) {
        return Stream.of(
                        Stream.of(unit.getReturnType()),
                        unit.getParameterTypes().stream(),
                        unit.getExceptionTypes().stream())
                .flatMap(it -> it);
    }

    private static void mention(JavaClass by, JavaType type, ConditionEvents events) {
        for (JavaClass raw : type.getAllInvolvedRawTypes()) {
            JavaClass named = raw.getBaseComponentType();
            boolean ours = named.getPackageName().startsWith(ALL);
            events.add(new SimpleConditionEvent(
                    by,
                    !ours || OPENED.contains(named.getPackageName()),
                    by.getName() + " mentions " + named.getName()));
        }
    }
}
