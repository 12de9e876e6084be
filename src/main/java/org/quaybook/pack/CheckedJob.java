package org.quaybook.pack;

import java.util.List;
import org.quaybook.checks.Finding;

/**
 * A job and how far it came, for programs that read.
 *
 * @param job the path as the user gave it
 * @param judged its problems and, if it could be calculated, its findings
 */
public record CheckedJob(String job, Road.Judged judged) {

    List<Finding> findings() {
        return judged.assessment() == null ? List.of() : judged.assessment().findings();
    }
}
