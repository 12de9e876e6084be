package org.quaybook.faults;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Optional;
import org.quaybook.diag.Diagnostic;
import org.quaybook.pack.PackFolder;
import org.quaybook.pack.site.NotPublished;
import org.quaybook.pack.site.Site;
import org.quaybook.proof.Manifest;
import org.quaybook.proof.PrivateKeyFile;
import org.quaybook.proof.Refused;

/**
 * A program that does nothing but write packs, or publish them, to be killed while it does. It says each time what it has
 * done.
 */
final class Writing {

    /** What it says when another run has the folder. */
    static final String BUSY = "told pack.busy";

    private static final int PAUSE_MILLIS = 20;

    private Writing() {}

    /** @param arguments what to do, where, issue of the first pack or first revision to publish, how many */
    public static void main(String[] arguments) throws Exception {
        Path place = Path.of(arguments[1]);
        int first = Integer.parseInt(arguments[2]);
        int count = Integer.parseInt(arguments[3]);
        PrintStream out = System.out;
        for (int i = first; i < first + count; i++) {
            switch (arguments[0]) {
                case "packs" -> {
                    String done = pack(place, i);
                    out.println(done);
                    if (done.startsWith(BUSY)) {
                        Thread.sleep(PAUSE_MILLIS);
                    }
                }
                case "site" -> out.println(publish(place, i, key(place)));
                default -> throw new IllegalArgumentException(arguments[0]);
            }
        }
    }

    /** The key that records in a folder are signed with. */
    static PrivateKeyFile key(Path folder) throws Refused {
        Path file = folder.resolve("key.pem");
        if (!Files.exists(file)) {
            PrivateKeyFile.draw(new SecureRandom()).write(file, new char[0]);
        }
        return PrivateKeyFile.read(file, () -> new char[0]);
    }

    /** Replaces a pack. */
    static String pack(Path target, int issue) {
        try (PackFolder folder = PackFolder.claim(target)) {
            folder.write(SmallPack.files(1, issue, Optional.empty()));
            return "done " + issue;
        } catch (PackFolder.NotWritten e) {
            return told(e.diagnostic());
        }
    }

    /** Makes the pack of a revision beside the site and publishes it. */
    static String publish(Path folder, int revision, PrivateKeyFile key) throws IOException, Refused {
        Path site = folder.resolve("site");
        Path before = site.resolve(SmallPack.CODE).resolve(Manifest.FILE);
        if (Files.exists(before) && Manifest.read(Files.readAllBytes(before)).revision() == revision) {
            before = site.resolve(SmallPack.CODE)
                    .resolve("revision-" + (revision - 1))
                    .resolve(Manifest.FILE);
        }
        Optional<Manifest.Previous> previous =
                revision == 1 ? Optional.empty() : Optional.of(Manifest.Previous.to(Files.readAllBytes(before)));
        Path pack = folder.resolve("packs").resolve("26-118-" + revision);
        try (PackFolder place = PackFolder.claim(pack)) {
            place.write(SmallPack.files(revision, 1, previous));
        } catch (PackFolder.NotWritten e) {
            return told(e.diagnostic());
        }
        try {
            Site.at(site).publish(pack, key);
            return "done " + revision;
        } catch (NotPublished e) {
            return told(e.diagnostic());
        }
    }

    private static String told(Diagnostic diagnostic) {
        return "told " + diagnostic.rule() + " " + diagnostic.message().arguments();
    }
}
