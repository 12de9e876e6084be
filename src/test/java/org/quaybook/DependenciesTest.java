package org.quaybook;

import static java.util.stream.Collectors.toCollection;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Enumeration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Holds docs/dependencies.md and the licences that we ship against what Maven resolved: the jars and their poms. */
class DependenciesTest {

    private static final Path PAGE = Path.of("docs/dependencies.md");
    private static final Path TEXTS = Path.of("src/main/resources/licences");
    private static final Pattern ROW = Pattern.compile("\\| `([^`]+:[^`]+)` \\|(.*)\\|");

    private static final Pattern LICENCE_FILE =
            Pattern.compile("(?i)(.*/)?[^/]*(licen[cs]es?|notice|copying|ofl)[^/]*");

    /** In the jars of flying-saucer: licences that it is not under, and one of tests that are not in the jar. */
    private static final Pattern OF_SOMETHING_ELSE =
            Pattern.compile("META-INF/LICENSE-(L?GPL-3|GPL-2|W3C-TEST)(\\.txt)?");

    /** What poms call licences; the SPDX list's names in their usual spellings. */
    private static final Map<Pattern, String> SPDX = Map.of(
            Pattern.compile("(?i).*apache.*2.*"), "Apache-2.0",
            Pattern.compile("(?i)(the )?MIT( License)?"), "MIT",
            Pattern.compile("BSD-2-Clause"), "BSD-2-Clause",
            Pattern.compile("EPL-2\\.0"), "EPL-2.0",
            Pattern.compile("Mozilla Public License Version 2\\.0"), "MPL-2.0",
            Pattern.compile("GNU Lesser General Public License.*"), "LGPL-2.1-or-later");

    /** A library as Maven keeps it: {@code …/<group as folders>/<artifact>/<version>/<artifact>-<version>.jar}. */
    private record Library(Path jar) {

        private static final Path REPOSITORY = Path.of(property("maven.repository"));

        String name() {
            Path way = REPOSITORY.relativize(jar);
            int group = way.getNameCount() - 3;
            return way.subpath(0, group).toString().replace(File.separatorChar, '.') + ":" + way.getName(group);
        }

        Path pom() {
            return Path.of(jar.toString().replaceFirst("\\.jar$", ".pom"));
        }
    }

    private static String property(String name) {
        assertThat(System.getProperty(name)).as("set by the build: %s", name).isNotNull();
        return System.getProperty(name);
    }

    private static List<Library> shipped() {
        List<Library> libraries = Arrays.stream(property("shipped.libraries").split(File.pathSeparator))
                .map(jar -> new Library(Path.of(jar)))
                .toList();
        assertThat(libraries).hasSizeGreaterThan(10);
        return libraries;
    }

    /** The cells behind the name in each row of a section. */
    private static Map<String, List<String>> rows(String heading) throws IOException {
        String page = Files.readString(PAGE);
        int start = page.indexOf("\n## " + heading + "\n");
        assertThat(start).as(heading).isPositive();
        int end = page.indexOf("\n## ", start + 1);
        Map<String, List<String>> rows = new TreeMap<>();
        page.substring(start, end < 0 ? page.length() : end).lines().forEach(line -> {
            var row = ROW.matcher(line);
            if (row.matches()) {
                List<String> cells = Arrays.stream(row.group(2).split("\\|", -1))
                        .map(String::strip)
                        .toList();
                assertThat(rows.put(row.group(1), cells)).as("twice: %s", line).isNull();
                assertThat(cells).as(line).doesNotContain("");
            }
        });
        return rows;
    }

    private static List<String> row(Map<String, List<String>> rows, Library library) {
        List<String> row = rows.get(library.name());
        assertThat(row).as("row of %s", library.name()).isNotNull();
        return Objects.requireNonNull(row);
    }

    @Test
    void everyShippedLibraryHasARowAndNoRowNamesAnother() throws IOException {
        assertThat(rows("Shipped").keySet())
                .containsExactlyInAnyOrderElementsOf(
                        shipped().stream().map(Library::name).toList());
    }

    @Test
    void everyLibraryOfTheTestsHasARowAndNoRowNamesAnother() throws Exception {
        Document pom = xml(Path.of("pom.xml"));
        Set<String> direct = new TreeSet<>();
        for (Element dependency : elements(pom.getDocumentElement(), "dependency")) {
            if (text(dependency, "scope").equals("test") && isOutside(dependency, "profile")) {
                direct.add(text(dependency, "groupId") + ":" + text(dependency, "artifactId"));
            }
        }
        assertThat(rows("Only in the tests").keySet()).containsExactlyInAnyOrderElementsOf(direct);
    }

    @Test
    void everyPluginHasARowAndNoRowNamesAnother() throws Exception {
        Set<String> plugins = new TreeSet<>();
        for (Element plugin : elements(xml(Path.of("pom.xml")).getDocumentElement(), "plugin")) {
            String group = text(plugin, "groupId");
            if (!group.equals("org.apache.maven.plugins")) {
                plugins.add(group + ":" + text(plugin, "artifactId"));
            }
        }
        assertThat(rows("Only in the build").keySet()).containsExactlyInAnyOrderElementsOf(plugins);
    }

    @Test
    void everyRowNamesTheLicencesOfThePom() throws Exception {
        Map<String, List<String>> rows = rows("Shipped");
        for (Library library : shipped()) {
            List<String> licences = licences(library.pom());
            assertThat(licences).as(library.name()).isNotEmpty();
            for (String licence : licences) {
                String spdx = SPDX.entrySet().stream()
                        .filter(known -> known.getKey().matcher(licence).matches())
                        .map(Map.Entry::getValue)
                        .findFirst()
                        .orElse("a row for the licence “" + licence + "”");
                assertThat(row(rows, library).get(0)).as(library.name()).contains(spdx);
            }
        }
    }

    /** The pom's own, or else those of the pom it inherits from (Maven, POM reference: licenses are inherited). */
    private static List<String> licences(Path file) throws Exception {
        Element project = xml(file).getDocumentElement();
        List<String> names = elements(project, "license").stream()
                .map(licence -> text(licence, "name"))
                .toList();
        List<Element> parent = elements(project, "parent");
        if (!names.isEmpty() || parent.isEmpty()) {
            return names;
        }
        String artifact = text(parent.get(0), "artifactId");
        String version = text(parent.get(0), "version");
        return licences(Library.REPOSITORY
                .resolve(text(parent.get(0), "groupId").replace('.', '/'))
                .resolve(artifact)
                .resolve(version)
                .resolve(artifact + "-" + version + ".pom"));
    }

    @Test
    void everyLicenceAndNoticeInAJarIsAmongTheTextsOfItsRow() throws IOException {
        Map<String, List<String>> rows = rows("Shipped");
        List<String> missing = new ArrayList<>();
        for (Library library : shipped()) {
            List<String> ours = new ArrayList<>();
            for (String text : texts(row(rows, library))) {
                ours.add(words(Files.readString(TEXTS.resolve(text))));
            }
            assertThat(ours).as(library.name()).isNotEmpty();
            try (JarFile jar = new JarFile(library.jar().toFile())) {
                for (Enumeration<JarEntry> entries = jar.entries(); entries.hasMoreElements(); ) {
                    JarEntry entry = entries.nextElement();
                    if (isLicence(entry)) {
                        String theirs = words(content(jar, entry));
                        if (ours.stream().noneMatch(text -> text.contains(theirs))) {
                            missing.add(library.name() + " " + entry.getName());
                        }
                    }
                }
            }
        }
        assertThat(missing).isEmpty();
    }

    private static boolean isLicence(JarEntry entry) {
        String name = entry.getName();
        return !entry.isDirectory()
                && !name.endsWith(".class")
                && LICENCE_FILE.matcher(name).matches()
                && !OF_SOMETHING_ELSE.matcher(name).matches();
    }

    private static String content(JarFile jar, JarEntry entry) throws IOException {
        try (InputStream in = jar.getInputStream(entry)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void everyTextShippedIsNamedInARow() throws IOException {
        Set<String> named = new TreeSet<>();
        rows("Shipped").values().forEach(row -> named.addAll(texts(row)));
        try (Stream<Path> files = Files.list(TEXTS)) {
            assertThat(named)
                    .containsExactlyElementsOf(
                            files.map(file -> file.getFileName().toString()).collect(toCollection(TreeSet::new)));
        }
        for (String text : named) {
            assertThat(DependenciesTest.class.getResource("/licences/" + text))
                    .as(text)
                    .isNotNull();
        }
    }

    private static List<String> texts(List<String> row) {
        return List.of(row.get(row.size() - 1).split(", "));
    }

    /** Line breaks and indents differ from copy to copy. */
    private static String words(String text) {
        return String.join(" ", text.strip().split("\\s+"));
    }

    private static Document xml(Path file) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(file.toFile());
    }

    private static List<Element> elements(Element top, String name) {
        NodeList found = top.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    private static String text(Element element, String name) {
        return elements(element, name).stream()
                .filter(child -> child.getParentNode() == element)
                .map(child -> child.getTextContent().strip())
                .findFirst()
                .orElse("");
    }

    private static boolean isOutside(Element element, String ancestor) {
        for (var node = element.getParentNode(); node instanceof Element at; node = node.getParentNode()) {
            if (at.getTagName().equals(ancestor)) {
                return false;
            }
        }
        return true;
    }
}
