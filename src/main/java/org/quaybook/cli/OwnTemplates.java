package org.quaybook.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** The option for templates and words of the installer's own. */
final class OwnTemplates {

    @Option(
            names = "--templates",
            paramLabel = "FOLDER",
            description =
                    "Templates and words of your own: each file takes the place of the built-in one of the same name.")
    private @Nullable Path folder;

    /**
     * The folder; null for none.
     *
     * @throws ParameterException if it is no folder
     */
    @Nullable Path read(CommandLine line, Words words) {
        if (folder != null && !Files.isDirectory(folder)) {
            throw new ParameterException(line, words.say("cli.no-templates", folder.toString()));
        }
        return folder;
    }
}
