package org.quaybook.cli;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.quaybook.proof.PrivateKeyFile;
import org.quaybook.proof.Refused;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quaybook key}. */
@Command(
        name = "key",
        mixinStandardHelpOptions = true,
        header = "Makes the key that records are signed with.",
        description = {
            "",
            "Makes an Ed25519 key pair: the private key in FILE, which only you can read, the public key in FILE.pub. Prints "
                    + "the line for the installer profile and the key's fingerprint. Replaces nothing, and makes no key "
                    + "inside a pack or a site. Keep a copy of FILE where neither fire nor thieves get it.",
            ""
        })
final class KeyCommand implements Callable<Integer> {

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "File of the private key; it must not exist yet.")
    private @Nullable Path file;

    @Option(names = "--passphrase", description = "Asks for a passphrase and protects the private key with it.")
    private boolean protect;

    private final Words words = Words.of("en-GB");

    @Override
    public Integer call() {
        CommandLine line = Objects.requireNonNull(spec).commandLine();
        Path target = Objects.requireNonNull(file);
        char[] passphrase = {};
        if (protect) {
            Optional<char[]> asked = Passphrase.choose(words);
            if (asked.isEmpty()) {
                line.getErr().println(words.say("cli.key.no-passphrase"));
                return Exit.BAD_INPUT;
            }
            passphrase = asked.get();
        }
        PrivateKeyFile key = PrivateKeyFile.draw(new SecureRandom());
        try {
            key.write(target, passphrase);
        } catch (Refused e) {
            line.getErr().println(words.say(e.reason()));
            return Exit.NOT_WRITTEN;
        }
        line.getOut()
                .println(words.say(
                        "cli.key.made",
                        target.toString(),
                        PrivateKeyFile.publicFile(target).toString()));
        line.getOut()
                .println(words.say("cli.key.fingerprint", key.verifyingKey().toString()));
        line.getOut().println(words.say("cli.key.profile"));
        line.getOut().println("public-key: " + key.verifyingKey().base64());
        line.getOut().println(words.say("cli.key.keep"));
        if (PrivateKeyFile.isOpenToOthers(target)) {
            line.getErr().println(words.say("cli.key.open", target.toString()));
        }
        return Exit.DONE;
    }
}
