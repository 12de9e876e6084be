package org.quaybook.pack;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import org.quaybook.diag.Message;

/** Why the system refused, for the sentence that says so. */
public final class SystemReason {

    private SystemReason() {}

    /** A message where we know what it means; otherwise the system's own text, which tells more than we could. */
    public static Object of(IOException e) {
        if (!(e instanceof FileSystemException refused) || refused.getFile() == null) {
            return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
        }
        String file = refused.getFile();
        if (e instanceof AccessDeniedException) {
            return Message.of(PackMessage.WHY_DENIED, file);
        }
        if (e instanceof NoSuchFileException) {
            return Message.of(PackMessage.WHY_MISSING, file);
        }
        if (e instanceof FileAlreadyExistsException
                || e instanceof NotDirectoryException
                || e instanceof DirectoryNotEmptyException) {
            return Message.of(PackMessage.WHY_IN_THE_WAY, file);
        }
        return refused.getReason() == null ? file : file + ": " + refused.getReason();
    }
}
