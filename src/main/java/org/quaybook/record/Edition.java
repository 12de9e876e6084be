package org.quaybook.record;

import org.quaybook.checks.Assessment;
import org.quaybook.text.Words;

/**
 * A job in one of the languages of its documents.
 *
 * @param assessment the job, its own texts in that language as far as they are translated
 * @param words the words of that language
 */
public record Edition(Assessment assessment, Words words) {}
