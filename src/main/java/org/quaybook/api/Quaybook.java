package org.quaybook.api;

import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;
import org.quaybook.pack.Road;

/** Where a program that uses Quaybook begins: reads jobs, with the built-in templates or with some of the installer's own. */
public final class Quaybook {

    private final @Nullable Path ownTemplates;

    private Quaybook(@Nullable Path ownTemplates) {
        this.ownTemplates = ownTemplates;
    }

    /**
     * With the built-in templates and words.
     *
     * @return the same as any other one made so
     */
    public static Quaybook standard() {
        return new Quaybook(null);
    }

    /**
     * With templates and words of the installer's own: each file takes the place of the built-in one of the same name. They
     * are read anew for each document.
     *
     * @param folder where they lie
     * @return another one; this one stays as it is
     * @throws NotDirectoryException if there is no such folder
     */
    public Quaybook withTemplates(Path folder) throws NotDirectoryException {
        if (!Files.isDirectory(folder)) {
            throw new NotDirectoryException(folder.toString());
        }
        return new Quaybook(folder);
    }

    /**
     * The version of the program, as documents and {@code issue.json} name it.
     *
     * @return that of the jar; {@code development} outside of one
     */
    public static String version() {
        return Objects.requireNonNullElse(Quaybook.class.getPackage().getImplementationVersion(), "development");
    }

    /**
     * Reads a job file and all that it names: installer profile, logo, chapter, own tables, and the service log beside it.
     *
     * @param job the job file, or a folder with a {@code job.yaml}
     * @return the job, or what is wrong with it; a file that is missing is a problem like any other
     */
    public JobRead read(Path job) {
        return new JobRead(Road.read(job), ownTemplates);
    }

    /**
     * Reads the text of a job file as if it stood in {@code job.yaml} of a folder. What it names is read from there: files of
     * that folder, below it, or one folder up.
     *
     * @param text YAML, as the file would hold it
     * @param folder where the file would lie; a {@code job.yaml} that lies there is not read
     * @return the job, or what is wrong with it
     */
    public JobRead read(String text, Path folder) {
        return new JobRead(Road.read(text, folder.resolve(Road.USUAL_JOB_NAME)), ownTemplates);
    }

    /**
     * A problem as one line in English.
     *
     * @param problem what a result or an exception names
     * @return file, line and column, both counted from 1, and the sentence
     */
    public static String sentence(Diagnostic problem) {
        return Sentences.of(problem);
    }
}
