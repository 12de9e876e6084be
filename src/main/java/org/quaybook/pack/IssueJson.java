package org.quaybook.pack;

import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.quaybook.checks.Assessment;
import org.quaybook.job.Header;
import org.quaybook.proof.Digest;
import org.quaybook.proof.Manifest;

/** What was issued: job, revision, date, the revision before and the SHA-256 of every other file of the pack. */
final class IssueJson {

    private IssueJson() {}

    static byte[] of(Assessment it, Map<String, byte[]> files, Optional<Manifest.Previous> previous, String version) {
        Header job = it.job().job();
        NavigableMap<String, String> digests = new TreeMap<>();
        files.forEach((path, content) -> digests.put(path, Digest.of(content)));
        return new Manifest(
                        "quaybook " + version,
                        job.number(),
                        job.record().toString(),
                        job.revision(),
                        job.date(),
                        previous,
                        digests)
                .json();
    }
}
