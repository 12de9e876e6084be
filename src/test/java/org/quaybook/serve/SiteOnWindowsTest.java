package org.quaybook.serve;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A file system that finds a name however it is written, and takes paths for equal that differ in capitals only. */
class SiteOnWindowsTest {

    private static final String CODE = "9F3K7TWMX2QA6HCED1RBY";

    @Test
    void aFileHasOneNameOnly() throws IOException {
        try (FileSystem windows = Jimfs.newFileSystem(Configuration.windows())) {
            Path folder = windows.getPath("C:\\site");
            Path record = Files.createDirectories(folder.resolve(CODE));
            Files.createDirectory(record.resolve("revision-1"));
            for (String name : new String[] {"index.html", "revision-1/index.html"}) {
                Files.writeString(record.resolve(name), "<!doctype html>");
            }
            assertThat(Files.exists(record.resolve("INDEX.HTML"))).isTrue();
            Site site = new Site(folder, typed -> Optional.of(typed.toUpperCase(Locale.ROOT)));
            assertThat(at(site, CODE + "/index.html")).isInstanceOf(Site.Document.class);
            assertThat(at(site, CODE + "/revision-1/")).isInstanceOf(Site.Document.class);
            assertThat(at(site, CODE + "/Index.html")).isEqualTo(new Site.Nothing());
            assertThat(at(site, CODE + "/revision-1/INDEX.html")).isEqualTo(new Site.Nothing());
        }
    }

    private static Site.Place at(Site site, String path) throws IOException {
        return site.at(AskedPath.of("/" + path).orElseThrow());
    }
}
