package org.quaybook.dist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The archives and the Debian package, unpacked where nothing may be written, and used by somebody who owns nothing. */
class InstalledIT {

    private static final String DEMO = "lantern-moth";

    @TempDir
    static Path folder;

    private static Path home;
    private static Path work;
    private static Path clonesPacks;

    /** Its own name in front. */
    private static Path archive(String ending) {
        Path product = Installed.product("archive");
        return product.resolveSibling(product.getFileName() + ending);
    }

    @BeforeAll
    static void unpacked() throws Exception {
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        Path office = Files.createDirectory(folder.resolve("Büro Süd"));
        Installed.run(office, List.of("tar", "-xzf", archive(".tar.gz").toString()));
        Installed.run(office, List.of("chmod", "-R", "a-w", office.toString()));
        home = office.resolve(archive("").getFileName());
        work = Files.createDirectory(folder.resolve("work"));
        Files.setPosixFilePermissions(work, PosixFilePermissions.fromString("rwxrwxrwx"));
        clonesPacks = folder.resolve("clone");
        Installed.run(
                Path.of("").toAbsolutePath(),
                List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Djava.awt.headless=true",
                        "-cp",
                        "target/quaybook.jar",
                        "org.quaybook.cli.Main",
                        "pack",
                        "demo-jobs/" + DEMO,
                        "--to",
                        clonesPacks.toString()));
    }

    /** Neither home nor language is set, as for a service. */
    @Test
    void makesTheSamePackAsTheClone() throws Exception {
        Installed nobody = Installed.at(home.resolve("quaybook"), work).bySomebodyElse();
        Installed.Ended ended =
                nobody.run("pack", home.resolve("demo-jobs/" + DEMO).toString(), "--to", "Päckchen");
        assertThat(ended.err()).isEmpty();
        assertThat(ended.code()).isZero();
        same(work.resolve("Päckchen"), clonesPacks);
    }

    /** Run through the link in usr/bin. */
    @Test
    void makesTheSamePackFromTheDebianPackage() throws Exception {
        Path root = Files.createDirectory(folder.resolve("root"));
        Path deb = Installed.product("debian.package");
        Installed.run(folder, List.of("dpkg-deb", "-x", deb.toString(), root.toString()));
        Installed nobody = Installed.at(root.resolve("usr/bin/quaybook"), work).bySomebodyElse();
        Path demo = root.resolve("usr/share/doc/quaybook/examples/" + DEMO);
        Installed.Ended ended = nobody.run("pack", demo.toString(), "--to", "from-deb");
        assertThat(ended.err()).isEmpty();
        assertThat(ended.code()).isZero();
        same(work.resolve("from-deb"), clonesPacks);
        assertThat(Installed.contents(root).keySet())
                .contains(
                        "usr/share/bash-completion/completions/quaybook",
                        "usr/share/doc/quaybook/changelog.gz",
                        "usr/share/doc/quaybook/copyright",
                        "usr/share/doc/quaybook/docs/install.md",
                        "usr/share/man/man1/quaybook.1.gz",
                        "usr/share/zsh/vendor-completions/_quaybook");
        assertThat(unzipped(root.resolve("usr/share/man/man1/quaybook.1.gz")))
                .isEqualTo(Files.readAllBytes(home.resolve("man/man1/quaybook.1")));
        assertThat(unzipped(root.resolve("usr/share/doc/quaybook/changelog.gz")))
                .isEqualTo(Files.readAllBytes(home.resolve("CHANGELOG.md")));
        for (String line : Installed.run(folder, List.of("dpkg-deb", "-c", deb.toString()))
                .lines()
                .toList()) {
            String mode = line.substring(0, 10);
            assertThat(line)
                    .contains(" root/root ")
                    .matches(it -> mode.startsWith("l")
                            || mode.equals(
                                    it.endsWith("/share/quaybook/quaybook")
                                            ? "-rwxr-xr-x"
                                            : mode.startsWith("d") ? "drwxr-xr-x" : "-rw-r--r--"));
        }
    }

    private static byte[] unzipped(Path file) throws IOException {
        try (InputStream in = new GZIPInputStream(Files.newInputStream(file))) {
            return in.readAllBytes();
        }
    }

    private static void same(Path one, Path other) {
        Map<String, byte[]> files = Installed.contents(one);
        assertThat(files.keySet())
                .hasSizeGreaterThan(20)
                .isEqualTo(Installed.contents(other).keySet());
        Installed.contents(other)
                .forEach((name, content) -> assertThat(files.get(name)).as(name).isEqualTo(content));
    }

    @Test
    void bothArchivesHoldTheSame() throws IOException {
        Map<String, byte[]> zipped = new TreeMap<>();
        try (InputStream in = Files.newInputStream(archive(".zip"));
                ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (!entry.isDirectory()) {
                    zipped.put(entry.getName(), zip.readAllBytes());
                }
            }
        }
        Map<String, byte[]> unpacked = Installed.contents(home.getParent());
        assertThat(zipped.keySet()).isEqualTo(unpacked.keySet());
        zipped.forEach((name, content) -> assertThat(content).as(name).isEqualTo(unpacked.get(name)));
    }

    @Test
    void holdsWhatAnInstallerNeeds() throws IOException {
        Set<String> files = Installed.contents(home).keySet();
        assertThat(files)
                .contains(
                        "LICENSE",
                        "README.md",
                        "CHANGELOG.md",
                        "completion/_quaybook",
                        "completion/quaybook.bash",
                        "demo-jobs/lantern-moth/job.yaml",
                        "docs/install.md",
                        "licences/LGPL-2.1.txt",
                        "man/man1/quaybook.1",
                        "quaybook.cmd",
                        "shared/fuses.csv",
                        "templates/words/en-GB/guide.properties");
        assertThat(files).noneMatch(file -> file.startsWith("src/") || file.startsWith("target/"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(home.resolve("quaybook"))))
                .isEqualTo("r-xr-xr-x");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(home.resolve("README.md"))))
                .isEqualTo("r--r--r--");
        String windows = Files.readString(home.resolve("quaybook.cmd"));
        assertThat(windows.lines().count())
                .isEqualTo(
                        windows.chars().filter(character -> character == '\r').count());
    }

    @Test
    void bashCompletesCommandsOptionsValuesAndFolders() throws Exception {
        Path script = home.resolve("completion/quaybook.bash");
        for (Map.Entry<String, String> typed : Map.of(
                        "quaybook verif", "verify",
                        "quaybook pack --templ", "--templates",
                        "quaybook labels --also SV", "SVG",
                        "quaybook pack demo-jobs/lan", "demo-jobs/lantern-moth")
                .entrySet()) {
            String said = Installed.run(
                    home,
                    List.of(
                            "bash",
                            "-c",
                            "source \"$0\"; compopt() { :; }; COMP_WORDS=($1); COMP_CWORD=$((${#COMP_WORDS[@]} - 1)); "
                                    + "_complete_quaybook; printf '%s' \"${COMPREPLY[*]}\"",
                            script.toString(),
                            typed.getKey()));
            assertThat(said).as(typed.getKey()).isEqualTo(typed.getValue());
        }
    }

    /** In a shell of its own on a terminal of its own (zsh/zpty), where a key after Tab says what stands on the line. */
    @Test
    void zshCompletesCommandsOptionsValuesAndFolders() throws Exception {
        Path script = Files.writeString(folder.resolve("typed.zsh"), """
                zmodload zsh/zpty
                zpty shell "cd ${(q)1} && TERM=dumb zsh -f -i"
                zpty -w shell 'PS1=; fpath=($PWD/completion $fpath); autoload -Uz compinit; compinit -u -D
                  said() { print -r -- "<$BUFFER>"; }; zle -N said; bindkey "^X" said; print rea""dy'
                zpty -r shell out '*ready*'
                zpty -w -n shell "$2"$'\\t\\x18'
                zpty -r shell out '*<*>*'
                print -rn -- "${${out##*<}%%>*}"
                """);
        for (Map.Entry<String, String> typed : Map.of(
                        "quaybook verif", "quaybook verify ",
                        "quaybook pack --templ", "quaybook pack --templates ",
                        "quaybook labels --also SV", "quaybook labels --also SVG ",
                        "quaybook pack demo-jobs/lan", "quaybook pack demo-jobs/lantern-moth ")
                .entrySet()) {
            String said = Installed.run(
                    home, List.of("timeout", "60", "zsh", "-f", script.toString(), home.toString(), typed.getKey()));
            assertThat(said).as(typed.getKey()).isEqualTo(typed.getValue());
        }
    }

    @Test
    void manualPageHasNoFault() throws Exception {
        String said = Installed.run(
                home,
                List.of(
                        "mandoc",
                        "-Tlint",
                        "-Wwarning",
                        home.resolve("man/man1/quaybook.1").toString()));
        assertThat(said).isEmpty();
    }
}
