package org.quaybook.proof;

import org.quaybook.diag.Message;

/**
 * One thing that is not as it was issued.
 *
 * @param where the file or folder, a path inside the copy; empty for the copy itself
 * @param what happened to it
 */
public record Alteration(String where, Message what) {}
