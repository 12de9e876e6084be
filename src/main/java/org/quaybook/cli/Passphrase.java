package org.quaybook.cli;

import java.io.Console;
import java.util.Arrays;
import java.util.Optional;
import org.quaybook.text.Words;

/** Asks for the passphrase of a key on the terminal, without showing it. */
final class Passphrase {

    private Passphrase() {}

    /** A new one, typed twice alike; empty without a terminal, if nothing was typed or the two differ. */
    static Optional<char[]> choose(Words words) {
        Optional<char[]> first = ask(words.say("cli.key.passphrase"));
        return first.filter(chosen -> ask(words.say("cli.key.passphrase-again"))
                .filter(again -> Arrays.equals(chosen, again))
                .isPresent());
    }

    /** Before Java 22 there is no console without a terminal; since, it has nothing to read there. */
    @SuppressWarnings("SystemConsoleNull")
    private static Optional<char[]> ask(String question) {
        Console console = System.console();
        char[] typed = console == null ? null : console.readPassword("%s ", question);
        return Optional.ofNullable(typed).filter(text -> text.length > 0);
    }

    /** That of an existing key; nothing without a terminal. */
    static char[] of(String file, Words words) {
        return ask(words.say("cli.key.passphrase-of", file)).orElse(new char[0]);
    }
}
