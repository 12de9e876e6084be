package org.quaybook.render;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The style sheets and pictures that a document may refer to by name: files handed in by the caller, then files of the
 * template folders. Nothing else can be referred to, neither on the network nor on the machine.
 */
public final class Resources {

    private final @Nullable Templates templates;
    private final Map<String, byte[]> handedIn;

    private Resources(@Nullable Templates templates, Map<String, byte[]> handedIn) {
        this.templates = templates;
        this.handedIn = handedIn;
    }

    /** Nothing at all. */
    public static Resources none() {
        return new Resources(null, Map.of());
    }

    /** The files that stand beside the templates, under their paths inside the template folder. */
    public static Resources of(Templates templates) {
        return new Resources(templates, Map.of());
    }

    /** These resources and one more, which goes before one of the same name. */
    public Resources with(String name, byte[] content) {
        Map<String, byte[]> more = new TreeMap<>(handedIn);
        more.put(name, content.clone());
        return new Resources(templates, more);
    }

    /** The content under a name; empty when there is none. */
    Optional<byte[]> find(String name) {
        byte[] content = handedIn.get(name);
        if (content != null) {
            return Optional.of(content);
        }
        return templates == null ? Optional.empty() : templates.file(name);
    }
}
