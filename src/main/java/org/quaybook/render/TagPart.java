package org.quaybook.render;

/** What a tag consists of. */
sealed interface TagPart permits Tag, TagSlot {

    /** Whether nothing of it was printed, so far. */
    boolean isEmpty();
}
