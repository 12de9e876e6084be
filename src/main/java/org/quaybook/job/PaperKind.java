package org.quaybook.job;

/** The paper that an installer and an owner print on. */
public enum PaperKind {
    @Means("A4, and A5 for the small guide (ISO 216)")
    A4,
    @Means("American Letter, and half of it for the small guide")
    LETTER
}
