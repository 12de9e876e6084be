package org.quaybook.pack.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.quaybook.record.Rows;
import org.quaybook.text.Words;

/** Lines of a form in their order: what the job says, or a line to write on. */
final class FormRows {

    private final Words words;
    private final String prefix;
    private final List<Map<String, Object>> rows = new ArrayList<>();

    /** @param prefix what the keys of all labels begin with, the dot included */
    FormRows(Words words, String prefix) {
        this.words = words;
        this.prefix = prefix;
    }

    /** @param value empty for a line to write on */
    FormRows row(String key, String value) {
        return named(words.say(prefix + key), value);
    }

    /** A line that this job has no use for is left out. */
    FormRows rowIf(boolean needed, String key, String value) {
        return needed ? row(key, value) : this;
    }

    FormRows named(String label, String value) {
        rows.add(new Rows().put("label", label).put("value", value).map());
        return this;
    }

    List<Map<String, Object>> list() {
        return List.copyOf(rows);
    }
}
