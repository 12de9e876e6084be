package org.quaybook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;
import org.quaybook.pack.PackFolder;
import org.quaybook.pack.site.NotPublished;
import org.quaybook.pack.site.RecordIndex;
import org.quaybook.pack.site.Site;
import org.quaybook.proof.Manifest;
import org.quaybook.proof.PrivateKeyFile;
import org.quaybook.proof.Refused;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quaybook record}. */
@Command(
        name = "record",
        mixinStandardHelpOptions = true,
        header = "Publishes packs: signs them and puts their records into a folder for a web host.",
        description = {
            "",
            "Signs each pack, which makes it issued, and puts its record into the folder of all records. An earlier revision "
                    + "stays there unaltered and can be reached from the new one. A pack that is older than what is published, "
                    + "or says otherwise under the same revision, is refused.",
            ""
        },
        footer = {"", "Exit codes: 0 all are published; 2 a pack was refused, the others are published; 3 not written."
        })
final class RecordCommand implements Callable<Integer> {

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "PACK", description = "Folder of a pack, or a folder of packs.")
    private List<Path> packs = List.of();

    @Option(
            names = "--to",
            paramLabel = "SITE",
            defaultValue = "site",
            description = "Folder of all published records (default: ${DEFAULT-VALUE}).")
    private Path to = Path.of("site");

    @Option(
            names = "--key",
            paramLabel = "FILE",
            required = true,
            description = "Private key to sign with; “quaybook key” makes one.")
    private @Nullable Path key;

    @Option(
            names = "--index",
            paramLabel = "FOLDER",
            description =
                    "Also writes a page for yourself that lists the packs given and where their records are. Never "
                            + "inside SITE.")
    private @Nullable Path index;

    private final Words words = Words.of("en-GB");

    @Override
    public Integer call() {
        CommandLine line = Objects.requireNonNull(spec).commandLine();
        List<Path> found = packs.stream().flatMap(this::found).toList();
        try {
            PrivateKeyFile signing = PrivateKeyFile.read(
                    Objects.requireNonNull(key),
                    () -> Passphrase.of(Objects.requireNonNull(key).toString(), words));
            Site site = Site.at(to);
            if (index != null && site.holds(index)) {
                line.getErr()
                        .println(words.say(
                                org.quaybook.diag.Message.of(org.quaybook.pack.site.SiteMessage.INDEX_INSIDE)));
                return Exit.BAD_INPUT;
            }
            if (site.holds(Objects.requireNonNull(key))) {
                line.getErr().println(words.say("cli.record.key-inside"));
                return Exit.BAD_INPUT;
            }
            int worst = Exit.DONE;
            List<Path> published = new ArrayList<>();
            for (Path pack : found) {
                worst = Math.max(worst, publish(site, pack, signing, published, line));
            }
            return index == null ? worst : Math.max(worst, index(published, index, line));
        } catch (Refused e) {
            line.getErr().println(words.say(e.reason()));
            return Exit.BAD_INPUT;
        } catch (NotPublished e) {
            return refused(e, line);
        }
    }

    /** That of a pack; one that cannot be read is refused when its turn comes. */
    private static int revision(Path pack) {
        try {
            return Manifest.read(Files.readAllBytes(pack.resolve(Manifest.FILE)))
                    .revision();
        } catch (IOException | Refused e) {
            return Integer.MAX_VALUE;
        }
    }

    private int publish(Site site, Path pack, PrivateKeyFile signing, List<Path> published, CommandLine line) {
        try {
            Site.Outcome outcome = site.publish(pack, signing);
            line.getOut().println(words.say("cli.record." + outcome.name().toLowerCase(Locale.ROOT), pack.toString()));
            if (outcome != Site.Outcome.EARLIER) {
                published.add(pack);
            }
            return Exit.DONE;
        } catch (NotPublished e) {
            return refused(e, line);
        }
    }

    private int index(List<Path> published, Path folder, CommandLine line) {
        try {
            PackFolder.write(folder, RecordIndex.PAGE, RecordIndex.of(published, words));
            line.getOut()
                    .println(words.say(
                            "cli.record.index", folder.resolve(RecordIndex.PAGE).toString()));
            return Exit.DONE;
        } catch (PackFolder.NotWritten e) {
            report(e.diagnostic(), line);
            return Exit.NOT_WRITTEN;
        } catch (NotPublished e) {
            return refused(e, line);
        }
    }

    private int refused(NotPublished e, CommandLine line) {
        report(e.diagnostic(), line);
        return e.bySystem() ? Exit.NOT_WRITTEN : Exit.BAD_INPUT;
    }

    private void report(Diagnostic diagnostic, CommandLine line) {
        new Report(line.getErr(), words, line.getColorScheme().ansi()).problems(List.of(diagnostic));
    }

    /** A folder without a manifest stands for the packs in it, earlier revisions first. */
    private Stream<Path> found(Path given) {
        if (Files.exists(given.resolve(Manifest.FILE)) || !Files.isDirectory(given)) {
            return Stream.of(given);
        }
        try (Stream<Path> inside = Files.list(given)) {
            List<Path> packed = inside.filter(folder -> Files.exists(folder.resolve(Manifest.FILE)))
                    .sorted(Comparator.comparingInt(RecordCommand::revision).thenComparing(Comparator.naturalOrder()))
                    .toList();
            if (packed.isEmpty()) {
                throw new ParameterException(
                        Objects.requireNonNull(spec).commandLine(), words.say("cli.record.no-pack", given.toString()));
            }
            return packed.stream();
        } catch (IOException e) {
            throw new ParameterException(
                    Objects.requireNonNull(spec).commandLine(), words.say("cli.record.no-pack", given.toString()), e);
        }
    }
}
