package org.quaybook.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.SafeText;
import org.quaybook.proof.AddressCopy;
import org.quaybook.proof.Alteration;
import org.quaybook.proof.Copy;
import org.quaybook.proof.FolderCopy;
import org.quaybook.proof.Refused;
import org.quaybook.proof.Verification;
import org.quaybook.proof.Verifier;
import org.quaybook.proof.VerifyingKey;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quaybook verify}. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        header = "Says whether a pack or a record is as it was issued and signed.",
        description = {
            "",
            "Holds a pack, a site of records, the folder of one record or the copy at its address against what was issued "
                    + "and signed, with every earlier revision, and names each file that was altered, removed or added. "
                    + "Changes nothing.",
            "",
            "Without --key it can only tell that everything fits together and is signed with one key; compare the "
                    + "fingerprint that it prints with the one in the printed guide.",
            ""
        },
        footer = {"", "Exit codes: 0 as issued and signed; 1 something is not; 2 nothing to verify, or bad input."})
final class VerifyCommand implements Callable<Integer> {

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            arity = "1..*",
            paramLabel = "WHAT",
            description = "Folder of a pack, a site or a record, or the https address of a record.")
    private List<String> copies = List.of();

    @Option(
            names = "--key",
            paramLabel = "KEY",
            description =
                    "Public key that must have signed: a .pub file, or its base64 text. May be given again for a key "
                            + "that earlier revisions were signed with.")
    private List<String> keys = List.of();

    private final Words words = Words.of("en-GB");

    @Override
    public Integer call() {
        CommandLine line = Objects.requireNonNull(spec).commandLine();
        Set<VerifyingKey> trusted = new LinkedHashSet<>();
        int worst = Exit.DONE;
        try {
            for (String key : keys) {
                trusted.add(key(key));
            }
        } catch (Refused e) {
            line.getErr().println(words.say(e.reason()));
            return Exit.BAD_INPUT;
        }
        for (String copy : copies) {
            worst = Math.max(worst, verify(copy, trusted, line));
        }
        return worst;
    }

    private static VerifyingKey key(String given) throws Refused {
        // Base64 may hold slashes, so that it could be a path; nobody has a file of such a name.
        return given.length() < 60 && given.endsWith("=") && !Files.exists(Path.of(given))
                ? VerifyingKey.parse(given)
                : VerifyingKey.read(Path.of(given));
    }

    private int verify(String given, Set<VerifyingKey> trusted, CommandLine line) {
        PrintWriter out = line.getOut();
        Verification verified;
        try {
            Copy copy = AddressCopy.isAddress(given) ? AddressCopy.of(given) : FolderCopy.of(Path.of(given));
            verified = Verifier.verify(copy, trusted);
        } catch (Refused e) {
            line.getErr().println(words.say(e.reason()));
            return Exit.BAD_INPUT;
        }
        for (Verification.Issue issue : verified.issues()) {
            out.println(words.say(
                    issue.signer().isPresent() ? "cli.verify.issue" : "cli.verify.issue-unsigned",
                    issue.manifest().number(),
                    issue.manifest().record(),
                    issue.manifest().revision(),
                    issue.manifest().date().toString(),
                    issue.signer().map(VerifyingKey::toString).orElse("")));
        }
        for (Alteration alteration : verified.alterations()) {
            out.println(words.say(
                    "cli.verify.alteration",
                    SafeText.shownOnOneLine(alteration.where().isEmpty() ? given : alteration.where()),
                    words.say(alteration.what())));
        }
        verified.notes().forEach(note -> out.println(words.say(note)));
        if (!verified.isAsIssued()) {
            out.println(words.say(
                    "cli.verify.altered", given, verified.alterations().size()));
        } else if (trusted.isEmpty()) {
            out.println(words.say("cli.verify.fits", given));
        } else {
            out.println(words.say("cli.verify.as-issued", given));
        }
        if (trusted.isEmpty() && !verified.signers().isEmpty()) {
            out.println(words.say(
                    "cli.verify.compare",
                    verified.signers().stream().map(VerifyingKey::toString).collect(Collectors.joining(", "))));
        }
        return verified.isAsIssued() ? Exit.DONE : Exit.FORBIDDEN;
    }
}
